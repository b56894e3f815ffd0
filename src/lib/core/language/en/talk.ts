/** The sheet that is read aloud at a mold before hands are put on it. */
export const talk = {
	page: (mold: string) => `Briefing: ${mold}`,
	title: 'Before we start',
	atMold: 'At the mold',
	people: (n: number) => (n === 1 ? 'one person' : `${n} people`),
	dangers: 'Dangers that apply',
	printed: 'Printed',
	print: 'Print',
	back: 'Back to the mold',
	first:
		'To be read aloud at the mold, ten minutes at most, then asked back: what hurts at the next step, and what do you do? These are the usual cautions. The SDS of each material, local codes and licensed practice come first.',
	hurtsWhy: 'What hurts on this mold, and why',
	wear: 'What to wear and have on',
	stepByStep: 'Step by step',
	stepsCaption: 'What hurts and what protects at each step',
	columns: {
		step: 'Step',
		hurts: 'Hurts',
		wear: 'Wear',
		air: 'Air',
		containers: 'Open containers'
	},
	air: { none: '', general: 'Air the room', 'local exhaust': 'Extraction at the work' },
	readThemselves: 'What everybody reads for themselves',
	atBench:
		'Each person reads these at the bench, under their own name, before they touch the chemistry. No one can tick them for another.',
	somebody: 'Somebody',
	readBy: (people: string) => `Read by ${people}`,
	nobody: 'Nobody has read it yet',
	understood: 'Heard, asked back and understood',
	onPaper:
		'Each for themselves, on paper. This sheet stands beside the record; it does not take the place of the briefings above.',
	name: 'Name',
	date: 'Date',
	signature: 'Signature',
	heldBy: 'Talk held by:',
	grounds: {
		named: 'its data sheet names it',
		computed: 'the plan computes that it heats itself',
		assumed: 'assumed for its family, since its data sheet does not say'
	},
	statements: (codes: string) => `its SDS says ${codes}`,
	from: (materials: readonly string[]) => `From ${materials.join(' and ')}.`,
	reasons: {
		work: 'From the work itself, whatever the materials.',
		plan: 'The plan names it, of no material in particular.',
		usual:
			'Usual at these steps. No sheet of this mold’s materials names it, and none rules it out: the SDS decides.'
	},
	metAt: (steps: string) => `Met at: ${steps}.`
};
export type TalkWords = typeof talk;
