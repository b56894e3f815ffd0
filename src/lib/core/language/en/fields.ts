/** What an act asks for: labels, hints and choices of its fields. */
export const fields = {
	note: 'Note',
	lot: 'Lot number',
	result: 'Result',
	planned: (text: string) => `planned ${text}`,
	room: {
		temperature: 'Room temperature',
		humidity: 'Relative humidity',
		surface: 'Pattern surface, if you measured it',
		surfaceNow: 'Pattern surface, at its coldest place',
		extraction: 'Extraction is running'
	},
	brief: {
		sdsRead: 'I have read the SDS of every material',
		ppeOut: 'PPE is out, and fits',
		spillKitKnown: 'I know where spill kit, eyewash and first aid are',
		trainingInDate: 'My training for these materials is in date'
	},
	sealerDry: 'Dry through: a knuckle feels dry, not cool',
	pattern: {
		dry: 'Dry through',
		sound: 'Sound: no loose or soft places',
		dense: 'Dense by nature: a drop of water stands on it',
		sealed: 'Sealed all over: a drop of water stands on it',
		inhibitors: 'Nothing on it stops the cure',
		fixed: 'Fixed to the board: it cannot lift or float',
		foot: 'Gaps at the foot are filled'
	},
	filmUnbroken: 'Dry to the touch, unbroken, no beads',
	frame: {
		gap: 'Clear gap between pattern and frame',
		below: 'Screwed down from below',
		corners: 'Corners and foot are tight',
		released: 'Inside of the frame is released'
	},
	cup: {
		masses: 'What the scale shows',
		lots: 'Lot numbers, from the containers',
		mixedBy: 'Who mixes it while you lay',
		mixedByHint:
			'Whoever has read the briefings. They have then worked on this mold, and cannot sign it.',
		which: 'Which cup',
		inHand: 'The one in hand: it is not laid any further',
		next: 'The next one, that was being prepared',
		timeWasOver: 'Its time was over.',
		whyAside: 'Why it is set aside',
		asideHint: 'Leave it in the extraction, on a surface that does not burn.'
	},
	coat: {
		layers: 'Layers of reinforcement in this round, counted',
		short: 'If less went on than planned: why',
		fingertip: 'What the gloved fingertip found',
		wet: 'Wet: it comes off on the glove',
		tackFree: 'Almost tack-free: sticky, takes nothing away, faint print',
		hard: 'Hard: no print, no stick',
		where: 'Where',
		grit: 'Abraded with',
		gritHint: 'for example 120 grit',
		wiped: 'Dust wiped off',
		dried: 'Wiped surface is dry',
		whyAbraded: 'Why it is abraded',
		whyMissed: 'Why the window was missed',
		points: 'Pin gauge readings, three places or more',
		pointsHint: 'Take walls, corners and the thinnest-looking place.',
		whyAnother: 'Why another one is needed'
	},
	glove: {
		is: 'The glove is',
		cured: 'Cured: springs back, no dent stays',
		soft: 'Still soft or tacky',
		shoreA: 'Shore A, if you have a gauge',
		sheetSays: (shoreA: number) => `the sheet says ${shoreA}`,
		edgeSquare: 'Glove edge is square and clean: nothing to pinch',
		frameClean: 'Frame is scraped and sanded clean',
		wholeBack: 'Wax covers the whole back, corners and walls too',
		coats: 'Coats of wax',
		frameBack: 'The frame went back',
		tight: 'Tight: little shrinkage',
		loose: 'Loose: the glove has shrunk'
	},
	shell: {
		thinnest: 'Thickness at the thinnest place',
		thinnestHint: ({ plannedMm, leastMm }: { plannedMm: number; leastMm: string }) =>
			`planned ${plannedMm} mm; at least ${leastMm} mm`,
		corners: 'Corners and walls are full',
		feet: 'Feet are built: it will stand level upside down',
		is: 'The shell is',
		hard: 'Hard: a nail leaves no mark, it rings',
		soft: 'Still soft or warm'
	},
	open: {
		boardOff: 'Board is unscrewed and off',
		wedged: 'Frame was wedged up evenly, all round'
	},
	mark: {
		mark: 'The mark',
		markHint: 'for example an arrow and "N" on the north side',
		sameSide: 'Same side marked on glove and on shell',
		line: 'The parting line between glove and shell',
		uneven: 'Uneven: it keys the two by itself',
		plain: 'Plain: keys are drilled or added',
		keys: 'Plain line: which keys, and where',
		keysHint: 'for example two holes drilled through flange and shell, north and east'
	},
	peel: { off: 'The glove came off', whole: 'Whole', torn: 'Torn or marked' },
	filmGone: 'All film is washed off, glove is dry',
	inspect: {
		lookedAt: (place: string) => `Looked at: ${place}`,
		voids: 'Voids',
		bubbles: 'Bubbles',
		tears: 'Tears',
		thinSpots: 'Thin spots',
		dimensions: 'Key dimensions, as measured',
		verdict: 'Your verdict',
		sound: 'Sound',
		needsRepair: 'Needs repair',
		reject: 'Not usable',
		overall: { length: 'Overall length', width: 'Overall width', height: 'Overall height' }
	},
	repaired: 'What was mended, where, and how',
	pour: {
		poured: (material: string) => `${material} poured`,
		head: 'Head of liquid above the deepest point',
		partIs: 'The first part is',
		good: 'Good',
		faulty: 'Faulty: pour again'
	},
	handover: {
		to: 'Handed over to',
		storage: 'How it is stored',
		storageHint: 'The glove rests in its shell, level, out of sun and heat.',
		repair: 'How it is repaired',
		wornOut: 'When it is worn out'
	},
	trouble: {
		what: 'What is wrong',
		where: 'Where on the mold',
		see: 'What you see',
		seeHint: 'Not needed where it hurts, burns or smokes: help first.',
		made: 'What was made, away from the mold',
		cup: 'Test cup: a small mixed cup, watched for foam',
		patch: 'Test patch: left for its full cure time',
		shows: 'What it shows',
		good: 'Good: no foam, cures as it should',
		bad: 'Bad: foams, or stays soft or sticky',
		done: 'What was done',
		wayBack: 'How work goes on',
		resume: 'Go on where we were',
		redo: 'Lay this coat or round again',
		abradeThenOn: 'Go on: abrade, wipe, dry, then the next one',
		backTo: (phase: string) => `Back to: ${phase}`
	},
	why: 'Why',
	whyAbandoned: 'Why the job is given up',
	hold: {
		lookAt: 'Anything the supervisor should look at',
		backTo: 'Send back to',
		putRight: 'What has to be put right',
		whyRejected: 'Why the mold cannot be used',
		decision: 'Decision',
		accept: 'Accept: work goes on',
		notYet: 'Not yet: to be put right',
		reason: 'Reason'
	}
};
export type FieldWords = typeof fields;
