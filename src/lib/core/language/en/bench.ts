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
	offRatioNow: 'Off ratio: do not mix. Add the other part, then type what the scale shows.',
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
	briefings: {
		left: ({ n, of, minutes }: Count & { minutes: number }) =>
			`${n} of ${of} briefings to read, about ${minutes} min`,
		how: 'Open each and read to its end; the button for it comes there. Your name goes into this mold’s record with the text you read.',
		read: 'Read',
		about: (minutes: number) => `About ${minutes} min.`,
		iHaveRead: (name: string) => `I, ${name}, have read it`,
		atEnd: 'You have come to its end.',
		end: 'The end',
		skimmed: ({ time, readMin }: { time: string; readMin: number }) =>
			`It has been open for ${time}; reading it takes about ${readMin} min. Go over it once more where you skipped: the record keeps for how long it was open.`,
		on: 'Read on'
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
	notEnded: ({ trouble, at }: { trouble: string; at: string }) =>
		`Not ended either: ${trouble}, ${at}.`,
	choose: 'Choose',
	more: (names: string) => `More: ${names}`,
	photo: 'photo',
	photos: {
		photo: 'Photo',
		optional: 'optional',
		sending: 'Sending the photo.',
		ofEntry: (n: number) => `Photo ${n} for this entry`,
		leaveOut: 'Leave out'
	},
	lots: {
		asBefore: (lots: string) => `Lots as before: ${lots}.`,
		newContainer: 'New container'
	},
	rows: {
		where: 'Where',
		gauge: 'Gauge',
		what: 'What',
		planned: 'Planned',
		measured: 'Measured',
		oneMore: 'One more'
	},
	weights: {
		zero: 'Empty cup on the scale: set it to zero.',
		scaleShows: (part: string) => `Scale shows ${part}, g`,
		scaleShowsAlone: (part: string) => `Scale shows ${part} alone, g`,
		addNow: ({ add, total, part }: { add: string; total: string; part: string }) =>
			`+ ${add}: zero the scale, pour till it shows ${add}. Then type ${total}, all of ${part}`,
		zeroAgain: (part: string) =>
			`Zero the scale again, cup and all: then it shows ${part} alone. Not zeroed, it shows`,
		zeroAgainEnd: (part: string) => `when ${part} is in: type that less what it showed before.`
	},
	cup: {
		ofPart: ({ mass, part }: { mass: string; part: string }) => `${mass} of ${part}`,
		and: ' and ',
		now: (list: string) => `Now ${list}.`,
		onRatio: ({ off, most }: { off: string; most: string }) =>
			`On ratio, ${off} off. Up to ${most} may be mixed.`,
		offRatio: ({ off, most }: { off: string; most: string }) => `${off} off ratio, over ${most}.`,
		asTotals: (list: string) => `As running totals it fits: ${list} by itself.`,
		slip: ({ part, mass, isTenth }: { part: string; mass: string; isTenth: boolean }) =>
			`Is ${part} ${mass}? ${isTenth ? 'A tenth of' : 'Ten times'} what you typed fits. If the scale did show it, set the cup aside.`,
		doubles:
			'Correcting it would take more than twice the planned cup. Set it aside, start a clean one.',
		addExactly: (list: string) => `Add exactly ${list}.`,
		tooCoarse: 'This scale is too coarse to correct it. Set the cup aside, start a clean one.',
		ifNotZeroed: (otherwise: string) =>
			`If the scale was not zeroed between the parts, take that. If it was, ${otherwise}.`,
		orAdd: (list: string) => `add exactly ${list}`,
		orAside: 'set the cup aside',
		takeAlone: 'Take each part by itself',
		thenType: 'Then type the new reading. You can also enter it as it is: the log keeps both.',
		overfull: (volume: string) =>
			`That is more than two thirds of a ${volume} cup. Change to a larger cup first.`,
		holds: (volume: string) => `The ${volume} cup still holds it with room to stir.`
	},
	mixing: {
		mixing: 'Mixing',
		over: 'Its time is over. Do not lay it: set the cup aside.',
		of: (time: string) => `of ${time}`,
		longEnough: 'Mixed long enough: no streaks? Then go on.',
		mixFor: (time: string) => `Mix for ${time}: half of it in each cup.`,
		before: (at: string) =>
			`The parts have met: the whole cup is on before ${at}, however long you mix.`
	},
	nextCup: {
		title: 'Next cup',
		titleOf: ({ n, of }: Count) => `Next cup, ${n} of ${of}`,
		mixed: ({ at, before }: { at: string; before: string }) =>
			`Mixed ${at}: lay it before ${before}`,
		weighed: (mass: string) => `${mass} weighed`,
		onRatio: 'on ratio',
		offRatio: 'off ratio: do not mix',
		mixIt: 'Mix it:',
		weighAgain: 'Weigh the next cup again',
		weigh: 'Weigh the next cup',
		weighIt: 'Weigh the next cup:'
	},
	kept: {
		title: (n: number) =>
			plural('en', n, {
				one: 'One entry is kept on this device',
				other: `${n} entries are kept on this device`
			}),
		whenOthers: (names: string) => `Sent when ${names} signs in on this device.`,
		byItself: 'Sent by itself when the line is back. Do not clear this browser’s data before.',
		and: ' and ',
		needsLook: (line: string) => `Needs a look: ${line}`,
		notEntered: (why: string) => `Not entered. ${why}`,
		notNow: (why: string) => `It would not be taken now either: ${why}.`,
		enter: 'It still holds: enter it',
		discard: 'Discard it',
		enteredLater: (at: string) =>
			`something was entered later, at ${at}, and no entry goes in before another. If it still holds, do it anew at the bench`
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
	},
	deviceClock: {
		ahead: (by: string) => `This device’s clock is ${by} ahead`,
		behind: (by: string) => `This device’s clock is ${by} behind`,
		both: ({ server, device }: { server: string; device: string }) =>
			`Server ${server}, this device ${device}.`,
		setIt:
			'All times here and in the record are the server’s. Set the device’s clock right: without the server it is the only one there is.'
	}
};
export type BenchWords = typeof bench;
