import type { BenchView } from '$lib/core/bench/bench-view';
import { ENGLISH, type Words } from '$lib/core/language/words';
import { scaleText } from '$lib/core/process/scale-text';
import { spokenStep } from './spoken-step';

interface Seen {
	/** The instruction as it stands on the screen. */
	what: string;
	/** A cup is weighed at this step. */
	showsWeights: boolean;
	isEnded: boolean;
	/** The present, as an ISO instant. */
	now: string;
	words?: Words;
}

/** The step in view as a voice reads it: the same words and the same numbers as on the screen. */
export function spokenBench(
	{ step, cup, hurts, readabilityG }: Pick<BenchView, 'step' | 'cup' | 'hurts' | 'readabilityG'>,
	{ what, showsWeights, isEnded, now, words = ENGLISH }: Seen
): string {
	const inCup = (cup?.parts ?? []).map(({ part, targetG }) => ({ label: part, massG: targetG }));
	return spokenStep(
		{
			title: step.title,
			what,
			amounts: (showsWeights ? inCup : step.amounts).map(({ label, massG }) => ({
				label,
				text: `${scaleText(massG, readabilityG)} g`
			})),
			window: isEnded ? null : step.window,
			hurts: [...hurts.hazards, ...hurts.ppe].map(({ label }) => label)
		},
		now,
		words
	);
}
