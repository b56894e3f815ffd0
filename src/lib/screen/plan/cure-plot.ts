import { union } from 'd3-array';
import type { Plan } from '$lib/core/plan/plan';
import { displayQuantity, type UnitSystem } from '$lib/core/quantity/display';
import { displayScale } from '$lib/core/quantity/display-scales';
import { durationText } from '$lib/core/quantity/duration-text';
import type { TimePlotData } from '../plot/plot-data';

export type CureMaterial = NonNullable<Plan['cure']>['materials'][number];

/**
 * A forgotten cup and the coat on the wall, from mixing on, on one plot.
 *
 * @param hottestC - of all materials drawn beside each other, so that their axes can be compared
 */
export function curePlot(
	material: CureMaterial,
	system: UnitSystem,
	hottestC: number
): TimePlotData {
	const { cup, film, calmPeakC } = material;
	const { convert, unit } = displayScale(cup.peakC, 'C', system);
	const shown = (value: number) => displayQuantity(value, 'C', system);
	const line = (curve: typeof cup.curve) =>
		curve.map(({ atS, temperatureC }) => ({ x: atS, y: convert(temperatureC) }));
	return {
		series: [
			{ label: 'cup', stroke: 'solid', pieces: [line(cup.curve)] },
			{ label: 'coat', stroke: 'dashed', pieces: [line(film.curve)] }
		],
		levels: [{ label: 'calm limit', value: convert(calmPeakC), stroke: 'dotted' }],
		reach: convert(hottestC),
		spans: [{ label: `workable ${durationText(cup.workableS)}`, fromS: 0, toS: cup.workableS }],
		untilS: Math.max(cup.curve.at(-1)?.atS ?? 0, film.curve.at(-1)?.atS ?? 0, 1),
		unit,
		isFromZero: false,
		summary: `A cup of ${displayQuantity(cup.massG, 'g', system)} stays workable for ${durationText(cup.workableS)} and, forgotten, reaches ${shown(cup.peakC)} after ${durationText(cup.peakAtS)}; a coat of ${displayQuantity(film.thicknessMm, 'mm', system)} reaches ${shown(film.peakC)}.`,
		table: {
			head: ['After mixing', 'Cup', 'Cup cured', 'Coat', 'Coat cured'],
			rows: cureRows(material, shown)
		}
	};
}

function cureRows({ cup, film }: CureMaterial, shown: (valueC: number) => string): string[][] {
	const at = (curve: typeof cup.curve, atS: number): [string, string] => {
		const moment = curve.find((each) => each.atS === atS);
		if (!moment) return ['', ''];
		const cured = displayQuantity(Math.round(moment.conversion * 100) / 100, 'fraction', 'SI');
		return [shown(moment.temperatureC), cured];
	};
	const times = union(
		cup.curve.map(({ atS }) => atS),
		film.curve.map(({ atS }) => atS)
	);
	return [...times]
		.sort((a, b) => a - b)
		.map((atS) => [durationText(atS), ...at(cup.curve, atS), ...at(film.curve, atS)]);
}
