import type { PhaseId } from '../content/vocabulary';
import type { HoldId } from './events';

export interface HoldRule {
	title: string;
	/** Slug of the step text that says what to look at. */
	slug: string;
	/** The phase whose end it guards. */
	phase: PhaseId;
	/** Where a supervisor may send the work back to. */
	sendBack: readonly PhaseId[];
}

/**
 * The four hold points. Sending back to "build" or "shell" asks for one more coat or round on the
 * cured surface; sending back to "release" means that the glove is stripped and begun again.
 */
export const HOLDS: Readonly<Record<HoldId, HoldRule>> = {
	readyToCoat: {
		title: 'Ready to coat',
		slug: 'ready-to-coat',
		phase: 'frame',
		sendBack: ['pattern', 'release', 'frame']
	},
	readyForShell: {
		title: 'Glove accepted, ready for the shell',
		slug: 'ready-for-shell',
		phase: 'shellRelease',
		sendBack: ['release', 'build', 'gloveCure', 'trim', 'shellRelease']
	},
	readyToOpen: {
		title: 'Ready to open',
		slug: 'ready-to-open',
		phase: 'shellCure',
		sendBack: ['shell', 'shellCure']
	},
	moldAccepted: {
		title: 'Mold accepted',
		slug: 'mold-accepted',
		phase: 'inspect',
		sendBack: ['wash', 'inspect']
	}
};
