import type { ContainerWords } from '../en/containers';

// Palabras de advertencia y nombres de los símbolos: Reglamento (CE) n.º 1272/2008, anexos I y V.
export const containers: ContainerWords = {
	signal: { danger: 'Peligro', warning: 'Atención' },
	symbols: {
		GHS01: 'Bomba explotando',
		GHS02: 'Llama',
		GHS03: 'Llama sobre círculo',
		GHS04: 'Bombona de gas',
		GHS05: 'Corrosión',
		GHS06: 'Calavera y tibias cruzadas',
		GHS07: 'Signo de exclamación',
		GHS08: 'Peligro para la salud',
		GHS09: 'Medio ambiente'
	},
	means: {
		GHS01: 'explota',
		GHS02: 'se inflama',
		GHS03: 'aviva el fuego',
		GHS04: 'gas a presión',
		GHS05: 'quema la piel y los ojos, o corroe metales',
		GHS06: 'envenena enseguida, en pequeñas cantidades',
		GHS07: 'irrita, adormece, daña si entra en el cuerpo o causa alergia de la piel',
		GHS08: 'daña por dentro, por mucho tiempo o de por vida, o causa alergia respiratoria',
		GHS09: 'mata lo que vive en el agua'
	},
	title: 'Lo que dicen los envases',
	how: 'Señales tal como las indicaciones de peligro de cada ficha las ponen en una etiqueta. El envase y su FDS mandan: si dicen más, tienen razón.',
	none: 'Su ficha no nombra ninguna indicación de peligro. Eso no promete nada: lea su FDS.',
	gravest:
		'La indicación sola no dice qué palabra de advertencia corresponde; se muestra la más grave.',
	unknown: (codes) => `No están en la lista; léalas en el envase: ${codes}.`,
	uses: {
		detail: 'capas de detalle',
		build: 'capas de espesor',
		shell: 'madreforma',
		reinforcement: 'tejido de la madreforma',
		wax: 'cera desmoldante',
		film: 'película separadora',
		sealer: 'sellador',
		casting: 'primera colada'
	}
};
