import { plural } from '../plural';

interface Count {
	n: number;
	of: number;
}

/** What the bench says round a step: buttons, notes, clocks, scales. */
export const bench = {
	next: 'Then',
	speak: 'Speak',
	whyUndone: 'What was wrong with the entry',
	untilWhen: 'Until when',
	howMuch: 'How much',
	planned: (text: string) => `planned ${text}`,
	pourOrder: 'Pour in this order',
	hurts: 'What hurts',
	air: {
		none: '',
		general: 'Air the room: fan or open window.',
		'local exhaust': 'Extraction on, at the work.'
	},
	whyNumbers: 'Why these numbers',
	somebody: 'Somebody',
	aSupervisor: 'a supervisor',
	stepChanged: (title: string) => `The step changed: ${title}`,
	sentBackBy: (who: string) => `Sent back by ${who}`,
	cupOf: ({ n, of }: Count) => `Cup ${n} of ${of}`,
	inCup: (volume: string) => `, in a ${volume} cup.`,
	resplit:
		'Split anew: the cups before came out short or long, this one brings the coat back to plan.',
	noAnswer: {
		title: 'No answer from the server',
		text: 'Nothing you typed is lost. Look at the line, then press once more.'
	},
	answer: {
		notEntered: (label: string) => `“${label}” was not entered`,
		says: (refusal: string) => `It says: ${refusal}. Nothing you typed is lost.`,
		faster: (label: string) => `Somebody was faster. “${label}” was not entered`,
		meanwhile: 'Meanwhile:',
		lookAgain: (label: string) =>
			`Look again at what you typed. If it still holds, press “${label}” once more.`,
		movedOn: (possible: string) => `The work has moved on; possible now: ${possible}.`,
		nothing: 'nothing',
		hadTyped: 'You had typed:',
		discard: 'Discard what I typed',
		needLook: (n: number) =>
			plural('en', n, { one: 'One entry needs a look', other: `${n} entries need a look` }),
		eachSays: (label: string) => `“${label}” was not entered. Each place says what it takes.`
	},
	bar: {
		beside: 'Beside the step',
		last: (words: string) => `Last entry: ${words}.`,
		undoLast: 'Undo the last entry',
		undoIt: 'Undo it',
		undoStays:
			'It stays in the log, struck out, with your reason. The work goes back to before it.',
		/** The middle is left out where there is no room for it. */
		wrong: ['Something', ' is', ' wrong'],
		how: ['How', ' to do it'],
		other: 'Other',
		peopleFirst:
			'Somebody hurt, ill, or it burns? People first: call for help, get out, then come back here.',
		sameText: 'The same text in the reading room',
		abandon: 'Abandon the mold, with your PIN',
		thisMold: 'This mold',
		plan: 'Plan',
		record: 'Record',
		board: 'Board',
		close: 'Close'
	},
	how: {
		checks: 'See before you go on',
		wrongSigns: 'It is going wrong when',
		tools: 'Tools'
	},
	head: {
		thisMold: 'This mold, from plan to record',
		behind: 'All steps behind',
		step: ({ n, of }: Count) => `Step ${n} of ${of}`,
		dropped: 'Line dropped: trying again',
		droppedLong: 'The line to the server dropped. Trying again.'
	},
	stage: {
		notYetEntered: (act: string) => `“${act}” is not entered yet`,
		doNotEnter: 'Do not enter it',
		laidLate: 'It was laid all the same',
		toDecide: 'For a supervisor to decide',
		takeOverFrom: (who: string) => `Take over from ${who}`,
		them: 'them',
		inHand: (who: string) => `${who} has this mold in hand`,
		anotherPerson: 'Another person',
		mayLook: 'You can look. To work on it, take it over: from then on the entries are yours.',
		thenNoSign: 'Whoever takes over and works on it cannot sign this mold afterward.',
		wordNeeded: 'A supervisor’s word is needed',
		whoSigns:
			'Somebody who has not worked on this mold signs with a PIN, here or on another device.',
		openSigning: 'Open the signing page',
		letDecide: 'Let a supervisor decide',
		openRecord: 'Open the record'
	},
	notYet: {
		notYet: 'not yet.',
		readFirst: 'Read the briefings first:',
		trainingFirst: 'Training in date comes first:',
		refresher: 'refresher on isocyanates',
		notBefore: ({ label, at }: { label: string; at: string }) => `${label}: not before ${at}`
	},
	allTheSame: 'Enter it all the same',
	onlySupervisor: 'Only a supervisor who has not worked on this mold says how it goes on.',
	more: (names: string) => `More: ${names}`,
	photo: 'photo',
	photos: {
		photo: 'Photo',
		optional: 'optional',
		sending: 'Sending the photo.',
		ofEntry: (n: number) => `Photo ${n} for this entry`,
		leaveOut: 'Leave out'
	},
	clock: {
		testNow: (label: string) => `Test now: ${label}`,
		minutesLeft: ({ n, label }: { n: number; label: string }) => `${n} minutes left: ${label}`,
		shuts: ({ label, at, left }: { label: string; at: string; left: string }) =>
			`${label}: shuts ${at}, in ${left}`,
		over: ({ label, after }: { label: string; after: string }) => `${label}: over. ${after}`,
		willCall: 'This device will call you. Keep it on this page.',
		wakeMe: 'Wake me',
		beforeEnd: ' before it ends',
		whenTime: ' when it is time',
		iAmHere: 'I am here'
	}
};
export type BenchWords = typeof bench;
