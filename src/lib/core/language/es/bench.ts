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
	notYet: {
		notYet: 'todavía no.',
		readFirst: 'Lea primero las instrucciones de seguridad:',
		trainingFirst: 'Antes hace falta la formación vigente:',
		refresher: 'repaso sobre isocianatos',
		notBefore: ({ label, at }) => `${label}: no antes de ${at}`
	},
	allTheSame: 'Anotarlo de todos modos',
	onlySupervisor: 'Solo un supervisor que no haya trabajado en este molde dice cómo sigue.',
	more: (names) => `Más: ${names}`,
	photo: 'foto',
	photos: {
		photo: 'Foto',
		optional: 'opcional',
		sending: 'Enviando la foto.',
		ofEntry: (n) => `Foto ${n} de esta anotación`,
		leaveOut: 'Quitar'
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
	}
};
