import type { WindowPhase } from '../design/window-phase';
import type { Ask, BoardLine } from './board-line';

interface WallState {
	kind: 'ask' | 'wait' | 'open' | 'closing' | 'closed' | 'none';
	/** One or two words that can be read from across the room. */
	word: string;
	/** Outline in a box of 16 by 16: every state has its own. */
	shape: string;
	/** What to say where no clock runs. */
	more: string;
}

const ASKS: Record<Ask, [word: string, shape: string]> = {
	trouble: ['Trouble', 'M8 1.5l7 12.5H1ZM8 6v4'],
	damage: ['Damaged', 'M3.5 3.5l9 9M12.5 3.5l-9 9'],
	deviation: ['Decide', 'M8 1.5L14.5 8L8 14.5L1.5 8Z'],
	signature: ['Sign', 'M8 1.5L14.5 8L8 14.5L1.5 8Z']
};

const PHASES: Record<WindowPhase, Pick<WallState, 'kind' | 'word' | 'shape'>> = {
	wait: { kind: 'wait', word: 'Wait', shape: 'M4 2h8L4 14h8Z' },
	'test-now': { kind: 'open', word: 'Test now', shape: 'M3 1l12 7L3 15Z' },
	closing: { kind: 'closing', word: 'Closing', shape: 'M3 2l7 6l-7 6M13.5 1v14' },
	closed: { kind: 'closed', word: 'Shut', shape: 'M2 2h12v12H2Z' }
};

/** What the wall says of a mold, given where the present lies against its window. */
export function wallState(line: BoardLine, phase: WindowPhase | null): WallState {
	if (line.ask) {
		const [word, shape] = ASKS[line.ask.kind];
		return { kind: 'ask', word, shape, more: line.ask.text };
	}
	if (line.status === 'paused') {
		return { kind: 'none', word: 'Paused', shape: 'M5 3v10M11 3v10', more: line.step };
	}
	if (phase === null) {
		return { kind: 'none', word: 'In work', shape: 'M2 8h12', more: line.nextAct };
	}
	// A working time is not tested, it runs.
	const isWork = line.window?.label.startsWith('Working time') ?? false;
	const { kind, word, shape } = PHASES[phase];
	return {
		kind,
		shape,
		word: isWork && phase === 'test-now' ? 'Working' : word,
		more: line.window?.label ?? ''
	};
}
