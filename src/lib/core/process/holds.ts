import type { PhaseId } from '../content/vocabulary';
import { titles } from '../language/en/titles';
import type { HoldId } from './events';

export interface HoldRule {
	/** In English. */
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
		title: titles.holds.readyToCoat,
		slug: 'ready-to-coat',
		phase: 'frame',
		sendBack: ['pattern', 'release', 'frame']
	},
	readyForShell: {
		title: titles.holds.readyForShell,
		slug: 'ready-for-shell',
		phase: 'shellRelease',
		sendBack: ['release', 'build', 'gloveCure', 'trim', 'shellRelease']
	},
	readyToOpen: {
		title: titles.holds.readyToOpen,
		slug: 'ready-to-open',
		phase: 'shellCure',
		sendBack: ['shell', 'shellCure']
	},
	moldAccepted: {
		title: titles.holds.moldAccepted,
		slug: 'mold-accepted',
		phase: 'inspect',
		sendBack: ['wash', 'inspect']
	}
};
