import type { PhaseId, TroubleId } from '../content/vocabulary';

/** What a phase is called on screens. */
export const PHASE_TITLES: Readonly<Record<PhaseId, string>> = {
	brief: 'Briefing',
	pattern: 'Pattern',
	release: 'Release',
	frame: 'Frame',
	detail: 'Detail coats',
	build: 'Build coats',
	gloveCure: 'Glove cure',
	trim: 'Trim',
	shellRelease: 'Shell release',
	shell: 'Backup shell',
	shellCure: 'Shell cure',
	open: 'Open',
	mark: 'Mark',
	peel: 'Peel',
	wash: 'Wash',
	inspect: 'Inspect',
	pour: 'First pour',
	handover: 'Hand over'
};

/** What a trouble is called on screens. */
export const TROUBLE_TITLES: Readonly<Record<TroubleId, string>> = {
	'off-ratio': 'Cup was off ratio, found after laying',
	'pot-life-overrun': 'Cup strings, warms or drags',
	'recoat-too-early': 'Brush drags the coat below',
	'recoat-missed': 'Recoat window missed',
	bubbles: 'Bubbles or foam all through',
	voids: 'Voids in the detail',
	'no-cure': 'It does not cure',
	'shell-locked': 'Shell will not come off',
	'glove-torn': 'Glove torn',
	'waste-smoke': 'Waste cup smokes',
	'film-beaded': 'Parting film beads or tears',
	'frame-leak': 'Frame leaks',
	sag: 'Coat sags or runs',
	spill: 'Spill',
	'skin-contact': 'On skin or in the eyes',
	breathing: 'Somebody feels ill or coughs',
	'something-else': 'Something else'
};
