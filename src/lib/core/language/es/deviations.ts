import { foundText, type DeviationWords } from '../en/deviations';
import { log } from './log';

/** What a test found, in Spanish; the thickness of a glove has two answers of its own. */
const result = (said: string): string =>
	said === 'too thin'
		? 'demasiado fina'
		: said === 'thick enough'
			? 'bastante gruesa'
			: (log.results[said as keyof typeof log.results] ?? said);

export const deviations: DeviationWords = {
	windowMissed: ({ hadCup }) =>
		`Se pasó la ventana de recubrimiento: la superficie está dura y no admite huella.${hadCup ? ' El vaso pesado para ella se apartó.' : ''}`,
	abraded: ({ grit, reason }) =>
		`La superficie se lijó con ${grit}, se limpió y se secó: ${reason}`,
	roundAdded: ({ reason }) => `Se añadió una tanda de madreforma: ${reason}`,
	mixedLate: () => 'Se mezcló otro vaso con la ventana de recubrimiento ya cerrada.',
	mixedFast: ({ tookS, mixS }) =>
		`Un vaso se mezcló durante ${tookS} s; la ficha técnica pide ${mixS} s.`,
	largeCup: ({ massG, plannedG }) =>
		`Se mezcló un vaso de ${massG} g; previstos ${plannedG} g. Se calienta más y se pasa antes.`,
	mixerNotInDate: () =>
		'Un vaso lo mezcló una persona cuya formación sobre isocianatos no estaba vigente.',
	nextDropped: () =>
		'El vaso siguiente ya estaba mezclado y también se apartó: la superficie de abajo ya no lo admite.',
	laidOnShut: ({ min }) =>
		`Un vaso se aplicó ${min} min después de cerrarse la ventana de recubrimiento de la superficie de abajo: en lo que estaba descubierto no se adhiere.`,
	laidPastWindow: ({ min }) =>
		`Un vaso mezclado dentro de la ventana de recubrimiento se aplicó ${min} min después de cerrarse.`,
	laidPastPotLife: ({ min, mostMin }) =>
		`Un vaso se aplicó ${min} min después de juntarse sus partes; la vida de la mezcla es de ${mostMin} min.`,
	laidPastWorking: ({ min, mostMin }) =>
		`Un vaso se aplicó ${min} min después de mezclarlo; su tiempo de trabajo es de ${mostMin} min.`,
	short: ({ title, reason }) => `${title} se quedó corta: ${reason}`,
	fewLayers: ({ title, laid, planned, reason }) =>
		`${title} lleva ${laid} de ${planned} capas de refuerzo: ${reason}`,
	over: ({ title, laidG, plannedG }) =>
		`${title} llevó más de lo previsto: ${laidG} g, previstos ${plannedG} g.`,
	notBrushedBack: () => 'La capa fina no se subió con el pincel antes de gelificar.',
	testedEarly: ({ title, tookMin, expectedMin }) =>
		`${title} se encontró casi sin pegajosidad a los ${tookMin} min; según la ficha técnica se esperan ${expectedMin} min.`,
	testedTooSoon: ({ title, tookMin, soonestMin }) =>
		`${title} se encontró sin pegajosidad a los ${tookMin} min; según la ficha técnica se espera como muy pronto a los ${soonestMin} min. La prueba no cuenta y se repite.`,
	tooThin: ({ thinnestMm, leastMm }) =>
		`La membrana mide ${thinnestMm} mm en su punto más fino; el plan pide ${leastMm.toFixed(1)} mm.`,
	looseFrame: ({ note }) =>
		`El marco volvió a entrar suelto: la membrana se encogió más de lo previsto. ${note}`.trim(),
	torn: ({ note }) => `La membrana no salió entera. ${note}`.trim(),
	gap: ({ gapMm, plannedMm, toleranceMm }) =>
		`El marco queda a ${gapMm} mm del modelo; previstos ${plannedMm} mm, con ${toleranceMm} mm de más o de menos.`,
	found: (found) =>
		foundText(found, `La inspección lo encontró así: ${log.verdicts[found.verdict]}`, log),
	foundAnew: ({ before, now }) =>
		`Se inspeccionó de nuevo sin ninguna reparación anotada: primero ${log.verdicts[before]}, ahora ${log.verdicts[now]}.`,
	roomOff: ({ roomC, humidityPct, plannedC, plannedPct }) =>
		`El local se leyó a ${roomC} °C y ${humidityPct} %; el plan cuenta con ${plannedC} °C y ${plannedPct} %. Con calor un vaso fragua y una ventana se cierra antes, con frío después; con aire húmedo la película seca más despacio.`,
	roomMoist: ({ humidityPct, roomC, plannedPct, leastC }) =>
		`El aire se leyó a ${humidityPct} % y ${roomC} °C, según el plan ${plannedPct} %: puede hacer espuma en un uretano. Seque el local, tenga cerrada la parte A, mantenga el modelo por encima de ${leastC} °C (punto de rocío y margen), y haga antes un vaso de prueba.`,
	roomRange: ({ name, roomC, minC, maxC }) =>
		`El local se leyó a ${roomC} °C; ${name} es para ${minC} a ${maxC} °C. Lleve local, partes y modelo a ese intervalo.`,
	surfaceDew: ({ surfaceC, dewC, marginK }) =>
		`El modelo a ${surfaceC} °C está ${Math.abs(marginK)} °C (${(1.8 * Math.abs(marginK)).toFixed(1)} °F) por ${marginK < 0 ? 'debajo' : 'encima'} del punto de rocío, ${dewC} °C; se piden 3 °C (5.4 °F) por encima. El agua puede posarse sin que se vea: caliente el modelo o seque el local, y lea otra vez.`,
	testedAnew: ({ before, now }) =>
		`Una prueba se retiró y se anotó de nuevo: primero «${result(before)}», ahora «${result(now)}».`
};
