import { extent } from 'd3-array';
import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { numberText } from '$lib/core/quantity/display';
import type { TimePlotData } from './plot-data';
import { dodged } from './dodge';
import { timeAxis, type TimeAxis } from './time-axis';

const LABEL_PX = 7.6;
const SPAN_PX = 22;
const LINE_PX = 17;

interface PlotLabel {
	text: string;
	/** Where the line ends, and where its label found room. */
	fromY: number;
	y: number;
	isLevel: boolean;
}

export interface PlotLayout {
	width: number;
	height: number;
	box: { left: number; right: number; top: number; bottom: number };
	x: ScaleLinear<number, number>;
	y: ScaleLinear<number, number>;
	time: TimeAxis;
	values: { value: number; text: string }[];
	labels: PlotLabel[];
}

/** Lowest and highest value that the plot must show: every point, every level, and as far as asked. */
export function plotDomain({ series, levels, isFromZero, reach }: TimePlotData): [number, number] {
	const values = [
		...series.flatMap(({ pieces }) => pieces.flat().map(({ y }) => y)),
		...levels.map(({ value }) => value),
		...(reach === undefined ? [] : [reach])
	];
	const [low = 0, high = 1] = extent(values);
	const from = isFromZero ? Math.min(0, low) : low;
	return high > from ? [from, high] : [from, from + 1];
}

/** Scales, ticks and places of labels for a plot of this size in pixels. */
export function plotLayout(data: TimePlotData, width: number, height: number): PlotLayout {
	const texts = [...data.series, ...data.levels].map(({ label }) => label);
	const gutter = Math.min(width * 0.36, 22 + LABEL_PX * Math.max(...texts.map((t) => t.length)));
	const y = scaleLinear().domain(plotDomain(data)).nice(5);
	const values = y.ticks(5).map((value) => ({ value, text: numberText(value) }));
	const box = {
		left: 14 + LABEL_PX * Math.max(data.unit.length, ...values.map(({ text }) => text.length)),
		right: width - gutter,
		top: 14 + SPAN_PX * data.spans.length,
		bottom: height - 42
	};
	y.range([box.bottom, box.top]);
	const x = scaleLinear([0, data.untilS], [box.left, box.right]);
	const wanted = [
		...data.series.map(({ label, pieces }) => ({
			text: label,
			fromY: y(pieces.at(-1)?.at(-1)?.y ?? 0),
			isLevel: false
		})),
		...data.levels.map(({ label, value }) => ({ text: label, fromY: y(value), isLevel: true }))
	];
	const places = dodged(
		wanted.map(({ fromY }) => fromY),
		LINE_PX,
		box.top + 4,
		box.bottom
	);
	return {
		width,
		height,
		box,
		x,
		y,
		time: timeAxis(data.untilS, Math.max(2, Math.floor((box.right - box.left) / 62))),
		values,
		labels: wanted.map((label, i) => ({ ...label, y: places[i] ?? label.fromY }))
	};
}
