/** Why the process does not take an act: sentences that begin small, since others may stand before them. */
export const rules = {
	ended: 'this job has ended: its record is closed',
	notNow: ({ act, possible }: { act: string; possible: string }) =>
		`"${act}" is not what comes now. Possible now: ${possible}`,
	datedBefore: ({ at, lastAt }: { at: string; lastAt: string }) =>
		`it is dated ${at}, before the last entry at ${lastAt}`,
	notBefore: ({ what, at }: { what: string; at: string }) => `${what} not before ${at}`,
	knownParts: (parts: string) => `this material's parts are: ${parts}`,
	somethingWeighed: 'the cup is empty: enter what the scale showed',
	weighFirst: 'weigh the cup first',
	partMissing: (parts: string) => `part ${parts} is not in the cup yet`,
	offRatio: ({ offPct, mostPct }: { offPct: string; mostPct: string }) =>
		`the cup is ${offPct}% off ratio, more than ${mostPct}%: put it right on the scale, or set it aside`,
	fitsNoCup: (given: { massG: number; volumeMl: number; largestMl: number }) =>
		`${given.massG} g take up ${given.volumeMl} mL, and the largest cup of this shop holds ${given.largestMl} mL to its brim: type what the scale showed, part by part, without the cup`,
	partsTooLong: (until: string) =>
		`its parts met too long ago: the pot life was over at ${until}, mixed or not. Set it aside and weigh a fresh one`,
	lastCup: 'the cup in hand is the last of this coat: lay it first',
	nextMixed: 'the next cup is mixed already: lay the one in hand, then that one',
	oneAtWork:
		'one person cannot lay and mix at once: the plan has one at work, so lay this cup first',
	secondReadsFirst:
		'one person cannot lay and mix at once: the second one reads the briefings first, under their own name',
	mixerNamed:
		'say who mixes it while you lay: somebody else, who has read the briefings of this mold',
	noNextCup: 'no next cup is prepared',
	plainLine: 'a plain parting line does not key itself: drill or add keys, and say which and where',
	sayLine: 'say whether the parting line is uneven or plain',
	inspected: 'it is inspected already: ask for the signature',
	lookWhere: (places: string) => `look where this mold had trouble, and tick it: ${places}`,
	notUsable: 'the inspection found it not usable: reject the mold, or send it back',
	anotherHold: (hold: string) => `this mold waits at another hold point: ${hold}`,
	none: 'none',
	mayGoBackTo: (phases: string) => `from here it can go back to: ${phases}`,
	nowhere: 'nowhere',
	needsRepair:
		'the inspection found it in need of repair: have it mended and inspected again, or decide that deviation first',
	noRepairAsked: 'the inspection asks for no repair',
	nothingLaid: 'nothing is laid yet',
	laidShort: ({ laidG, plannedG }: { laidG: string; plannedG: string }) =>
		`${laidG} g of ${plannedG} g is laid: mix another cup, or say why it stays short`,
	layersShort: ({ laid, planned }: { laid: number; planned: number }) =>
		`${laid} of ${planned} layers of reinforcement are in: lay the rest, or say why it stays short`,
	countLayers: (planned: number) =>
		`count the layers of reinforcement in this round; the plan has ${planned}`,
	gloveNeedsTime: 'the glove needs its time: test',
	shellNeedsTime: 'the shell needs its time: test',
	shellThin: (leastMm: string) =>
		`the thinnest place must reach ${leastMm} mm: lay another cup there`,
	othersHands: 'another person has this mold in hand: take it over first',
	inHandAlready: 'you have this mold in hand already',
	ownWork: 'nobody signs their own work: ask a supervisor who has not worked on this mold',
	readFirst: (briefings: string) => `read the briefings first: ${briefings}`,
	sealsNothing: 'the plan seals nothing here: the pattern is dense, or sealed already',
	sealerWet: 'the sealer is not dry: check it',
	waxFresh: 'the wax has not hazed: buff',
	filmWet: 'the film is not dry: check it',
	waxDone: (coats: number) => `all ${coats} coats of wax are on`,
	filmDone: (passes: number) => `all ${passes} passes of film are on`,
	frameReleased: 'release the inside of the frame first: the glove bonds to bare walls',
	backTakes: (coats: number) => `the back of the glove takes ${coats} coats of wax`,
	readRoom: 'read the room first: temperature, humidity, extraction',
	roomOld: 'the room was read over 12 hours ago: read it again',
	extractionOff: 'switch the extraction on, then read the room again',
	readSurface:
		'read the room again, with the temperature of the pattern’s surface: whoever signs holds it against the dew point',
	surfaceCold: 'the pattern is too near the dew point: warm it or dry the room, then read again',
	roomOutside: ({ roomC, minC, maxC }: { roomC: number; minC: number; maxC: number }) =>
		`the room is ${roomC} °C; the data sheet asks for ${minC} to ${maxC} °C`,
	noBareCoat: 'there is no bare coat to test now',
	windowStillOpen: (until: string) => `the recoat window is open until ${until}: no need to abrade`,
	nextCoat: 'the next coat',
	foundWet: 'the surface below was found wet: wait, then test it again',
	notPassed: 'the coat below has not passed its fingertip test',
	windowClosed: (at: string) =>
		`the recoat window closed at ${at}: abrade, wipe, and have the deviation decided`,
	windowClosedNext: (at: string) =>
		`the recoat window closed at ${at}: lay the cup in hand first, then mix the next`,
	belowNotPassed: 'the surface below has not passed its test: lay the cup in hand first',
	stillRuns: 'it still runs: brush it back up',
	troubleElsewhere: 'that trouble does not belong to this phase',
	waysBack: (ways: string) => `from this trouble the ways back are: ${ways}`,
	anotherSays: 'a supervisor who has not worked on this mold must say that work goes on',
	noTestAsked: 'this trouble asks for no test cup or patch',
	testWasBad: 'the last test was bad: the stop stands. Find the cause, then test again',
	describeIt: 'say in a few words what you see',
	reportedAlready: 'this trouble is reported already, and not ended yet',
	supervisorDecides:
		'a supervisor who has not worked on this mold decides how it goes on, with a PIN, on the signing page',
	bodyFirst:
		'say first that first aid was given, who has seen the person, and that SDS and local rules were followed',
	airFirst: 'say first that the area is aired: nothing smells or stings',
	smokeFirst: 'say first that the cup is outside and cold, and that the area is aired',
	asideFirst: 'enter first that the cup in hand was set aside',
	noCup: 'there is no cup in hand',
	testFirst: 'make a test cup or a test patch away from the mold first, and enter what it shows',
	undoLastOnly: 'only the last entry can be undone; correct an earlier one by a trouble',
	undoStands: 'this entry stands: others have acted on it',
	undoInspection: 'what an inspection found stands: inspect anew, and both are kept',
	undoOwnOnly: 'only the person who made an entry can undo it',
	undoBySupervisor:
		'this entry put the work before a supervisor: only a supervisor who has not worked on this mold takes it back, with a PIN, on the signing page',
	undoByDoer: 'the person who made this entry can undo it',
	undoOwnStop:
		'nobody takes back what stops their own work: ask a supervisor who has not worked on this mold',
	placeNotNoted: (note: string) => `place not noted, “${note}”`,
	troubleNeedsSupervisor:
		'After this trouble a supervisor who has not worked on this mold says that work goes on.',
	abandonedBy:
		'A mold is abandoned by a supervisor, the owner, or the mold maker who has it in hand.',
	trainingOver: (day: string) => `the training on isocyanates ran out on ${day}`,
	trainingNone: 'there is no training on isocyanates on record',
	trainingDo: (state: string) =>
		`${state}: answer the six questions under Reading room, Refresher, Isocyanates, or let somebody do this whose training is in date`
};
export type RuleWords = typeof rules;
