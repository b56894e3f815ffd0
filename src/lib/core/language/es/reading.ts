import type { ReadingWords } from '../en/reading';

export const reading: ReadingWords = {
	kinds: { steps: 'los pasos', briefings: 'las instrucciones', troubles: 'los problemas' },
	all: (kind) => `Todos: ${kind}`,
	print: 'Imprimir',
	phase: 'Fase',
	ventilation: 'Ventilación',
	air: {
		none: 'No hace falta',
		general: 'General: aire fresco por todo el local',
		'local exhaust': 'Extracción localizada: aspira en el lugar, lejos de las caras'
	},
	readingTime: 'Tiempo de lectura',
	about: 'Trata de',
	mustReadFor: 'Hay que leerlo antes de',
	whatItIs: 'Qué es',
	canHappenIn: 'Puede pasar en',
	severity: {
		stop: 'Pare el trabajo y llame a un supervisor',
		mend: 'Se puede arreglar aquí',
		note: 'Anótelo y siga'
	},
	questions: 'Preguntas',
	first: (act) => `Primero: ${act}`,
	hurts: 'Lo que hace daño',
	wear: 'Lo que hay que llevar',
	signs: 'Señales',
	tools: 'Tenga a mano',
	checks: 'Vea esto antes de seguir',
	wrongSigns: 'Algo va mal cuando',
	source: 'Fuente:',
	sheetsFirst: 'La ficha técnica, la FDS, las normas locales y la práctica autorizada van primero.',
	hash: 'Suma de este texto:',
	beside: 'Junto a este texto',
	before: (title) => `Anterior: ${title}`,
	next: (title) => `Siguiente: ${title}`,
	room: 'Sala de lectura',
	other: 'En inglés'
};
