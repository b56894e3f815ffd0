import type { PhaseId } from '../../content/vocabulary';
import type { RuleName } from '../rules';
import { found } from './finding';
import { BENCH, SUPERVISOR, bench, obeys } from './obey';

/** Mixing a cup: the same for coats of the glove and rounds of the shell. */
export const weighed = {
	guard: bench('briefed', 'roomFits', 'knownParts', 'somethingWeighed', 'fitsCup', 'partsInTime'),
	actions: ['work', 'noteWeighing']
} as const;
export const discarded = {
	guard: bench('cupThere'),
	target: 'weighing',
	actions: ['work', 'dropCup']
} as const;
export const mixed = {
	guard: bench('briefed', 'onRatio', 'partsInTime', 'mixerNamed', 'tackPassed', 'windowOpen'),
	target: 'mixed',
	actions: ['work', 'noteMixing']
} as const;

/** What becomes of the cup prepared meanwhile, when the one in hand is laid or set aside. */
function movesUp(action: 'noteLaying' | 'dropCup') {
	return (['mixed', 'weighed', 'none'] as const).map((next) => ({
		guard: {
			type: 'obeysAndMovesUp' as const,
			params: { rules: [...BENCH, 'cupThere'] as RuleName[], next }
		},
		target: next === 'none' ? 'weighing' : next,
		actions: ['work', action] as const
	}));
}

/**
 * A mixed cup is being laid. Meanwhile the next one of the same coat or round may be weighed and, when
 * there is a second person, mixed: it goes on the wet cup under the brush. Until that one is on, it
 * would go on the bare surface if the first were set aside, so it is held against test and window too.
 */
export const laying = {
	on: {
		'cup.applied': movesUp('noteLaying'),
		'cup.discarded': [
			{
				guard: {
					type: 'obeysAndDropsNext' as const,
					params: { rules: [...BENCH, 'cupThere'] as RuleName[] }
				},
				actions: ['work', 'dropNext'] as const
			},
			{
				guard: {
					type: 'obeysAndStrandsNext' as const,
					params: { rules: [...BENCH, 'cupThere'] as RuleName[] }
				},
				target: 'weighing',
				actions: ['work', 'dropBoth'] as const
			},
			...movesUp('dropCup')
		],
		'cup.weighed': {
			guard: bench(
				'briefed',
				'roomFits',
				'knownParts',
				'somethingWeighed',
				'fitsCup',
				'partsInTime',
				'anotherCup',
				'nextUnmixed'
			),
			actions: ['work', 'noteWeighing'] as const
		},
		'cup.mixed': {
			guard: bench(
				'briefed',
				'onRatio',
				'partsInTime',
				'crewMixes',
				'mixerNamed',
				'nextUnmixed',
				'surfaceTakesNext'
			),
			actions: ['work', 'noteMixing'] as const
		}
	}
};

const ASIDE: RuleName[] = [...BENCH, 'cupInHand', 'cupThere'];
/** In trouble a cup is set aside where it stands: its time runs meanwhile. */
export const setAside = [
	{
		guard: { type: 'obeysAndDropsNext' as const, params: { rules: ASIDE } },
		actions: ['work', 'dropNext'] as const
	},
	{
		guard: { type: 'obeysAndStrandsNext' as const, params: { rules: ASIDE } },
		actions: ['work', 'dropBoth', 'noteAside'] as const
	},
	{ guard: obeys(...ASIDE), actions: ['work', 'dropCup', 'noteAside'] as const }
];

/** The surface below a coat that is about to go on is tested again, or found shut. */
export const testBelow = [
	{ guard: found('wet', 'coat below'), actions: ['work', 'noteAnew', 'noteWetBelow'] },
	{ guard: found('early', 'coat below'), actions: ['work', 'noteAnew', 'noteTooSoon'] },
	{ guard: found('open', 'coat below'), actions: ['work', 'noteAnew', 'noteTack'] },
	{
		guard: found('closed', 'coat below'),
		target: 'missed',
		actions: ['work', 'noteAnew', 'noteMissed']
	}
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
