import { PHASE_IDS, type PhaseId } from '../content/vocabulary';
import type { ProcessContext } from './context';
import { HOLDS } from './holds';
import { PHASE_TITLES } from './titles';

interface Stop {
	phase: PhaseId;
	title: string;
	/** Coat or round index, for the stops that repeat. */
	index: number;
}

/** Every stop of this mold in order: its phases, each coat and round, and the hold points. */
export function stopsOf(c: ProcessContext): Stop[] {
	return PHASE_IDS.flatMap((phase): Stop[] => [...ownStops(c, phase), ...holdStops(phase)]);
}

function ownStops(c: ProcessContext, phase: PhaseId): Stop[] {
	if (phase === 'release' && !c.plan.release.needed) return [];
	if (phase === 'detail' || phase === 'build') {
		return c.coats.flatMap((coat, index) =>
			coat.kind === phase ? [{ phase, title: coat.title, index }] : []
		);
	}
	if (phase === 'shell')
		return c.rounds.map((round, index) => ({ phase, title: round.title, index }));
	return [{ phase, title: PHASE_TITLES[phase], index: 0 }];
}

function holdStops(phase: PhaseId): Stop[] {
	return Object.values(HOLDS)
		.filter((hold) => hold.phase === phase)
		.map((hold) => ({ phase, title: `Hold point: ${hold.title.toLowerCase()}`, index: 1000 }));
}

/** Index in `stopsOf` of the stop at work. */
export function stopAt(c: ProcessContext, stops: readonly Stop[]): number {
	const index = c.hold
		? 1000
		: c.phase === 'shell'
			? Math.min(c.roundIndex, c.rounds.length - 1)
			: c.phase === 'detail' || c.phase === 'build'
				? Math.min(c.coatIndex, c.coats.length - 1)
				: 0;
	const at = stops.findIndex((stop) => stop.phase === c.phase && stop.index === index);
	return at < 0 ? 0 : at;
}
