import { CALM_SEARCHED_G, largestCalmCupG, thickestCalmSpreadMm } from '../laws/calm-cup';
import { CURE_RANGE_C } from '../laws/cure-rate';
import { calibratedKPerS, peakMoment, workableS, type CuringMaterial } from '../laws/mass-effect';
import type { FigureInput } from '../quantity/figure';
import { isOneNumber, rangeOver, type NoRange, type Range } from '../quantity/range';
import { DEFAULTS } from './defaults';
import { remembered } from './remembered';
import { entered, type Draft } from './trace';

/** A cup, the peak up to which one counts as calm, and what is uncertain in the heat of cup and coat. */
interface UncertainHeat {
	massG: number;
	calmPeakC: number;
	heatJPerG: Range;
	specificHeatJPerGK: Range;
	roomC: Range;
	thicknessMm: Range;
}

/** A range to be spread into a figure, or the reason why it has none. */
type SpreadRange = Partial<Range> & { noRange?: string };

/** The range of an input of a figure by its symbol; its value alone when it has none. */
export function rangeOfInput(inputs: readonly FigureInput[], symbol: string): Range {
	const found = inputs.find((input) => input.symbol === symbol);
	const value = typeof found?.value === 'number' ? found.value : Number.NaN;
	return { low: found?.low ?? value, high: found?.high ?? value };
}

/**
 * Likely ranges of how long a cup stays workable, of how heavy it may be forgotten, and of how hot cup and
 * coat get: from little heat, much heat capacity, a thin coat and a cold room to their opposites, all at
 * once. The sheet's pot life holds at both ends.
 */
export const heatRanges = remembered(
	(material: CuringMaterial, { massG, calmPeakC, ...uncertain }: UncertainHeat) => {
		const cup = { kind: 'cup', massG } as const;
		const { roomC, thicknessMm } = uncertain;
		const ends = [
			{ of: coolEnd(material, uncertain), roomC: roomC.low, thicknessMm: thicknessMm.low },
			{ of: hotEnd(material, uncertain), roomC: roomC.high, thicknessMm: thicknessMm.high }
		] as const;
		const overEnds = (peak: (end: (typeof ends)[number], kPerS: number) => number) =>
			rangeOver([{ low: 0, high: 1 }], (at = 0) => {
				const end = at > 0.5 ? ends[1] : ends[0];
				return peak(end, calibrated(end.of));
			});
		return {
			calmG: overEnds((end, k) => {
				const peakC = Math.max(calmPeakC, end.roomC);
				const limits = { peakC, searchUpToG: CALM_SEARCHED_G };
				return largestCalmCupG(end.of, end.roomC, limits, k) ?? Number.NaN;
			}),
			workableS: rangeOver([{ low: 0, high: 1 }, roomC], (at = 0, celsius = 0) => {
				const end = at > 0.5 ? ends[1] : ends[0];
				return workableS(end.of, cup, celsius, calibrated(end.of));
			}),
			cupPeakC: overEnds((end, k) => peakMoment(end.of, cup, end.roomC, k).temperatureC),
			filmPeakC: overEnds((end, k) => {
				const film = { kind: 'film', thicknessMm: end.thicknessMm } as const;
				return peakMoment(end.of, film, end.roomC, k).temperatureC;
			})
		};
	}
);

/** How thick what is left may be spread and stay calm: from the hottest to the coolest of what is likely. */
export const calmSpreadRange = remembered(
	(
		material: CuringMaterial,
		uncertain: Ends & { roomC: Range; calmPeakC: number }
	): Range | NoRange =>
		rangeOver([{ low: 0, high: 1 }], (at = 0) => {
			const of = at > 0.5 ? hotEnd(material, uncertain) : coolEnd(material, uncertain);
			const roomC = at > 0.5 ? uncertain.roomC.high : uncertain.roomC.low;
			return thickestCalmSpreadMm(of, roomC, uncertain.calmPeakC, calibrated(of)) ?? Number.NaN;
		})
);

/** The room as an input of a heat balance, with how far its thermometer or its corners may be off. */
export function roomInput({ inputs, temperatureC }: Draft): FigureInput {
	const offK = inputs.shop.roomSpreadK ?? DEFAULTS.thermometerK.value;
	return {
		...entered('T_room', 'room temperature', temperatureC, 'C'),
		low: Math.max(CURE_RANGE_C.min, temperatureC - offK),
		high: Math.min(CURE_RANGE_C.max, temperatureC + offK)
	};
}

/** The rate of a material; asked for again for each body of it. */
export const calibrated = remembered((material: CuringMaterial) => calibratedKPerS(material));

type Ends = Pick<UncertainHeat, 'heatJPerG' | 'specificHeatJPerGK'>;

const coolEnd = (material: CuringMaterial, uncertain: Ends): CuringMaterial => ({
	...material,
	heatJPerG: uncertain.heatJPerG.low,
	specificHeatJPerGK: uncertain.specificHeatJPerGK.high
});
const hotEnd = (material: CuringMaterial, uncertain: Ends): CuringMaterial => ({
	...material,
	heatJPerG: uncertain.heatJPerG.high,
	specificHeatJPerGK: uncertain.specificHeatJPerGK.low
});

/** A range as a figure takes it; it never leaves out the value itself. */
export function spreadRange(found: Range | NoRange, value: number): SpreadRange {
	if ('limit' in found) {
		return { noRange: `No range is given: it reaches beyond a limit (${found.limit}).` };
	}
	const range = { low: Math.min(found.low, value), high: Math.max(found.high, value) };
	return isOneNumber(range) ? {} : range;
}
