import type { RuleWords } from '../en/rules';

export const rules: RuleWords = {
	ended: 'este trabajo ha terminado: su registro está cerrado',
	notNow: ({ act, possible }) => `«${act}» no es lo que toca ahora. Posible ahora: ${possible}`,
	datedBefore: ({ at, lastAt }) =>
		`lleva la hora ${at}, anterior a la última anotación de ${lastAt}`,
	notBefore: ({ what, at }) => `${what} no antes de ${at}`,
	knownParts: (parts) => `las partes de este material son: ${parts}`,
	somethingWeighed: 'el vaso está vacío: anote lo que marcó la balanza',
	weighFirst: 'pese primero el vaso',
	partMissing: (parts) => `la parte ${parts} todavía no está en el vaso`,
	offRatio: ({ offPct, mostPct }) =>
		`el vaso está un ${offPct} % fuera de proporción, más del ${mostPct} %: corríjalo en la balanza, o apártelo`,
	fitsNoCup: ({ massG, volumeMl, largestMl }) =>
		`${massG} g ocupan ${volumeMl} mL, y el vaso más grande de este taller llega a ${largestMl} mL hasta el borde: escriba lo que marcó la balanza, parte por parte, sin el vaso`,
	partsTooLong: (until) =>
		`sus partes se juntaron hace demasiado: la vida de la mezcla se acabó a las ${until}, mezclada o no. Aparte ese vaso y pese uno nuevo`,
	lastCup: 'el vaso que tiene en la mano es el último de esta capa: aplíquelo primero',
	nextMixed: 'el siguiente vaso ya está mezclado: aplique el que tiene en la mano, después ese',
	oneAtWork:
		'una persona no puede aplicar y mezclar a la vez: el plan tiene una trabajando, así que aplique primero este vaso',
	secondReadsFirst:
		'una persona no puede aplicar y mezclar a la vez: la segunda lee primero las instrucciones de seguridad, con su propio nombre',
	mixerNamed:
		'diga quién lo mezcla mientras usted aplica: otra persona, que haya leído las instrucciones de seguridad de este molde',
	noNextCup: 'no hay ningún vaso siguiente preparado',
	plainLine:
		'una línea de partición lisa no se traba sola: taladre o añada llaves, y diga cuáles y dónde',
	sayLine: 'diga si la línea de partición es irregular o lisa',
	inspected: 'ya está inspeccionado: pida la firma',
	lookWhere: (places) => `mire donde este molde tuvo problemas, y márquelo: ${places}`,
	notUsable: 'la inspección lo encontró no utilizable: rechace el molde, o devuélvalo',
	anotherHold: (hold) => `este molde espera en otro punto de espera: ${hold}`,
	none: 'ninguno',
	mayGoBackTo: (phases) => `desde aquí puede volver a: ${phases}`,
	nowhere: 'ninguna parte',
	needsRepair:
		'la inspección lo encontró necesitado de reparación: que se repare y se inspeccione otra vez, o decida antes esa desviación',
	noRepairAsked: 'la inspección no pide ninguna reparación',
	nothingLaid: 'todavía no se ha aplicado nada',
	laidShort: ({ laidG, plannedG }) =>
		`se han aplicado ${laidG} g de ${plannedG} g: mezcle otro vaso, o diga por qué se queda corta`,
	layersShort: ({ laid, planned }) =>
		`hay ${laid} de ${planned} capas de refuerzo: ponga las que faltan, o diga por qué se queda corto`,
	countLayers: (planned) => `cuente las capas de refuerzo de esta tanda; el plan tiene ${planned}`,
	gloveNeedsTime: 'la membrana necesita su tiempo: pruebe',
	shellNeedsTime: 'la madreforma necesita su tiempo: pruebe',
	shellThin: (leastMm) =>
		`el lugar más fino tiene que llegar a ${leastMm} mm: ponga allí otro vaso`,
	othersHands: 'otra persona tiene este molde entre manos: tome primero el relevo',
	inHandAlready: 'usted ya tiene este molde entre manos',
	ownWork:
		'nadie firma su propio trabajo: pida a un supervisor que no haya trabajado en este molde',
	readFirst: (briefings) => `lea primero las instrucciones de seguridad: ${briefings}`,
	sealsNothing: 'el plan no sella nada aquí: el modelo es denso, o ya está sellado',
	sealerWet: 'el sellador no está seco: compruébelo',
	waxFresh: 'la cera no se ha velado: pula',
	filmWet: 'la película no está seca: compruébela',
	waxDone: (coats) => `las ${coats} capas de cera están dadas`,
	filmDone: (passes) => `las ${passes} pasadas de película están dadas`,
	frameReleased:
		'ponga primero desmoldeante por dentro del marco: la membrana se pega a paredes desnudas',
	backTakes: (coats) => `el dorso de la membrana lleva ${coats} capas de cera`,
	readRoom: 'lea primero el local: temperatura, humedad, extracción',
	roomOld: 'el local se leyó hace más de 12 horas: léalo otra vez',
	extractionOff: 'ponga en marcha la extracción, después lea otra vez el local',
	readSurface:
		'lea otra vez el local, con la temperatura de la superficie del modelo: quien firma la compara con el punto de rocío',
	surfaceCold:
		'el modelo está demasiado cerca del punto de rocío: caliéntelo o seque el local, y lea otra vez',
	roomOutside: ({ roomC, minC, maxC }) =>
		`el local está a ${roomC} °C; la ficha técnica pide de ${minC} a ${maxC} °C`,
	noBareCoat: 'ahora no hay ninguna capa descubierta que probar',
	windowStillOpen: (until) =>
		`la ventana de recubrimiento está abierta hasta ${until}: no hace falta lijar`,
	nextCoat: 'la siguiente capa',
	foundWet: 'la superficie de abajo se encontró húmeda: espere, después pruébela otra vez',
	notPassed: 'la capa de abajo no ha pasado su prueba del dedo',
	windowClosed: (at) =>
		`la ventana de recubrimiento se cerró a las ${at}: lije, limpie, y que se decida la desviación`,
	windowClosedNext: (at) =>
		`la ventana de recubrimiento se cerró a las ${at}: aplique primero el vaso que tiene en la mano, después mezcle el siguiente`,
	belowNotPassed:
		'la superficie de abajo no ha pasado su prueba: aplique primero el vaso que tiene en la mano',
	stillRuns: 'todavía escurre: súbala con el pincel',
	troubleElsewhere: 'ese problema no es de esta fase',
	waysBack: (ways) => `desde este problema se puede volver a: ${ways}`,
	anotherSays:
		'un supervisor que no haya trabajado en este molde tiene que decir que el trabajo sigue',
	noTestAsked: 'este problema no pide vaso ni parche de prueba',
	testWasBad:
		'la última prueba salió mal: la parada sigue. Busque la causa, después pruebe otra vez',
	describeIt: 'diga en pocas palabras lo que ve',
	reportedAlready: 'este problema ya está avisado, y todavía no ha terminado',
	supervisorDecides:
		'un supervisor que no haya trabajado en este molde decide cómo sigue, con un PIN, en la página de firma',
	bodyFirst:
		'diga antes que se dieron primeros auxilios, quién ha visto a la persona, y que se siguieron la FDS y las reglas locales',
	airFirst: 'diga antes que la zona está ventilada: nada huele ni pica',
	smokeFirst: 'diga antes que el vaso está fuera y frío, y que la zona está ventilada',
	asideFirst: 'anote antes que el vaso en la mano se apartó',
	noCup: 'no hay ningún vaso en la mano',
	testFirst: 'haga primero un vaso o un parche de prueba lejos del molde, y anote lo que muestra',
	undoLastOnly:
		'solo se puede deshacer la última anotación; una anterior se corrige con un problema',
	undoStands: 'esta anotación se queda: otros han actuado según ella',
	undoInspection:
		'lo que encontró una inspección se queda: inspeccione de nuevo, y se guardan las dos',
	undoOwnOnly: 'solo puede deshacer una anotación la persona que la hizo',
	undoBySupervisor:
		'esta anotación puso el trabajo ante un supervisor: solo la retira un supervisor que no haya trabajado en este molde, con un PIN, en la página de firma',
	undoByDoer: 'la persona que hizo esta anotación puede deshacerla',
	undoOwnStop:
		'nadie retira lo que para su propio trabajo: pida a un supervisor que no haya trabajado en este molde',
	placeNotNoted: (note) => `lugar no anotado, «${note}»`,
	troubleNeedsSupervisor:
		'Después de este problema, un supervisor que no haya trabajado en este molde dice que el trabajo sigue.',
	abandonedBy:
		'Un molde lo abandona un supervisor, el propietario, o el moldista que lo tiene entre manos.',
	trainingOver: (day) => `la formación sobre isocianatos venció el ${day}`,
	trainingNone: 'no consta ninguna formación sobre isocianatos',
	trainingDo: (state) =>
		`${state}: responda las seis preguntas en Sala de lectura, Repaso, Isocianatos, o deje que lo haga alguien con la formación vigente`
};
