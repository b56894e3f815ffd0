import type { FigureInput } from '../quantity/figure';
import { DEFAULTS, defaultInput } from './defaults';
import { entered, type Draft } from './trace';

/** Thickness of the boards that the shop builds frames of, in mm. */
export function boardThicknessMm({ inputs }: Pick<Draft, 'inputs'>): number {
	return inputs.shop.boardMm ?? DEFAULTS.boardMm.value;
}

/** The same as an input of a figure: as the shop says it, or the default. */
export function boardInput({ inputs }: Pick<Draft, 'inputs'>): FigureInput {
	const { boardMm } = inputs.shop;
	return boardMm === undefined
		? defaultInput('t', 'boardMm')
		: entered('t', DEFAULTS.boardMm.label, boardMm, 'mm');
}
