import type { FigureInput } from '../quantity/figure';
import { boardInput } from './board-thickness';
import { defaultInput } from './defaults';
import type { Plan } from './plan';
import { computed, traced, tradeLaw, type Draft } from './trace';

type Board = Plan['frame']['boards'][number];

const boardsLaw = tradeLaw(
	'frame-boards',
	'Cut list of the frame',
	'long side = inside + 2 · t; short side = inside; mold board = inside + 2 · (t + ledge); sides as high as the frame',
	'four straight boards butted at the corners, the long ones over the short; kerf of the saw not counted'
);

/** Leaves the trace of every length, width and thickness of the cut list. */
export function traceBoards(draft: Draft, boards: Plan['frame']['boards']): void {
	boards.forEach((board, i) => {
		const number = (key: 'lengthMm' | 'widthMm' | 'thicknessMm', what: string): number =>
			traced(draft, `frame.boards.${i}.${key}`, {
				label: `${board.name}: ${what}`,
				value: board[key],
				unit: 'mm',
				law: boardsLaw,
				inputs: inputsOf(draft, board, key)
			});
		number('lengthMm', 'length');
		number('widthMm', 'width');
		number('thicknessMm', 'thickness');
	});
}

function inputsOf(
	draft: Draft,
	{ name }: Board,
	key: 'lengthMm' | 'widthMm' | 'thicknessMm'
): FigureInput[] {
	const { figures } = draft;
	const thick = boardInput(draft);
	const of = (side: 'insideLengthMm' | 'insideWidthMm' | 'heightMm', label: string) =>
		computed('inside', label, figures[`frame.${side}`]?.value ?? 0, 'mm', `frame.${side}`);
	const length = of('insideLengthMm', 'inside length of the frame');
	const width = of('insideWidthMm', 'inside width of the frame');
	if (key === 'thicknessMm') return [thick];
	if (name === 'Mold board') {
		return [key === 'lengthMm' ? length : width, thick, defaultInput('ledge', 'ledgeMm')];
	}
	if (key === 'widthMm') return [of('heightMm', 'height of the frame')];
	return name === 'Long side' ? [length, thick] : [width];
}
