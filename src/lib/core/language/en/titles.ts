import { signs } from './signs';

/** Names of what a job is made of, as people read them. */
export const titles = {
	phases: {
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
	},
	troubles: {
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
		burn: 'Burn',
		cut: 'Cut',
		'cup-smoke': 'Cup in hand smokes or is hot',
		'something-else': 'Something else'
	},
	holds: {
		readyToCoat: 'Ready to coat',
		readyForShell: 'Glove accepted, ready for the shell',
		readyToOpen: 'Ready to open',
		moldAccepted: 'Mold accepted'
	},
	hazards: {
		isocyanate: 'Isocyanate',
		amine: 'Caustic hardener or catalyst',
		styrene: 'Styrene vapor',
		peroxide: 'Organic peroxide',
		solvent: 'Flammable vapor',
		'silica-dust': 'Silica dust',
		'glass-fiber': 'Glass fiber',
		'sanding-dust': 'Sanding dust',
		knife: 'Sharp blade',
		'heavy-lift': 'Heavy or awkward lift',
		'hot-cup': 'Hot cup',
		slip: 'Slippery floor',
		'plaster-heat': 'Setting plaster burns',
		sensitizer: 'Allergy, for life'
	},
	ppe: {
		gloves: 'Gloves',
		'eye-protection': 'Eye protection',
		apron: 'Apron',
		respirator: 'Respirator',
		'dust-mask': 'Dust mask',
		'face-shield': 'Face shield',
		'safety-shoes': 'Safety shoes',
		sleeves: 'Sleeves'
	},
	signs
};
export type TitleWords = typeof titles;
