import type { PhaseId } from '../../content/vocabulary';
import type { RuleName } from '../rules';
import { BENCH, SUPERVISOR, bench, found, obeys } from './base';

/** Mixing a cup: the same for coats of the glove and rounds of the shell. */
export const weighed = {
	guard: bench('briefed', 'roomFits', 'knownParts', 'somethingWeighed'),
	actions: ['work', 'noteWeighing']
} as const;
export const discarded = {
	guard: bench(),
	target: 'weighing',
	actions: ['work', 'dropCup']
} as const;
export const mixed = {
	guard: bench('briefed', 'onRatio', 'tackPassed', 'windowOpen'),
	target: 'mixed',
	actions: ['work', 'noteMixing']
} as const;

/** The surface below a coat that is about to go on is tested again, or found shut. */
export const testBelow = [
	{ guard: found('wet', 'coat below'), actions: ['work', 'noteWet'] },
	{ guard: found('open', 'coat below'), actions: ['work', 'noteTack'] },
	{ guard: found('closed', 'coat below'), target: 'missed', actions: ['work', 'noteMissed'] }
] as const;

/** Abrading, which waits for a decision unless a supervisor has ordered it. */
export function abrade(phase: PhaseId, ...rules: RuleName[]) {
	const all: RuleName[] = [...BENCH, ...rules];
	return [
		{
			guard: { type: 'obeysAndOrdered', params: { to: phase, rules: all } },
			target: 'weighing',
			actions: ['work', 'noteAbradedAsOrdered', 'trustAbraded']
		},
		{ guard: obeys(...all), target: 'deciding', actions: ['work', 'noteAbraded'] }
	] as const;
}

export const decide = [
	{
		guard: { type: 'obeysAndAccepted' as const, params: { rules: SUPERVISOR } },
		target: 'weighing',
		actions: ['decide', 'trustAbraded']
	},
	{ guard: obeys(...SUPERVISOR), target: 'missed', actions: 'decide' }
] as const;
