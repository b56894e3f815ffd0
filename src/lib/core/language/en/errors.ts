/** What is wrong with a form of the bench, and what it takes: what, where, what next. */
export const errors = {
	notTicked: (label: string) =>
		`Not ticked: “${label}”. Tick it when it is so; if not, stop and put it right first.`,
	chooseOne: (label: string) => `“${label}”: choose one.`,
	numberAt: ({ label, wanted }: { label: string; wanted: string }) => `“${label}”: ${wanted}`,
	number: ({ from, to, unit, such }: { from: number; to: number; unit: string; such: number }) =>
		`type a number from ${from} to ${to}${unit}, such as ${such}.`,
	ofPart: (part: string) => `${part}: `,
	eachPart: 'Each part: ',
	mass: 'type what the scale shows for it alone, in grams, such as 120.5.',
	lot: 'type the lot number from its container.',
	threeReadings: 'Take at least three readings.',
	sayWhere: 'Say where, such as "north wall".',
	reading: (wanted: string) => `A reading: ${wanted}`,
	sayWhat: 'Say what was measured.',
	lengthIn: 'Type a length in in, such as 4.75.',
	lengthMm: 'Type a length in mm, such as 120.5.',
	fewWords: (label: string) => `“${label}”: write a few words.`,
	unknownAct: 'The page sent something the bench does not know. Load it again.',
	changedBriefing: 'This briefing was changed while you read. Read it once more.',
	noMold: 'There is no such mold.',
	notKept: 'No answer from the server, and this mold is not kept on this device.',
	tooLongAway:
		'This device has not heard from the server for half a day. Write it on paper, and sign in again when the line is back',
	needsServer: 'This needs the server: it knows who may say that work goes on. Wait for the line',
	photos:
		'The photos were not taken: twelve at most, each of them sent. Leave them out, then add them again.',
	notTaken: (name: string) =>
		`“${name}” was not taken as it was sent. Load the page again, and enter it once more.`,
	storageFull: 'This device cannot keep it: its storage is full or shut. Write it on paper',
	somebody: 'somebody'
};
export type ErrorWords = typeof errors;
