import type { Surface } from '../geometry/pattern';
import type { Figure, FigureInput, Law } from '../quantity/figure';
import { isOneNumber, rangeOver, type Range } from '../quantity/range';
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

/** A figure as it is left in the trace, with what its inputs say about its range. */
interface FigureToTrace extends Omit<Figure, 'inputs'> {
	inputs: FigureInput[];
	/** Why it has no range although its inputs have one; joined to its note. */
	noRange?: string;
}

/** Leaves the trace of one number under its path in the plan, and hands the number on. */
export function traced(draft: Draft, path: string, given: FigureToTrace): number {
	const { noRange, ...figure } = given;
	draft.figures[path] =
		noRange === undefined
			? figure
			: { ...figure, note: figure.note === undefined ? noRange : `${figure.note} ${noRange}` };
	return figure.value;
}

/**
 * The range that a number inherits from its inputs, to be spread into its figure; nothing when none of
 * them has one or it does not move with them. `compute` takes the inputs in their order; one that is a
 * text comes as NaN. Where a law's limit lies inside the range, the note says so and there is none.
 */
export function inherited(
	{ figures }: Draft,
	inputs: readonly FigureInput[],
	compute: (...values: number[]) => number
): Partial<Range> & Pick<FigureToTrace, 'noRange'> {
	const ranges = inputs.map(({ figure, low, high, value }): Range => {
		const traced = figure === undefined ? undefined : figures[figure];
		const own = typeof value === 'number' ? value : Number.NaN;
		return { low: traced?.low ?? low ?? own, high: traced?.high ?? high ?? own };
	});
	if (!ranges.some(({ low, high }) => low < high)) return {};
	const found = rangeOver(ranges, compute);
	if ('limit' in found) {
		return { noRange: `No range is given: it reaches beyond a limit (${found.limit}).` };
	}
	return isOneNumber(found) ? {} : found;
}

/** The upper end of a number's likely range, which decides where too much can hurt; itself without one. */
export function highEnd({ figures }: Draft, path: string, value: number): number {
	return Math.max(value, figures[path]?.high ?? value);
}

/** The lower end of a number's likely range, which decides where too little can hurt; itself without one. */
export function lowEnd({ figures }: Draft, path: string, value: number): number {
	return Math.min(value, figures[path]?.low ?? value);
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
