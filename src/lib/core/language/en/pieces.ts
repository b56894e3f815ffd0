import { plural } from '../plural';

interface Count {
	n: number;
	of: number;
}

/** What those parts of the bench say that only some steps show; it comes with them. */
export const pieces = {
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
		unread: 'That is no number. Type what the scale shows, digits alone.',
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
		tooMuch: (volume: string) =>
			`No cup of the shop holds that with room to stir: the largest is ${volume}. Look at the scale; share out what is in there.`,
		holds: (volume: string) => `The ${volume} cup still holds it with room to stir.`
	},
	mixing: {
		mixing: 'Mixing',
		over: 'Its time is over. Do not lay it: set the cup aside.',
		of: (time: string) => `of ${time}`,
		longEnough: 'So long since the parts met. Stirred all that time, no streaks? Then go on.',
		mixFor: (time: string) => `Mix for ${time}: half of it in each cup.`,
		before: (at: string) =>
			`The parts have met: the whole cup is on before ${at}, however long you mix.`
	},
	nextCup: {
		title: 'Next cup',
		titleOf: ({ n, of }: Count) => `Next cup, ${n} of ${of}`,
		onePart: (part: string) =>
			`Its pot life runs from when the parts touch. Pour ${part} only; the rest when somebody is about to mix.`,
		met: ({ at, before }: { at: string; before: string }) =>
			`Parts met ${at}: mixed and laid before ${before}`,
		partIn: ({ mass, missing }: { mass: string; missing: string }) =>
			`${mass} weighed, ${missing} not in yet`,
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
	deviceClock: {
		ahead: (by: string) => `This device’s clock is ${by} ahead`,
		behind: (by: string) => `This device’s clock is ${by} behind`,
		both: ({ server, device }: { server: string; device: string }) =>
			`Server ${server}, this device ${device}.`,
		setIt:
			'All times here and in the record are the server’s. Set the device’s clock right: without the server it is the only one there is.'
	}
};
export type PieceWords = typeof pieces;
