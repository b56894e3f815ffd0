import { PHASE_IDS, type PhaseId } from '../content/vocabulary';
import { ENGLISH, type Words } from '../language/words';
import type { ProcessContext } from './context';
import { HOLD_IDS } from './events';
import { HOLDS } from './holds';
import { titleInWords } from './steps/batch-words';

interface Stop {
	phase: PhaseId;
	title: string;
	/** Coat or round index, for the stops that repeat. */
	index: number;
}

/** Every stop of this mold in order: its phases, each coat and round, and the hold points. */
export function stopsOf(c: ProcessContext, w = ENGLISH): Stop[] {
	return PHASE_IDS.flatMap((phase): Stop[] => [...ownStops(c, phase, w), ...holdStops(phase, w)]);
}

function ownStops(c: ProcessContext, phase: PhaseId, w: Words): Stop[] {
	if (phase === 'release' && !c.plan.release.needed) return [];
	if (phase === 'detail' || phase === 'build') {
		return c.coats.flatMap((coat, index) =>
			coat.kind === phase ? [{ phase, title: titleInWords(coat.title, w), index }] : []
		);
	}
	if (phase === 'shell')
		return c.rounds.map((round, index) => ({ phase, title: titleInWords(round.title, w), index }));
	return [{ phase, title: w.titles.phases[phase], index: 0 }];
}

function holdStops(phase: PhaseId, { steps, titles }: Words): Stop[] {
	return HOLD_IDS.filter((id) => HOLDS[id].phase === phase).map((id) => ({
		phase,
		title: steps.hold.title(titles.holds[id]),
		index: 1000
	}));
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
