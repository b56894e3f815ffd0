import { plural } from '../plural';
import type { FigureName, StepWords } from '../en/steps';

const figures: Record<FigureName, string> = {
	gapMm: 'Separación',
	heightMm: 'Altura del marco',
	flangeMm: 'Pestaña',
	sealerG: 'Sellador, en total',
	sealerDryS: 'Secado del sellador',
	waxG: 'Cera, en total',
	waxHazeS: 'Tiempo hasta velarse',
	filmG: 'Película, en total',
	filmDryS: 'Secado de la película',
	brushBackS: 'Subir con el pincel después de',
	tackTestS: 'Primera prueba después de',
	windowClosesS: 'La ventana se cierra después de',
	leastMm: 'Espesor mínimo',
	thicknessMm: 'Espesor',
	testS: 'Primera prueba después de',
	massG: 'Masa',
	headMm: 'Altura de líquido',
	pressurePa: 'Presión en el fondo',
	workingS: 'Tiempo de trabajo',
	cupVolumeMl: 'Volumen del vaso',
	layers: 'Capas de refuerzo'
};

export const steps: StepWords = {
	brief: {
		title: 'Instrucción',
		what: 'Lea lo que aquí puede hacerle daño, lea el local, prepare su equipo de protección.'
	},
	seal: {
		title: ({ n, of }) => `Selle el modelo, capa ${n} de ${of}`,
		brush:
			'¿Limpio, seco, reparado? Dé con pincel una capa fina de sellador. Sin llamas ni chispas cerca.',
		dry: 'Déjelo secar con el aire en movimiento; no lo toque mojado.'
	},
	pattern: {
		title: 'Modelo',
		sealed:
			'Una gota de agua tiene que mantenerse sobre el sellador; donde la absorba, selle otra vez. Fije el modelo al tablero.',
		dense: 'Revise el modelo y fíjelo al tablero.'
	},
	wax: {
		title: ({ n, of }) => `Cera, capa ${n} de ${of}`,
		apply: 'Pase una capa fina de cera por el modelo, el tablero y la pestaña.',
		buff: 'Deje que se vele, después pula con un paño limpio.'
	},
	film: {
		title: ({ n, of }) => `Película desmoldante, pasada ${n} de ${of}`,
		apply: 'Dé una pasada de película fina y sin cortes. Sin llamas ni chispas cerca.',
		dry: 'Déjela secar con el aire en movimiento; no la toque mojada.'
	},
	frame: {
		title: 'Marco',
		what: (gapMm) =>
			`Ponga el marco a ${gapMm} mm del modelo, por todo alrededor, atornillado desde abajo.`
	},
	hold: {
		title: (hold) => `Punto de espera: ${hold.toLowerCase()}`,
		ask: 'Pare aquí. Revíselo, después pida a un supervisor que mire y firme.',
		asked: 'Se ha pedido un supervisor. El trabajo sigue cuando esté firmado.',
		reject: 'Inspeccionado como no utilizable. Un supervisor lo rechaza, o lo devuelve.',
		repair:
			'Necesita reparación. Repárelo e inspecciónelo otra vez, o deje que decida un supervisor.'
	},
	batch: {
		coat: 'Capa',
		material: 'el material',
		detailCoat: (n) => `Capa de detalle ${n}`,
		buildCoat: (n) => `Capa de espesor ${n}`,
		extraCoat: (n) => `Capa extra ${n}`,
		round: (n) => `Tanda de madreforma ${n}`,
		extraRound: (n) => `Tanda extra ${n}`,
		laid: ({ laidG, ofG }) => `Aplicados ${laidG} g de ${ofG} g. `,
		overCoat: 'Más de lo previsto: termine la capa.',
		overRound: 'Más de lo previsto: termine la tanda.',
		allCoat: 'Está toda puesta: termine la capa.',
		allRound: 'Está toda puesta: termine la tanda.',
		nextCup: 'Después el siguiente vaso.',
		add: (what) =>
			` Remueva dentro de la primera parte, antes de la segunda: ${what}, salvo que su ficha diga otra cosa.`,
		reinforcement: 'refuerzo',
		layers: ({ n, material }) =>
			`${n} ${plural('es', n, { one: 'capa', other: 'capas' })} de ${material} en esta tanda: bien mojadas, el aire fuera con el rodillo.`,
		ordered: 'El supervisor lo ha ordenado.',
		decides: 'Después decide un supervisor.'
	},
	coat: {
		weigh: (material) => `Pese ${material} en este orden, primero la parte más espesa.`,
		mix: '¿En proporción? Mézclelo: paredes, fondo, palo; después a un segundo vaso y otra vez.',
		lay: 'La vida de la mezcla corre. Aplique todo el vaso, llévelo con el pincel a cada esquina.',
		brushBackTitle: (coat) => `${coat}: subir con el pincel`,
		brushBack:
			'Ha empezado a gelificar. Suba otra vez por las paredes lo que escurrió y sáquelo de los sitios bajos.',
		testTitle: (coat) => `${coat}: prueba del dedo`,
		test: 'Apriete un dedo enguantado y levante: pegajosa, no suelta nada, queda una huella leve.',
		abradeFirst: (coat) => `${coat}: lije primero`,
		missed: (coat) => `${coat}: ventana perdida`,
		abrade: (who) => `Lije toda la superficie, límpiela, déjela secar. ${who}`,
		abradeBare: (who) => `Lije lo que sigue descubierto, límpielo, déjelo secar. ${who}`,
		decisionTitle: (coat) => `${coat}: hace falta una decisión`,
		decision: 'La desviación espera a un supervisor. No recubra.'
	},
	thickness: {
		title: 'Comprobación de espesor',
		what: (leastMm) => `Clave la galga de aguja en cada punto previsto: al menos ${leastMm} mm.`,
		thinTitle: 'La membrana es fina',
		thin: (thinnestMm) =>
			`${thinnestMm} mm en lo más fino. Añada una capa mientras la ventana está abierta, o pida a un supervisor que decida.`
	},
	gloveCure: {
		title: 'Curado de la membrana',
		what: 'Déjela en paz, templada y seca. Después pruebe antes de que nada la toque.'
	},
	trim: {
		title: 'Recorte la membrana',
		what: 'Suelte la membrana del marco con una cuchilla fina, levante el marco, recorte el borde limpio y a escuadra.'
	},
	waxBack: {
		title: 'Encere el dorso de la membrana',
		what: 'Cúbralo todo. Sin pulir: cuenta la cobertura, no el brillo.'
	},
	refit: {
		title: 'Vuelva a poner el marco',
		what: 'Ponga otra vez el marco y atorníllelo. Si entra justo, ha encogido poco.'
	},
	shell: {
		weigh: (material) => `Pese un vaso pequeño de ${material}; endurece rápido.`,
		mix: '¿En proporción? Mézclelo con energía, paredes y fondo.',
		lay: (layers) =>
			`La vida de la mezcla corre. Apriételo, mantenga gruesas esquinas y paredes. ${layers}`,
		missedTitle: 'Madreforma: la última tanda está dura',
		abrade: (who) => `Lije donde va la siguiente tanda, límpielo, déjelo secar. ${who}`,
		decisionTitle: 'Madreforma: hace falta una decisión',
		decision: 'La desviación espera a un supervisor. No ponga más.',
		finishTitle: 'Termine la madreforma',
		finish: 'Mida el lugar más fino, llene las esquinas, haga los pies a nivel.'
	},
	shellCure: {
		title: 'Curado de la madreforma',
		what: 'Déjela hasta que esté fría y dura.'
	},
	open: {
		title: 'Abra el molde',
		what: 'Desatornille el tablero, levante el marco con cuñas por igual alrededor. Nunca haga palanca sobre la membrana.'
	},
	mark: {
		title: 'Marque membrana y madreforma',
		what: 'Marque el mismo lado en las dos, para que vuelvan a juntarse igual. Línea de partición lisa: añada llaves.'
	},
	peel: {
		title: 'Despegue la membrana',
		what: 'Empiece por una esquina; despacio, hasta el final.'
	},
	wash: { title: 'Lave', what: 'Quite la película con agua, deje secar la membrana plana.' },
	inspect: {
		title: 'Inspeccione',
		what: 'Mírelo todo con luz rasante: huecos, burbujas, rasgaduras, zonas finas. Mida lo que importa.',
		troubleFirst:
			'Mire primero donde tuvo problemas. Después todo, con luz rasante: huecos, burbujas, rasgaduras, zonas finas. Mida lo que importa.'
	},
	pour: {
		title: 'Primera colada',
		what: ({ massG, material }) =>
			`La membrana en su madreforma, a nivel. Vierta ${massG} g de ${material}.`,
		once: (within) => ` Viértalo dentro de ${within} desde que se mezcló.`,
		batches: ({ n, within }) =>
			` Mézclelo en ${n} tandas, una tras otra, y vierta cada una dentro de ${within} desde que se mezcló.`,
		carried: (n) => ` Está fundido: llévelo en ${n} cubos, nunca llenos, uno tras otro.`,
		setTitle: 'Primera pieza',
		set: 'Déjela endurecer como dice su ficha, después desmóldela y mire.',
		setMolten: (within) =>
			`Su centro puede seguir líquido hasta ${within}, y quema a quien abra antes. Espere hasta que esté fría al tacto por todos lados; después desmóldela y mire.`
	},
	handover: {
		title: 'Entregue',
		what: 'Diga cómo se guarda, cómo se repara y cuándo está gastado.'
	},
	paused: { title: 'En pausa', what: (why) => `En pausa: ${why}` },
	trouble: 'Problema',
	handedOver: { title: 'Entregado', what: 'El molde está en uso. Su registro está cerrado.' },
	abandoned: { title: 'Abandonado', what: (why) => `Se dejó: ${why}` },
	rejected: { title: 'Rechazado', what: (why) => `Rechazado en la inspección: ${why}` },
	late: 'Su tiempo se acabó. Pare, no lo diluya: aparte el vaso en la extracción.',
	atScale: {
		missing: (parts) => `Falta ${parts}: viértala, y mezcle enseguida.`,
		off: 'Fuera de proporción: no mezcle. Corríjalo como se dice debajo de los pesos.',
		tooFar:
			'Fuera de proporción, demasiado para corregirlo: no mezcle. Apártelo, empiece uno limpio.'
	},
	largeCup: ({ massG, plannedG, workingMin }) =>
		` Lleva ${massG} g, previstos ${plannedG} g: se calienta más, y aguanta ${workingMin} min después de mezclarlo.`,
	nextCupWeighed: 'El siguiente vaso está pesado',
	nextCupMixed: 'El siguiente vaso está mezclado',
	windows: {
		sealer: 'El sellador seca',
		wax: 'La cera se vela',
		film: 'La película seca',
		gel: 'Gelifica',
		gelAfter: 'Pasada, el pincel arrastra: déjela, y anótelo.',
		recoat: 'Ventana de recubrimiento',
		recoatBare: 'Ventana de recubrimiento, donde sigue descubierto',
		recoatAfter: 'Pasada, la siguiente capa no se une: lije y limpie.',
		glove: 'La membrana cura',
		shell: 'La madreforma cura',
		working: 'Tiempo de trabajo de este vaso',
		workingAfter: 'Pasado: pare, no diluya, aparte el vaso en la extracción.'
	},
	amounts: {
		eachBatch: (part) => `${part}, cada tanda`,
		inCup: 'en este vaso',
		sealer: 'sellador, esta capa',
		wax: 'cera, esta capa',
		film: 'película, esta pasada'
	},
	section: {
		pattern: 'Modelo',
		release: (hasWax, hasFilm) =>
			hasWax ? `Cera${hasFilm ? ' y película desmoldante' : ''}` : 'Película desmoldante',
		shell: 'Madreforma'
	},
	figures
};
