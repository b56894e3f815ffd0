import type { Clash } from '$lib/core/process/ahead/clashes';
import { timeText } from '$lib/core/process/shop-time';
import { durationText } from '$lib/core/quantity/duration-text';

interface Words {
	/** What collides, in a few words. */
	title: string;
	/** When, and what can be done about it. */
	text: string;
	/** Ids of the molds it is about. */
	molds: string[];
}

/** A clash as the board says it: what, when, and what next. */
export function clashWords(
	clash: Clash,
	names: Readonly<Record<string, string>>,
	zone: string,
	now: string
): Words {
	const when = (ms: number) => timeText(new Date(ms).toISOString(), zone, now);
	switch (clash.kind) {
		case 'missed':
			return {
				title: `Shut at ${when(clash.atMs)}: ${clash.title.toLowerCase()}`,
				text: 'Look at the mold and say at the bench what became of it.',
				molds: [clash.id]
			};
		case 'outside': {
			const what = clash.first === clash.last ? clash.first : `${clash.first} … ${clash.last}`;
			return {
				title: `Outside the shifts: ${what}`,
				text: `${when(clash.atMs)} to ${when(clash.untilMs)}, and its windows do not wait. Agree on who stays, or begin the coat before it another time.`,
				molds: [clash.id]
			};
		}
		case 'both': {
			const { first, second } = clash;
			return {
				title: `${names[clash.workerId] ?? 'One person'} cannot do both`,
				text: `${first.title} by ${when(first.latestMs)} (${lasts(first.lengthMs)}), and ${second.title.toLowerCase()} by ${when(second.latestMs)} (${lasts(second.lengthMs)}). Have somebody else take one over.`,
				molds: [first.id, second.id]
			};
		}
		case 'full':
			return {
				title: `${names[clash.workerId] ?? 'One person'}: more than the day holds`,
				text: `${durationText(clash.workS)} of work from ${when(clash.atMs)} on, ${durationText(clash.shiftS)} of shift. What can wait will move to the next day.`,
				molds: []
			};
	}
}

const lasts = (ms: number): string => durationText(ms / 1000);
