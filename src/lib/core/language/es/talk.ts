import type { TalkWords } from '../en/talk';

export const talk: TalkWords = {
	page: (mold) => `Instrucciones de seguridad: ${mold}`,
	title: 'Antes de empezar',
	atMold: 'En el molde',
	people: (n) => (n === 1 ? 'una persona' : `${n} personas`),
	dangers: 'Peligros que hay',
	printed: 'Impreso',
	print: 'Imprimir',
	back: 'Volver al molde',
	first:
		'Para leer en voz alta junto al molde, diez minutos como mucho, y después preguntar: ¿qué hace daño en el próximo paso, y qué hace usted? Son las precauciones habituales. La FDS de cada material, las normas locales y los profesionales habilitados van primero.',
	hurtsWhy: 'Lo que hace daño en este molde, y por qué',
	wear: 'Lo que hay que llevar puesto',
	stepByStep: 'Paso por paso',
	stepsCaption: 'Lo que hace daño y lo que protege en cada paso',
	columns: {
		step: 'Paso',
		hurts: 'Hace daño',
		wear: 'Póngase',
		air: 'Aire',
		containers: 'Envases abiertos'
	},
	air: { none: '', general: 'Ventile el local', 'local exhaust': 'Extracción junto al trabajo' },
	readThemselves: 'Lo que cada uno lee por sí mismo',
	atBench:
		'Cada persona las lee en el banco, con su propio nombre, antes de tocar los productos. Nadie puede marcarlas por otro.',
	somebody: 'Alguien',
	readBy: (people) => `Leída por ${people}`,
	nobody: 'Todavía no la ha leído nadie',
	understood: 'Oído, preguntado y entendido',
	onPaper:
		'Cada uno por sí mismo, en papel. Esta hoja acompaña al registro; no sustituye a las instrucciones de arriba.',
	name: 'Nombre',
	date: 'Fecha',
	signature: 'Firma',
	heldBy: 'Charla dada por:',
	grounds: {
		named: 'lo nombra su ficha técnica',
		computed: 'el plan calcula que se calienta sola',
		assumed: 'se supone por su familia, porque su ficha técnica no lo dice'
	},
	statements: (codes) => `su FDS dice ${codes}`,
	from: (materials) => `Por ${materials.join(' y ')}.`,
	reasons: {
		work: 'Por el trabajo mismo, sean cuales sean los materiales.',
		plan: 'Lo nombra el plan, sin material concreto.',
		usual:
			'Habitual en estos pasos. Ninguna ficha de los materiales de este molde lo nombra, y ninguna lo descarta: decide la FDS.'
	},
	metAt: (steps) => `Aparece en: ${steps}.`
};
