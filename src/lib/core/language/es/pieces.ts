import type { PieceWords } from '../en/pieces';
import { plural } from '../plural';

export const pieces: PieceWords = {
	briefings: {
		left: ({ n, of, minutes }) =>
			`Faltan por leer ${n} de ${of} instrucciones de seguridad, unos ${minutes} min`,
		how: 'Abra cada una y léala hasta el final; allí aparece su botón. Su nombre entra en el registro de este molde con el texto que leyó.',
		read: 'Leída',
		about: (minutes) => `Unos ${minutes} min.`,
		iHaveRead: (name) => `Yo, ${name}, las he leído`,
		atEnd: 'Ha llegado al final.',
		end: 'Fin',
		skimmed: ({ time, readMin }) =>
			`Ha estado abierto ${time}; leerlo lleva unos ${readMin} min. Repase lo que se haya saltado: el registro guarda cuánto tiempo estuvo abierto.`,
		on: 'Seguir leyendo'
	},
	lots: {
		asBefore: (lots) => `Lotes como antes: ${lots}.`,
		newContainer: 'Envase nuevo'
	},
	rows: {
		where: 'Dónde',
		gauge: 'Galga',
		what: 'Qué',
		planned: 'Previsto',
		measured: 'Medido',
		oneMore: 'Una más'
	},
	weights: {
		zero: 'Vaso vacío en la balanza: póngala a cero.',
		scaleShows: (part) => `La balanza marca ${part}, g`,
		scaleShowsAlone: (part) => `La balanza marca ${part} sola, g`,
		unread: 'Eso no es un número. Escriba lo que marca la balanza, solo cifras.',
		addNow: ({ add, total, part }) =>
			`+ ${add}: ponga la balanza a cero, vierta hasta que marque ${add}. Después escriba ${total}, toda la ${part}`,
		zeroAgain: (part) =>
			`Ponga la balanza otra vez a cero, con el vaso y todo: entonces marca ${part} sola. Sin poner a cero, marca`,
		zeroAgainEnd: (part) => `cuando ${part} está dentro: escriba eso menos lo que marcaba antes.`
	},
	cup: {
		ofPart: ({ mass, part }) => `${mass} de ${part}`,
		and: ' y ',
		now: (list) => `Ahora ${list}.`,
		onRatio: ({ off, most }) =>
			`En proporción, desviado un ${off}. Hasta un ${most} se puede mezclar.`,
		offRatio: ({ off, most }) => `Fuera de proporción un ${off}, más del ${most}.`,
		asTotals: (list) => `Como totales seguidos encaja: ${list} por separado.`,
		slip: ({ part, mass, isTenth }) =>
			`¿Es ${part} ${mass}? ${isTenth ? 'Encaja la décima parte' : 'Encaja diez veces'} lo que escribió. Si la balanza marcó eso de verdad, aparte el vaso.`,
		doubles: 'Corregirlo pediría más del doble del vaso previsto. Apártelo, empiece uno limpio.',
		addExactly: (list) => `Añada exactamente ${list}.`,
		tooCoarse:
			'Esta balanza es demasiado gruesa para corregirlo. Aparte el vaso, empiece uno limpio.',
		ifNotZeroed: (otherwise) =>
			`Si la balanza no se puso a cero entre las partes, tome eso. Si se puso, ${otherwise}.`,
		orAdd: (list) => `añada exactamente ${list}`,
		orAside: 'aparte el vaso',
		takeAlone: 'Tomar cada parte por separado',
		thenType:
			'Después escriba la nueva lectura. También puede anotarlo como está: el registro guarda las dos.',
		overfull: (volume) =>
			`Eso es más de dos tercios de un vaso de ${volume}. Cambie antes a un vaso mayor.`,
		tooMuch: (volume) =>
			`Ningún vaso del taller lo admite con sitio para remover: el más grande es de ${volume}. Mire la balanza; reparta lo que hay dentro.`,
		holds: (volume) => `El vaso de ${volume} todavía lo admite, con sitio para remover.`
	},
	mixing: {
		mixing: 'Mezcla',
		over: 'Su tiempo se acabó. No lo aplique: aparte el vaso.',
		of: (time) => `de ${time}`,
		longEnough:
			'Hace ya ese tiempo que se juntaron las partes. ¿Ha removido todo ese tiempo, sin vetas? Entonces siga.',
		mixFor: (time) => `Mezcle ${time}: la mitad en cada vaso.`,
		before: (at) =>
			`Las partes se han juntado: todo el vaso está puesto antes de las ${at}, tarde lo que tarde en mezclar.`
	},
	nextCup: {
		title: 'Siguiente vaso',
		titleOf: ({ n, of }) => `Siguiente vaso, ${n} de ${of}`,
		onePart: (part) =>
			`La vida de la mezcla corre desde que las partes se tocan. Vierta solo ${part}; el resto cuando alguien vaya a mezclar.`,
		met: ({ at, before }) => `Partes juntas ${at}: mezclado y aplicado antes de las ${before}`,
		partIn: ({ mass, missing }) => `${mass} pesados, falta ${missing}`,
		mixed: ({ at, before }) => `Mezclado ${at}: aplíquelo antes de ${before}`,
		weighed: (mass) => `${mass} pesados`,
		onRatio: 'en proporción',
		offRatio: 'fuera de proporción: no mezcle',
		mixIt: 'Mezclarlo:',
		weighAgain: 'Pesar otra vez el siguiente vaso',
		weigh: 'Pesar el siguiente vaso',
		weighIt: 'Pesar el siguiente vaso:'
	},
	kept: {
		title: (n) =>
			plural('es', n, {
				one: 'Hay una anotación guardada en este dispositivo',
				other: `Hay ${n} anotaciones guardadas en este dispositivo`
			}),
		whenOthers: (names) => `Se envían cuando ${names} se identifique en este dispositivo.`,
		byItself: 'Se envía sola cuando vuelva la línea. No borre antes los datos de este navegador.',
		and: ' y ',
		needsLook: (line) => `Hay que mirarlo: ${line}`,
		notEntered: (why) => `No anotado. ${why}`,
		notNow: (why) => `Ahora tampoco se aceptaría: ${why}.`,
		enter: 'Sigue valiendo: anotarlo',
		discard: 'Descartarlo',
		enteredLater: (at) =>
			`se anotó algo después, a las ${at}, y ninguna anotación entra antes que otra. Si sigue valiendo, hágalo de nuevo en el banco`
	},
	deviceClock: {
		ahead: (by) => `El reloj de este dispositivo va ${by} adelantado`,
		behind: (by) => `El reloj de este dispositivo va ${by} atrasado`,
		both: ({ server, device }) => `Servidor ${server}, este dispositivo ${device}.`,
		setIt:
			'Todas las horas de aquí y del registro son las del servidor. Ponga en hora el dispositivo: sin el servidor es el único reloj que hay.'
	}
};
