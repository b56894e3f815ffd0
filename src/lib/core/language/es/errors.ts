import type { ErrorWords } from '../en/errors';

export const errors: ErrorWords = {
	notTicked: (label) =>
		`Sin marcar: «${label}». Márquelo cuando sea así; si no lo es, pare y corríjalo primero.`,
	chooseOne: (label) => `«${label}»: elija una.`,
	numberAt: ({ label, wanted }) => `«${label}»: ${wanted}`,
	number: ({ from, to, unit, such }) =>
		`escriba un número de ${from} a ${to}${unit}, por ejemplo ${such}.`,
	ofPart: (part) => `${part}: `,
	eachPart: 'Cada parte: ',
	mass: 'escriba lo que marca la balanza para ella sola, en gramos, por ejemplo 120.5.',
	lot: 'escriba el número de lote de su envase.',
	threeReadings: 'Tome al menos tres lecturas.',
	sayWhere: 'Diga dónde, por ejemplo «pared norte».',
	reading: (wanted) => `Una lectura: ${wanted}`,
	sayWhat: 'Diga qué se midió.',
	lengthIn: 'Escriba una longitud en in, por ejemplo 4.75.',
	lengthMm: 'Escriba una longitud en mm, por ejemplo 120.5.',
	fewWords: (label) => `«${label}»: escriba unas palabras.`,
	unknownAct: 'La página envió algo que el banco no conoce. Cárguela otra vez.',
	changedBriefing: 'Estas instrucciones cambiaron mientras usted leía. Léalas otra vez.',
	noMold: 'No existe ese molde.',
	notKept: 'El servidor no responde, y este molde no está guardado en este dispositivo.',
	tooLongAway:
		'Este dispositivo no ha oído al servidor en medio día. Escríbalo en papel, y vuelva a identificarse cuando haya línea',
	needsServer:
		'Esto necesita el servidor: él sabe quién puede decir que el trabajo sigue. Espere la línea',
	photos:
		'Las fotos no se aceptaron: doce como mucho, cada una enviada. Quítelas y añádalas otra vez.',
	notTaken: (name) =>
		`«${name}» no se aceptó como se envió. Cargue la página otra vez, y anótelo de nuevo.`,
	storageFull:
		'Este dispositivo no puede guardarlo: su almacén está lleno o cerrado. Escríbalo en papel',
	somebody: 'alguien'
};
