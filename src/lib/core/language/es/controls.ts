import type { ControlWords } from '../en/controls';
import { plural } from '../plural';

export const controls: ControlWords = {
	notices: {
		info: 'Nota',
		ok: 'Hecho',
		caution: 'Precaución',
		warning: 'Advertencia',
		danger: 'Peligro'
	},
	optional: 'opcional',
	hold: {
		idle: 'Mantenga',
		idleByKey: 'Mantenga, o apriete dos veces',
		holding: 'Siga apretando',
		short: 'Mantenga más',
		armed: 'Apriete otra vez'
	},
	countdown: {
		test: {
			wait: { state: 'Espere', edge: 'hasta la prueba' },
			'test-now': { state: 'Pruebe ahora', edge: 'hasta que se cierre la ventana' },
			closing: { state: 'Se cierra', edge: 'para probar y recubrir' },
			closed: { state: 'Cerrada', edge: 'pasada la ventana' }
		},
		work: {
			wait: { state: 'Espere', edge: 'hasta que se abra' },
			'test-now': { state: 'Trabaje', edge: 'quedan' },
			closing: { state: 'Dese prisa', edge: 'quedan' },
			closed: { state: 'Se acabó', edge: 'pasado el tiempo' }
		},
		noLimit: 'Sin límite',
		staysOpen: 'la ventana sigue abierta',
		opens: (at) => `abre ${at}`,
		shuts: (at) => `, cierra ${at}`,
		ends: (at) => `acaba ${at}`
	},
	duration: {
		hours: (n) => `${n} ${plural('es', n, { one: 'hora', other: 'horas' })}`,
		minutes: (n) => `${n} ${plural('es', n, { one: 'minuto', other: 'minutos' })}`,
		seconds: (n) => `${n} ${plural('es', n, { one: 'segundo', other: 'segundos' })}`
	},
	gauge: {
		ratio: ({ first, second }) => `Proporción de ${first} a ${second}`,
		nothing: 'Todavía nada pesado',
		inside: (percent) => `Dentro, ${percent}`,
		tooMuch: ({ part, percent }) => `Demasiado ${part}, ${percent}`,
		tooLittle: ({ part, percent }) => `Falta ${part}, ${percent}`,
		plan: 'plan',
		more: (part) => `más ${part}`
	},
	howFound: (label) => `(cómo se halló: ${label})`
};
