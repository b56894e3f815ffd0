import { ENGLISH, type Words } from '$lib/core/language/words';
import { secondsBetween } from '$lib/core/process/instant';
import type { Window } from '$lib/core/process/step';
import { spokenDuration } from '../design/window-phase';
import { inSpokenUnits } from './spoken-units';

interface Spoken {
	title: string;
	what: string;
	/** Parts to weigh in their order, or amounts of the step, as they stand on the screen. */
	amounts: ReadonlyArray<{ label: string; text: string }>;
	window: Pick<Window, 'label' | 'opensAt' | 'closesAt'> | null;
	/** Words of the signs that stand beside the step. */
	hurts: readonly string[];
}

/** What a voice says of a step: where, what to do, how much, until when, what hurts. */
export function spokenStep(
	{ title, what, amounts, window, hurts }: Spoken,
	now: string,
	w = ENGLISH
): string {
	return [
		title,
		what,
		...amounts.map(({ label, text }) => `${label}: ${text}`),
		window ? until(window, now, w) : '',
		hurts.length > 0 ? w.voice.takeCare(hurts.join(', ')) : ''
	]
		.filter(Boolean)
		.map((sentence) => inSpokenUnits(sentence, w).replace(/[.:]?$/, '.'))
		.join(' ');
}

function until(
	{ label, opensAt, closesAt }: NonNullable<Spoken['window']>,
	now: string,
	{ voice, controls }: Words
): string {
	const time = (seconds: number) => spokenDuration(seconds, controls.duration);
	const toOpenS = secondsBetween(now, opensAt);
	// One that shuts before it opens presses at once, as its clock does.
	const isBefore = closesAt === null || closesAt >= opensAt;
	if (toOpenS > 0 && isBefore) return voice.testIn({ label, time: time(toOpenS) });
	if (closesAt === null) return voice.itIsTime(label);
	const leftS = secondsBetween(now, closesAt);
	return leftS > 0 ? voice.left({ label, time: time(leftS) }) : voice.over(label);
}
