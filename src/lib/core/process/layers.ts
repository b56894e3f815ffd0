import { isSince, type ProcessContext } from './context';
import type { EventOf } from './events';

/** Layers of cloth or strand that the shell round at work takes; 0 where the plan has none. Counted from version 3 on. */
export function layersPlanned(c: ProcessContext): number {
	if (c.phase !== 'shell' || !isSince(c, 3)) return 0;
	return c.rounds[c.roundIndex]?.layers ?? 0;
}

/** How many of them are missing. */
export function layersShortOf(c: ProcessContext, { layersLaid }: EventOf<'coat.finished'>): number {
	return Math.max(0, layersPlanned(c) - (layersLaid ?? 0));
}
