import { displayQuantity } from '../quantity/display';
import type { Sheet } from '../materials/sheet';
import { roughHeatNote } from './curing-material';
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

/** Says before the start what gets too hot to be left alone; the peaks are rough, so it never refuses. */
export function warnOfHeat(
	draft: Draft,
	sheet: Sheet,
	heated: Pick<CureMaterial, 'cup' | 'film' | 'calmPeakC'>
): void {
	if (!isHot(heated)) return;
	const { cup, film, calmPeakC } = heated;
	const { units } = draft.inputs.shop;
	const about = (peakC: number) => displayQuantity(Math.round(peakC), 'C', units);
	const thick = displayQuantity(film.thicknessMm, 'mm', units);
	const sentences = [
		`${sheet.name} heats itself: a forgotten cup may reach about ${about(cup.peakC)}.`,
		'Mix no more than is laid at once; what is left goes flat and open into the extraction.',
		film.peakC > calmPeakC
			? `A coat of ${thick} may reach about ${about(film.peakC)}: lay it thinner, and let each round cool.`
			: '',
		roughHeatNote(sheet) ? 'Rough until the data sheet gives its heat of reaction.' : ''
	];
	warn(draft, 'warn', 'hot-cup', 'cure', sentences.filter(Boolean).join(' '));
}
