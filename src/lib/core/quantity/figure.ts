import type { Unit } from './unit';

/** Where an input of a figure came from. */
export type Origin = 'entered' | 'data sheet' | 'default' | 'computed' | 'constant';

export interface FigureInput {
	/** Symbol as it stands in the formula, for example "A" or "ρ". */
	symbol: string;
	label: string;
	value: number | string;
	unit: Unit;
	origin: Origin;
	/** Key of the figure this input is, when it was computed. */
	figure?: string;
	/** Likely range of the input, when it is uncertain and no figure says so. */
	low?: number;
	high?: number;
}

/**
 * What a law is, apart from its arithmetic. Every file in `laws/` exports one or more of these,
 * and a test refuses a law without a source.
 */
export interface Law {
	id: string;
	name: string;
	/** The formula in plain text with the symbols of its inputs, for example "m_A = m_B · r_A / r_B". */
	formula: string;
	/** Author, year, title or standard number; or "common practice, no source"; or ends in "(from memory)". */
	source: string;
	/** The range in which the law may be used, in words. */
	validity: string;
}

/** A number that can be opened: value, unit, formula, inputs, source and range. */
export interface Figure {
	label: string;
	value: number;
	unit: Unit;
	law: Law;
	inputs: FigureInput[];
	/** Likely range of the value, when the inputs carry an uncertainty. */
	low?: number;
	high?: number;
	/** What a reader must know before using the number, for example a limit that was reached. */
	note?: string;
}
