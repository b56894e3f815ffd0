import type { BenchWords } from '../en/bench';
import { plural } from '../plural';

export const bench: BenchWords = {
	next: 'Después',
	speak: 'Voz',
	whyUndone: 'Qué estaba mal en la anotación',
	untilWhen: 'Hasta cuándo',
	howMuch: 'Cuánto',
	planned: (text) => `previsto ${text}`,
	pourOrder: 'Vierta en este orden',
	hurts: 'Lo que hace daño',
	air: {
		none: '',
		general: 'Ventile el local: ventilador o ventana abierta.',
		'local exhaust': 'Extracción en marcha, junto al trabajo.'
	},
	whyNumbers: 'Por qué estos números',
	somebody: 'Alguien',
	aSupervisor: 'un supervisor',
	offRatioNow:
		'Fuera de proporción: no mezcle. Añada la otra parte, después escriba lo que marca la balanza.',
	stepChanged: (title) => `El paso ha cambiado: ${title}`,
	sentBackBy: (who) => `Devuelto por ${who}`,
	cupOf: ({ n, of }) => `Vaso ${n} de ${of}`,
	inCup: (volume) => `, en un vaso de ${volume}.`,
	resplit:
		'Repartido de nuevo: los vasos anteriores salieron cortos o largos, este devuelve la capa al plan.',
	noAnswer: {
		title: 'El servidor no responde',
		text: 'No se ha perdido nada de lo que escribió. Mire la línea, después apriete otra vez.'
	},
	answer: {
		notEntered: (label) => `«${label}» no se anotó`,
		says: (refusal) => `Dice: ${refusal}. No se ha perdido nada de lo que escribió.`,
		faster: (label) => `Alguien fue más rápido. «${label}» no se anotó`,
		meanwhile: 'Mientras tanto:',
		lookAgain: (label) =>
			`Mire otra vez lo que escribió. Si sigue valiendo, apriete «${label}» una vez más.`,
		movedOn: (possible) => `El trabajo ha avanzado; posible ahora: ${possible}.`,
		nothing: 'nada',
		hadTyped: 'Usted había escrito:',
		discard: 'Descartar lo que escribí',
		needLook: (n) =>
			plural('es', n, { one: 'Hay que mirar un dato', other: `Hay que mirar ${n} datos` }),
		eachSays: (label) => `«${label}» no se anotó. Cada lugar dice lo que acepta.`
	},
	bar: {
		beside: 'Junto al paso',
		last: (words) => `Última anotación: ${words}.`,
		undoLast: 'Deshacer la última anotación',
		undoIt: 'Deshacerla',
		undoStays:
			'Queda en el registro, tachada, con su motivo. El trabajo vuelve a como estaba antes.',
		wrong: ['Algo', ' va', ' mal'],
		how: ['Cómo', ' se hace'],
		other: 'Otros',
		peopleFirst:
			'¿Alguien herido, enfermo, o algo arde? Primero las personas: pida ayuda, salgan, después vuelva aquí.',
		sameText: 'El mismo texto en la sala de lectura',
		abandon: 'Abandonar el molde, con su PIN',
		thisMold: 'Este molde',
		plan: 'Plan',
		record: 'Registro',
		board: 'Tablón',
		close: 'Cerrar'
	},
	how: {
		checks: 'Vea esto antes de seguir',
		wrongSigns: 'Va mal cuando',
		tools: 'Herramientas'
	},
	head: {
		thisMold: 'Este molde, del plan al registro',
		behind: 'Todos los pasos hechos',
		step: ({ n, of }) => `Paso ${n} de ${of}`,
		dropped: 'Línea caída: intentándolo otra vez',
		droppedLong: 'La línea con el servidor se cayó. Intentándolo otra vez.'
	},
	stage: {
		notYetEntered: (act) => `«${act}» todavía no está anotado`,
		doNotEnter: 'No anotarlo',
		laidLate: 'Se aplicó de todos modos',
		toDecide: 'Para que decida un supervisor',
		takeOverFrom: (who) => `Tomar el relevo de ${who}`,
		them: 'esa persona',
		inHand: (who) => `${who} tiene este molde entre manos`,
		anotherPerson: 'Otra persona',
		mayLook:
			'Usted puede mirar. Para trabajar en él, tome el relevo: desde entonces las anotaciones son suyas.',
		thenNoSign: 'Quien toma el relevo y trabaja en él no puede firmar después este molde.',
		wordNeeded: 'Hace falta la palabra de un supervisor',
		whoSigns:
			'Alguien que no haya trabajado en este molde firma con un PIN, aquí o en otro dispositivo.',
		openSigning: 'Abrir la página de firma',
		letDecide: 'Que decida un supervisor',
		openRecord: 'Abrir el registro'
	},
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
	notYet: {
		notYet: 'todavía no.',
		readFirst: 'Lea primero las instrucciones de seguridad:',
		trainingFirst: 'Antes hace falta la formación vigente:',
		refresher: 'repaso sobre isocianatos',
		notBefore: ({ label, at }) => `${label}: no antes de ${at}`
	},
	allTheSame: 'Anotarlo de todos modos',
	onlySupervisor: 'Solo un supervisor que no haya trabajado en este molde dice cómo sigue.',
	notEnded: ({ trouble, at }) => `Tampoco ha terminado: ${trouble}, ${at}.`,
	choose: 'Elija',
	more: (names) => `Más: ${names}`,
	photo: 'foto',
	photos: {
		photo: 'Foto',
		optional: 'opcional',
		sending: 'Enviando la foto.',
		ofEntry: (n) => `Foto ${n} de esta anotación`,
		leaveOut: 'Quitar'
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
		holds: (volume) => `El vaso de ${volume} todavía lo admite, con sitio para remover.`
	},
	mixing: {
		mixing: 'Mezcla',
		over: 'Su tiempo se acabó. No lo aplique: aparte el vaso.',
		of: (time) => `de ${time}`,
		longEnough: 'Mezclado lo suficiente: ¿sin vetas? Entonces siga.',
		mixFor: (time) => `Mezcle ${time}: la mitad en cada vaso.`,
		before: (at) =>
			`Las partes se han juntado: todo el vaso está puesto antes de las ${at}, tarde lo que tarde en mezclar.`
	},
	nextCup: {
		title: 'Siguiente vaso',
		titleOf: ({ n, of }) => `Siguiente vaso, ${n} de ${of}`,
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
	clock: {
		testNow: (label) => `Pruebe ahora: ${label}`,
		minutesLeft: ({ n, label }) => `Quedan ${n} minutos: ${label}`,
		shuts: ({ label, at, left }) => `${label}: cierra ${at}, dentro de ${left}`,
		over: ({ label, after }) => `${label}: terminó. ${after}`,
		willCall: 'Este dispositivo le avisará. Déjelo en esta página.',
		wakeMe: 'Avíseme',
		beforeEnd: ' antes de que acabe',
		whenTime: ' cuando sea la hora',
		iAmHere: 'Aquí estoy'
	},
	deviceClock: {
		ahead: (by) => `El reloj de este dispositivo va ${by} adelantado`,
		behind: (by) => `El reloj de este dispositivo va ${by} atrasado`,
		both: ({ server, device }) => `Servidor ${server}, este dispositivo ${device}.`,
		setIt:
			'Todas las horas de aquí y del registro son las del servidor. Ponga en hora el dispositivo: sin el servidor es el único reloj que hay.'
	}
};
