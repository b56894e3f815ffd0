import type { LogWords } from '../en/log';

export const log: LogWords = {
	room: ({ temperatureC, humidityPct, extractionOn }) =>
		`${temperatureC} °C, ${humidityPct} %, extracción ${extractionOn ? 'en marcha' : 'parada'}`,
	planDecided: (reason) => `plan autorizado por un supervisor: ${reason}`,
	backTo: ({ phase, reason }) => `Vuelve a ${phase}: ${reason}`,
	points: ({ n, thinnestMm }) => `${n} lugares, el más fino ${thinnestMm} mm`,
	gap: (mm) => `separación ${mm} mm`,
	keys: (keys) => `llaves: ${keys}`,
	accepted: 'Aceptada',
	notYet: 'Todavía no',
	results: {
		wet: 'húmeda',
		'almost tack-free': 'casi sin pegajosidad',
		hard: 'dura',
		soft: 'blanda',
		cured: 'curada',
		good: 'buena',
		bad: 'mala',
		faulty: 'defectuosa'
	},
	tests: { 'test cup': 'vaso de prueba', 'test patch': 'parche de prueba' },
	verdicts: { sound: 'sano', 'needs repair': 'necesita reparación', reject: 'no utilizable' },
	flaws: { voids: 'huecos', bubbles: 'burbujas', tears: 'rasgaduras', thinSpots: 'zonas finas' },
	size: ({ name, measuredMm, plannedMm }) => `${name} ${measuredMm} mm, previsto ${plannedMm} mm`
};
