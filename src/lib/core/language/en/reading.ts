/** The page of one text in the reading room. */
export const reading = {
	kinds: { steps: 'steps', briefings: 'briefings', troubles: 'troubles' },
	all: (kind: string) => `All ${kind}`,
	print: 'Print',
	phase: 'Phase',
	ventilation: 'Ventilation',
	air: {
		none: 'None needed',
		general: 'General: fresh air through the whole room',
		'local exhaust': 'Local exhaust: drawn away from faces, at the place'
	},
	readingTime: 'Reading time',
	about: 'About',
	mustReadFor: 'Must be read before',
	whatItIs: 'What it is',
	canHappenIn: 'Can happen in',
	severity: {
		stop: 'Stop the work and call a supervisor',
		mend: 'Can be mended here',
		note: 'Note it and go on'
	},
	questions: 'Questions',
	first: (act: string) => `First: ${act}`,
	hurts: 'What hurts',
	wear: 'What to wear',
	signs: 'Signs',
	tools: 'Have ready',
	checks: 'See this before going on',
	wrongSigns: 'Something is wrong when',
	source: 'Source:',
	sheetsFirst: 'The data sheet, the SDS, local codes and licensed practice come first.',
	hash: 'This text’s hash:',
	beside: 'Beside this text',
	before: (title: string) => `Before: ${title}`,
	next: (title: string) => `Next: ${title}`,
	room: 'Reading room',
	other: 'In English'
};
export type ReadingWords = typeof reading;
