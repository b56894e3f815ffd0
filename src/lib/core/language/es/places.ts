import type { PlaceWords } from '../en/places';
import { plural } from '../plural';

export const places: PlaceWords = {
	title: 'Según la malla del modelo',
	air: 'Aquí se queda aire si no entra el pincel:',
	brushTwice: ', dos veces con el pincel',
	more: (n) =>
		plural('es', n, {
			one: 'Hay un lugar más en el plan',
			other: `Hay ${n} lugares más en el plan`
		}),
	moreEnd: ', ninguno para pincelar dos veces.',
	unlisted: (n) =>
		plural('es', n, {
			one: 'Un lugar menos hondo no está en ninguna lista: lleve material fluido con el pincel a cada hueco.',
			other: `${n} lugares menos hondos no están en ninguna lista: lleve material fluido con el pincel a cada hueco.`
		}),
	foot: 'Antes de la primera capa, rellene el pie y déjelo limpio; aquí una capa se separaría:',
	startPeeling: 'Empiece a despegar',
	pieces: (n) => `Haga la madreforma en ${n} piezas:`,
	piecesWhy: 'en una se traba. La página del modelo dibuja la partición.',
	keys: 'Llaves en la pestaña:',
	kinds: { foot: 'pie', groove: 'ranura', pit: 'hoyo', 'inner corner': 'rincón' },
	place: (kind, wide, deep) => `${kind}, ${wide} de ancho, ${deep} de profundidad`,
	right: (by) => `${by} a la derecha`,
	left: (by) => `${by} a la izquierda`,
	back: (by) => `${by} hacia atrás`,
	front: (by) => `${by} hacia delante`,
	ofMiddle: (away) => `${away} del centro`,
	inMiddle: 'en el centro',
	atBoard: (spot) => `${spot}, junto al tablero`,
	up: (spot, by) => `${spot}, a ${by} de altura`
};
