import { max } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { numberText } from '$lib/core/quantity/display';

export interface Bar {
	label: string;
	/** In the unit of the axis, never below zero. */
	value: number;
	text: string;
	isChosen: boolean;
}

export const BAR_ROW_PX = 46;
const EDGE_PX = 24;

/** Bars from zero, their labels above them, for a drawing of this width. */
export function barLayout(bars: readonly Bar[], width: number) {
	const x = scaleLinear([0, max(bars, ({ value }) => value) || 1], [1, width - EDGE_PX]).nice(4);
	return {
		x,
		ticks: x.ticks(Math.max(2, Math.floor(width / 110))).map((value) => ({
			x: x(value),
			text: numberText(value)
		})),
		rows: bars.map((bar, i) => ({
			...bar,
			textY: i * BAR_ROW_PX + 14,
			y: i * BAR_ROW_PX + 20,
			lengthPx: Math.max(0, x(bar.value) - x(0))
		})),
		bottom: bars.length * BAR_ROW_PX
	};
}
