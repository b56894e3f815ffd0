import { displayQuantity, wholeDegrees } from '../quantity/display';
import type { Sheet } from '../materials/sheet';
import { roughHeatNote } from './curing-material';
import { DEFAULTS } from './defaults';
import type { Plan } from './plan';
import { warn, type Draft } from './trace';

type CureMaterial = NonNullable<Plan['cure']>['materials'][number];

/** Whether a forgotten cup or a coat of it passes what counts as calm. */
export const isHot = ({
	cup,
	film,
	calmPeakC
}: Pick<CureMaterial, 'cup' | 'film' | 'calmPeakC'>): boolean =>
	Math.max(cup.peakC, film.peakC) > calmPeakC;

/** Past this a mold is not built on one person's yes. */
const isTooHot = (...peaksC: number[]): boolean => Math.max(...peaksC) > DEFAULTS.hotPeakC.value;

/**
 * Says before the start what gets too hot to be left alone. The peaks are rough, so it never refuses; what
 * melts a cup waits for a supervisor.
 */
export function warnOfHeat(
	draft: Draft,
	sheet: Sheet,
	heated: Pick<CureMaterial, 'cup' | 'film' | 'calmPeakC' | 'smallerCupG'>
): void {
	if (!isHot(heated)) return;
	const { cup, film, calmPeakC, smallerCupG } = heated;
	const { units } = draft.inputs.shop;
	const about = (peakC: number) => wholeDegrees(peakC, units);
	const thick = displayQuantity(film.thicknessMm, 'mm', units);
	const smaller =
		smallerCupG === undefined
			? 'Smaller cups hardly help; a slower grade does.'
			: `Cups of up to ${displayQuantity(smallerCupG, 'g', units)} stay below ${about(DEFAULTS.hotPeakC.value)}.`;
	const sentences = [
		`${sheet.name} heats itself: a forgotten cup may reach about ${about(cup.peakC)}.`,
		isTooHot(cup.peakC) ? `That melts a plastic cup, and it can smoke. ${smaller}` : '',
		'Mix no more than is laid at once; what is left goes flat and open into the extraction.',
		film.peakC > calmPeakC
			? `A coat of ${thick} may reach about ${about(film.peakC)}: lay it thinner, and let each round cool.`
			: '',
		roughHeatNote(sheet) ? 'Rough until the data sheet gives its heat of reaction.' : ''
	];
	const severity = isTooHot(cup.peakC, film.peakC) ? 'decide' : 'warn';
	warn(draft, severity, 'hot-cup', 'cure', sentences.filter(Boolean).join(' '));
}

/** Whether the first part or a batch of it left in its bucket passes what counts as calm. */
export const isHotCasting = ({
	batchPeakC,
	peakC,
	calmPeakC
}: NonNullable<NonNullable<Plan['cure']>['casting']>): boolean =>
	Math.max(batchPeakC, peakC) > calmPeakC;

/** Says before the start that the first part heats itself, and what to do about it. */
export function warnOfCastingHeat(
	draft: Draft,
	sheet: Sheet,
	heat: NonNullable<NonNullable<Plan['cure']>['casting']>
): void {
	if (!isHotCasting(heat)) return;
	const { units } = draft.inputs.shop;
	const about = (peakC: number) => wholeDegrees(peakC, units);
	const sentences = [
		`${sheet.name} heats itself: a batch left in its bucket may reach about ${about(heat.batchPeakC)}; pour it at once.`,
		heat.peakC > heat.calmPeakC
			? `The first part may reach about ${about(heat.peakC)} in the mold, more where it is thick: it burns hands, shrinks and cracks, and wears the glove. Pour in layers if the data sheet allows it, or take a slower material, and let the part cool before it is touched.`
			: '',
		roughHeatNote(sheet) ? 'Rough until the data sheet gives its heat of reaction.' : ''
	];
	const severity = isTooHot(heat.batchPeakC, heat.peakC) ? 'decide' : 'warn';
	warn(draft, severity, 'hot-casting', 'cure', sentences.filter(Boolean).join(' '));
}
