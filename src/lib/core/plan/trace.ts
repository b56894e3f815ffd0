import type { Surface } from '../geometry/pattern';
import type { Figure, FigureInput, Law } from '../quantity/figure';
import { rangeOver, type Range } from '../quantity/range';
import type { Unit } from '../quantity/unit';
import type { PlanInputs } from './inputs';
import type { PlanWarning } from './plan';

/** What every part of the plan reads, and where it leaves its trace and its warnings. */
export interface Draft {
	inputs: PlanInputs;
	surface: Surface;
	temperatureC: number;
	humidityPct: number;
	figures: Record<string, Figure>;
	warnings: PlanWarning[];
}

const input =
	(origin: FigureInput['origin']) =>
	(symbol: string, label: string, value: number | string, unit: Unit): FigureInput => ({
		symbol,
		label,
		value,
		unit,
		origin
	});

export const entered = input('entered');
export const fromSheet = input('data sheet');
export const constant = input('constant');

/** An input that is itself a number of the plan; `figure` is its path when it has a trace. */
export function computed(
	symbol: string,
	label: string,
	value: number,
	unit: Unit,
	figure?: string
): FigureInput {
	const base = { symbol, label, value, unit, origin: 'computed' as const };
	return figure === undefined ? base : { ...base, figure };
}

/** Leaves the trace of one number under its path in the plan, and hands the number on. */
export function traced(
	draft: Draft,
	path: string,
	figure: Omit<Figure, 'inputs'> & { inputs: FigureInput[] }
): number {
	draft.figures[path] = figure;
	return figure.value;
}

/**
 * The range that a number inherits from its inputs, to be spread into its figure; nothing when none of
 * them has one. `compute` takes the inputs in their order; one that is a text comes as NaN.
 */
export function inherited(
	{ figures }: Draft,
	inputs: readonly FigureInput[],
	compute: (...values: number[]) => number
): Partial<Range> {
	const ranges = inputs.map(({ figure, low, high, value }): Range => {
		const traced = figure === undefined ? undefined : figures[figure];
		const own = typeof value === 'number' ? value : Number.NaN;
		return { low: traced?.low ?? low ?? own, high: traced?.high ?? high ?? own };
	});
	const isUncertain = ranges.some(({ low, high }) => low < high);
	return (isUncertain && rangeOver(ranges, compute)) || {};
}

/** An input that the shop may set and has not: the value that stands in for it. */
export const assumed = input('default');

/** An input that was entered, or else its stated default. */
export function enteredOr(
	value: number | undefined,
	fallback: number,
	symbol: string,
	label: string,
	unit: Unit
): FigureInput {
	return value === undefined
		? assumed(symbol, `${label} (common practice, no source)`, fallback, unit)
		: entered(symbol, label, value, unit);
}

/** A law of the trade that is no formula of nature, written where the plan uses it. */
export function tradeLaw(id: string, name: string, formula: string, validity: string): Law {
	return { id, name, formula, source: 'common practice, no source', validity };
}

export function warn(
	draft: Draft,
	severity: PlanWarning['severity'],
	code: string,
	where: string,
	text: string
): void {
	draft.warnings.push({ code, severity, where, text });
}
