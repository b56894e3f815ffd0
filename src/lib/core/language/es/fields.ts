import type { FieldWords } from '../en/fields';

export const fields: FieldWords = {
	note: 'Nota',
	lot: 'Número de lote',
	result: 'Resultado',
	planned: (text) => `previsto ${text}`,
	room: {
		temperature: 'Temperatura del local',
		humidity: 'Humedad relativa',
		surface: 'Superficie del modelo, si la midió',
		surfaceNow: 'Superficie del modelo, donde está más fría',
		extraction: 'La extracción está en marcha'
	},
	brief: {
		sdsRead: 'He leído la FDS de cada material',
		ppeOut: 'El equipo de protección está a mano, y ajusta',
		spillKitKnown: 'Sé dónde están el kit de derrames, el lavaojos y los primeros auxilios',
		trainingInDate: 'Mi formación para estos materiales está vigente'
	},
	sealerDry: 'Seco a fondo: el nudillo lo nota seco, no fresco',
	pattern: {
		dry: 'Seco a fondo',
		sound: 'Sano: sin partes sueltas ni blandas',
		dense: 'Denso por naturaleza: una gota de agua se mantiene encima',
		sealed: 'Sellado por todas partes: una gota de agua se mantiene encima',
		inhibitors: 'Nada en él frena el curado',
		fixed: 'Fijado al tablero: no puede levantarse ni flotar',
		foot: 'Los huecos del pie están rellenos'
	},
	filmUnbroken: 'Seca al tacto, sin cortes, sin gotas',
	frame: {
		gap: 'Separación libre entre modelo y marco',
		below: 'Atornillado desde abajo',
		corners: 'Las esquinas y el pie están cerrados',
		released: 'El interior del marco lleva desmoldante'
	},
	cup: {
		masses: 'Lo que marca la balanza',
		lots: 'Números de lote, de los envases',
		mixedBy: 'Quién lo mezcla mientras usted aplica',
		mixedByHint:
			'Quien haya leído las instrucciones de seguridad. Entonces ha trabajado en este molde, y no puede firmarlo.',
		which: 'Qué vaso',
		inHand: 'El que está en la mano: no se aplica más',
		next: 'El siguiente, que se estaba preparando',
		timeWasOver: 'Su tiempo se había acabado.',
		whyAside: 'Por qué se aparta',
		asideHint: 'Déjelo en la extracción, sobre una superficie que no arda.'
	},
	coat: {
		layers: 'Capas de refuerzo en esta tanda, contadas',
		short: 'Si se puso menos de lo previsto: por qué',
		fingertip: 'Lo que encontró el dedo enguantado',
		wet: 'Húmeda: se queda en el guante',
		tackFree: 'Casi sin pegajosidad: pegajosa, no suelta nada, huella leve',
		hard: 'Dura: sin huella, no pega',
		where: 'Dónde',
		grit: 'Lijado con',
		gritHint: 'por ejemplo grano 120',
		wiped: 'Polvo quitado con el paño',
		dried: 'La superficie limpiada está seca',
		whyAbraded: 'Por qué se lija',
		whyMissed: 'Por qué se perdió la ventana',
		points: 'Lecturas de la galga de aguja, tres lugares o más',
		pointsHint: 'Tome paredes, esquinas y el lugar que parezca más fino.',
		whyAnother: 'Por qué hace falta otra'
	},
	glove: {
		is: 'La membrana está',
		cured: 'Curada: vuelve a su forma, no queda marca',
		soft: 'Todavía blanda o pegajosa',
		shoreA: 'Shore A, si tiene durómetro',
		sheetSays: (shoreA) => `la ficha dice ${shoreA}`,
		edgeSquare: 'El borde está limpio y a escuadra: nada que se pueda pillar',
		frameClean: 'El marco está rascado y lijado',
		wholeBack: 'La cera cubre todo el dorso, también esquinas y paredes',
		coats: 'Capas de cera',
		frameBack: 'El marco volvió a entrar',
		tight: 'Justo: poca contracción',
		loose: 'Flojo: la membrana ha encogido'
	},
	shell: {
		thinnest: 'Espesor en el lugar más fino',
		thinnestHint: ({ plannedMm, leastMm }) => `previsto ${plannedMm} mm; al menos ${leastMm} mm`,
		corners: 'Las esquinas y las paredes están llenas',
		feet: 'Los pies están hechos: se apoyará a nivel boca abajo',
		is: 'La madreforma está',
		hard: 'Dura: la uña no deja marca, suena',
		soft: 'Todavía blanda o caliente'
	},
	open: {
		boardOff: 'El tablero está desatornillado y fuera',
		wedged: 'El marco se levantó con cuñas por igual, alrededor'
	},
	mark: {
		mark: 'La marca',
		markHint: 'por ejemplo una flecha y «N» en el lado norte',
		sameSide: 'El mismo lado marcado en membrana y madreforma',
		line: 'La línea de partición entre membrana y madreforma',
		uneven: 'Irregular: traba sola las dos',
		plain: 'Lisa: se taladran o añaden llaves',
		keys: 'Línea lisa: qué llaves, y dónde',
		keysHint: 'por ejemplo dos agujeros a través de pestaña y madreforma, norte y este'
	},
	peel: { off: 'La membrana salió', whole: 'Entera', torn: 'Rasgada o marcada' },
	filmGone: 'Toda la película está lavada, la membrana está seca',
	inspect: {
		lookedAt: (place) => `Mirado: ${place}`,
		voids: 'Huecos',
		bubbles: 'Burbujas',
		tears: 'Rasgaduras',
		thinSpots: 'Zonas finas',
		dimensions: 'Medidas clave, como se midieron',
		verdict: 'Su veredicto',
		sound: 'Sano',
		needsRepair: 'Necesita reparación',
		reject: 'No utilizable',
		overall: { length: 'Largo total', width: 'Ancho total', height: 'Alto total' }
	},
	repaired: 'Qué se reparó, dónde y cómo',
	pour: {
		poured: (material) => `${material}, vertido`,
		head: 'Altura de líquido sobre el punto más hondo',
		partIs: 'La primera pieza es',
		good: 'Buena',
		faulty: 'Defectuosa: verter otra vez'
	},
	handover: {
		to: 'Entregado a',
		storage: 'Cómo se guarda',
		storageHint: 'La membrana descansa en su madreforma, a nivel, lejos de sol y calor.',
		repair: 'Cómo se repara',
		wornOut: 'Cuándo está gastado'
	},
	trouble: {
		what: 'Qué va mal',
		where: 'En qué lugar del molde',
		see: 'Qué ve usted',
		seeHint: 'No hace falta si alguien está herido, o si algo quema o echa humo: primero ayude.',
		made: 'Qué se hizo, lejos del molde',
		cup: 'Vaso de prueba: un vaso pequeño mezclado, se vigila si hace espuma',
		patch: 'Parche de prueba: se deja todo su tiempo de curado',
		shows: 'Qué muestra',
		good: 'Bueno: sin espuma, cura como debe',
		bad: 'Malo: hace espuma, o queda blando o pegajoso',
		done: 'Qué se hizo',
		wayBack: 'Cómo sigue el trabajo',
		resume: 'Seguir donde estábamos',
		redo: 'Poner otra vez esta capa o tanda',
		abradeThenOn: 'Seguir: lije, limpie, seque, después la siguiente',
		backTo: (phase) => `Volver a: ${phase}`
	},
	why: 'Por qué',
	whyAbandoned: 'Por qué se deja el trabajo',
	hold: {
		lookAt: 'Algo que el supervisor deba mirar',
		backTo: 'Devolver a',
		putRight: 'Qué hay que corregir',
		whyRejected: 'Por qué no se puede usar el molde',
		decision: 'Decisión',
		accept: 'Aceptar: el trabajo sigue',
		notYet: 'Todavía no: hay que corregirlo',
		reason: 'Motivo'
	}
};
