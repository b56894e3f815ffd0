import type { TroubleAnswer } from './events';

interface Words {
	/** What is asked of the supervisor. */
	asks: string;
	/** What is said while it is left out. */
	missing: string;
	/** How the record says it; an answer in words stands behind it. */
	record: string;
}

/** What a supervisor answers before a trouble that hurt somebody, or that smoked, is ended. */
export const TROUBLE_ANSWERS: Readonly<Record<TroubleAnswer, Words>> = {
	firstAidGiven: {
		asks: 'First aid was given, as the SDS says',
		missing: 'Tick that first aid was given: till then nobody goes on.',
		record: 'First aid given as the SDS says'
	},
	seenBy: {
		asks: 'Seen by whom: first-aider, physician, clinic',
		missing: 'Write who has seen the person.',
		record: 'Seen by'
	},
	sdsTaken: {
		asks: 'The SDS went along where a material was involved, and it is reported as local rules ask',
		missing:
			'Tick that the SDS went along where a material was involved, and that local rules were followed.',
		record: 'SDS taken along where a material was involved, reported as local rules ask'
	},
	cupCold: {
		asks: 'The cup is outside, and cold',
		missing: 'Tick that the cup is outside and cold: till then nobody goes back in.',
		record: 'The cup outside and cold'
	},
	aired: {
		asks: 'The area is aired: nothing smells or stings',
		missing: 'Tick that the area is aired.',
		record: 'The area aired'
	}
};
