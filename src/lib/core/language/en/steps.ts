import { plural } from '../plural';

/** Figures of the plan that the bench shows, by the end of their path. */
export type FigureName =
	| 'gapMm'
	| 'heightMm'
	| 'flangeMm'
	| 'sealerG'
	| 'sealerDryS'
	| 'waxG'
	| 'waxHazeS'
	| 'filmG'
	| 'filmDryS'
	| 'brushBackS'
	| 'tackTestS'
	| 'windowClosesS'
	| 'leastMm'
	| 'thicknessMm'
	| 'testS'
	| 'massG'
	| 'headMm'
	| 'pressurePa'
	| 'workingS'
	| 'cupVolumeMl'
	| 'layers';

interface Count {
	n: number;
	of: number;
}

/** What the bench says at each step: its title, and one line in the imperative. */
export const steps = {
	brief: {
		title: 'Briefing',
		what: 'Read what can hurt you here, read the room, set out your PPE.'
	},
	seal: {
		title: ({ n, of }: Count) => `Seal the pattern, coat ${n} of ${of}`,
		brush: 'Clean, dry, mended? Brush on one thin coat of sealer. Keep flames and sparks away.',
		dry: 'Let it dry with air moving; do not touch it wet.'
	},
	pattern: {
		title: 'Pattern',
		sealed:
			'A drop of water must stand on the seal; where it soaks in, seal again. Fix the pattern to the board.',
		dense: 'Look the pattern over and fix it to the board.'
	},
	wax: {
		title: ({ n, of }: Count) => `Wax, coat ${n} of ${of}`,
		apply: 'Wipe a thin coat of wax over pattern, board and flange.',
		buff: 'Let it haze, then buff with a clean cloth.'
	},
	film: {
		title: ({ n, of }: Count) => `Parting film, pass ${n} of ${of}`,
		apply: 'Lay one thin, unbroken pass of film. Keep flames and sparks away.',
		dry: 'Let it dry with air moving; do not touch it wet.'
	},
	frame: {
		title: 'Frame',
		what: (gapMm: number) =>
			`Set the frame ${gapMm} mm clear of the pattern, all round, screwed from below.`
	},
	hold: {
		title: (hold: string) => `Hold point: ${hold.toLowerCase()}`,
		ask: 'Stop here. Look it over, then ask a supervisor to look and sign.',
		asked: 'A supervisor has been asked. Work goes on when it is signed.',
		reject: 'Inspected as not usable. A supervisor rejects it, or sends it back.',
		repair: 'In need of repair. Mend it and inspect it again, or let a supervisor decide.'
	},
	batch: {
		coat: 'Coat',
		material: 'the material',
		detailCoat: (n: string) => `Detail coat ${n}`,
		buildCoat: (n: string) => `Build coat ${n}`,
		extraCoat: (n: string) => `Extra coat ${n}`,
		round: (n: string) => `Shell round ${n}`,
		extraRound: (n: string) => `Extra round ${n}`,
		laid: ({ laidG, ofG }: { laidG: number; ofG: number }) => `${laidG} g of ${ofG} g is laid. `,
		overCoat: 'More than planned: finish the coat.',
		overRound: 'More than planned: finish the round.',
		allCoat: 'All of it is on: finish the coat.',
		allRound: 'All of it is on: finish the round.',
		nextCup: 'Then the next cup.',
		add: (what: string) =>
			` Stir into the first part, before the second: ${what}, unless its data sheet says otherwise.`,
		reinforcement: 'reinforcement',
		layers: ({ n, material }: { n: number; material: string }) =>
			`${n} ${plural('en', n, { one: 'layer', other: 'layers' })} of ${material} in this round: wet through, air rolled out.`,
		ordered: 'The supervisor has ordered it.',
		decides: 'A supervisor then decides.'
	},
	coat: {
		weigh: (material: string) => `Weigh ${material} in this order, thicker part first.`,
		mix: 'On ratio? Mix it: sides, bottom, stick; then into a second cup and again.',
		lay: 'The pot life runs. Lay the whole cup, brush it into every corner.',
		brushBackTitle: (coat: string) => `${coat}: brush back`,
		brushBack:
			'It has begun to gel. Brush what ran down back up the walls and out of the low places.',
		testTitle: (coat: string) => `${coat}: fingertip test`,
		test: 'Press a gloved fingertip and lift: sticky, nothing comes away, a faint print stays.',
		abradeFirst: (coat: string) => `${coat}: abrade first`,
		missed: (coat: string) => `${coat}: window missed`,
		abrade: (who: string) => `Abrade the whole surface, wipe it, let it dry. ${who}`,
		abradeBare: (who: string) => `Abrade what is still bare, wipe it, let it dry. ${who}`,
		decisionTitle: (coat: string) => `${coat}: a decision is needed`,
		decision: 'The deviation waits for a supervisor. Do not coat.'
	},
	thickness: {
		title: 'Thickness check',
		what: (leastMm: string) =>
			`Push the pin gauge in at each planned point: at least ${leastMm} mm.`,
		thinTitle: 'Glove is thin',
		thin: (thinnestMm: number) =>
			`${thinnestMm} mm at the thinnest. Add a coat while the window is open, or ask a supervisor to decide.`
	},
	gloveCure: {
		title: 'Glove cure',
		what: 'Leave it alone, warm and dry. Then test before anything touches it.'
	},
	trim: {
		title: 'Trim the glove',
		what: 'Free the glove from the frame with a thin blade, lift the frame, trim the edge square and clean.'
	},
	waxBack: {
		title: 'Wax the back of the glove',
		what: 'Cover all of it. No buffing: coverage matters, gloss does not.'
	},
	refit: {
		title: 'Refit the frame',
		what: 'Set the frame back and screw it down. A tight fit shows low shrinkage.'
	},
	shell: {
		weigh: (material: string) => `Weigh a small cup of ${material}; it sets fast.`,
		mix: 'On ratio? Mix it briskly, sides and bottom.',
		lay: (layers: string) =>
			`The pot life runs. Press it on, keep corners and walls thick. ${layers}`,
		missedTitle: 'Shell: the last round is hard',
		abrade: (who: string) => `Abrade where the next round goes, wipe it, let it dry. ${who}`,
		decisionTitle: 'Shell: a decision is needed',
		decision: 'The deviation waits for a supervisor. Do not lay more.',
		finishTitle: 'Finish the shell',
		finish: 'Gauge the thinnest place, fill the corners, build the feet level.'
	},
	shellCure: { title: 'Shell cure', what: 'Leave it until it is cold and hard.' },
	open: {
		title: 'Open the mold',
		what: 'Unscrew the board, wedge the frame up evenly all round. Never lever on the glove.'
	},
	mark: {
		title: 'Mark glove and shell',
		what: 'Mark the same side on both, so that they go back the same way round. A plain parting line: add keys.'
	},
	peel: { title: 'Peel the glove', what: 'Start at a corner; slowly, all the way.' },
	wash: { title: 'Wash', what: 'Wash the film off with water, let the glove dry flat.' },
	inspect: {
		title: 'Inspect',
		what: 'Look at all of it in raking light: voids, bubbles, tears, thin spots. Measure what matters.',
		troubleFirst:
			'Look first where it had trouble. Then all of it in raking light: voids, bubbles, tears, thin spots. Measure what matters.'
	},
	pour: {
		title: 'First pour',
		what: ({ massG, material }: { massG: number; material: string }) =>
			`Glove in its shell, level. Pour ${massG} g of ${material}.`,
		once: (within: string) => ` Pour it within ${within} of its being mixed.`,
		batches: ({ n, within }: { n: number; within: string }) =>
			` Mix it in ${n} batches, one after another, and pour each within ${within} of its being mixed.`,
		carried: (n: number) => ` It is molten: carry it in ${n} pails, never full, one after another.`,
		setTitle: 'First part',
		set: 'Let it set as its sheet says, then release it and look.',
		setMolten: (within: string) =>
			`Its core may stay liquid for up to ${within}, and burns whoever opens it sooner. Wait until it is cold to the hand all over, then release it and look.`
	},
	handover: {
		title: 'Hand over',
		what: 'Say how it is stored, repaired, and when it is worn out.'
	},
	paused: { title: 'Paused', what: (why: string) => `Paused: ${why}` },
	trouble: 'Trouble',
	handedOver: { title: 'Handed over', what: 'The mold is in use. Its record is closed.' },
	abandoned: { title: 'Abandoned', what: (why: string) => `Given up: ${why}` },
	rejected: { title: 'Rejected', what: (why: string) => `Rejected at inspection: ${why}` },
	late: 'Its time is over. Stop, do not thin it: set the cup aside in the extraction.',
	atScale: {
		missing: (parts: string) => `${parts} is not in yet: pour it, then mix at once.`,
		off: 'Off ratio: do not mix. Put it right as said below the weights.',
		tooFar: 'Off ratio, too far to put right: do not mix. Set it aside, start a clean one.'
	},
	largeCup: ({
		massG,
		plannedG,
		workingMin
	}: Record<'massG' | 'plannedG' | 'workingMin', number>) =>
		` ${massG} g in it, planned ${plannedG} g: it heats more, and works for ${workingMin} min after mixing.`,
	nextCupWeighed: 'Next cup is weighed',
	nextCupMixed: 'Next cup is mixed',
	windows: {
		sealer: 'Sealer dries',
		wax: 'Wax hazes',
		film: 'Film dries',
		gel: 'It gels',
		gelAfter: 'Past it the brush drags: leave it, and note it.',
		recoat: 'Recoat window',
		recoatBare: 'Recoat window, where still bare',
		recoatAfter: 'Past it the next coat does not bond: abrade and wipe.',
		glove: 'Glove cures',
		shell: 'Shell cures',
		working: 'Working time of this cup',
		workingAfter: 'Past it: stop, do not thin, set the cup aside in the extraction.'
	},
	amounts: {
		eachBatch: (part: string) => `${part}, each batch`,
		inCup: 'in this cup',
		sealer: 'sealer, this coat',
		wax: 'wax, this coat',
		film: 'film, this pass'
	},
	section: {
		pattern: 'Pattern',
		release: (hasWax: boolean, hasFilm: boolean) =>
			hasWax ? `Wax${hasFilm ? ' and parting film' : ''}` : 'Parting film',
		shell: 'Backup shell'
	},
	/** Short names of figures by the end of their path, where the plan's own label is not wanted. */
	figures: {} as Partial<Record<FigureName, string>>
};
export type StepWords = typeof steps;
