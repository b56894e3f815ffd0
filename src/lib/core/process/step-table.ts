import type { PhaseId, StepSlug } from '../content/vocabulary';
import { batchAtWork, coatAtWork, isOpenOrder, type ProcessContext } from './context';
import type { EventType } from './events';
import { HOLDS } from './holds';
import { TROUBLE_TITLES } from './titles';

/** What the bench shows in one state of the machine. */
export interface StepRow {
	slug: StepSlug;
	title: (c: ProcessContext) => string;
	/** One line, imperative. */
	what: (c: ProcessContext) => string;
	/** The acts that move the work on, the main one first. */
	acts: readonly EventType[];
}

const batchTitle = (c: ProcessContext) => batchAtWork(c)?.title ?? 'Coat';
const materialName = (c: ProcessContext) => batchAtWork(c)?.materialName ?? 'the material';
const coatSlug = (c: ProcessContext): StepSlug =>
	coatAtWork(c)?.kind === 'detail' ? 'detail-coat' : 'build-coat';

const row = (
	slug: StepSlug,
	title: string | ((c: ProcessContext) => string),
	what: string | ((c: ProcessContext) => string),
	...acts: EventType[]
): StepRow => ({
	slug,
	title: typeof title === 'string' ? () => title : title,
	what: typeof what === 'string' ? () => what : what,
	acts
});

/** At the last hold point: what the inspection found, when the mold cannot be signed for it. */
function found({ hold, inspection }: ProcessContext): string {
	if (hold !== 'moldAccepted' || !inspection || inspection.isAccepted) return '';
	if (inspection.verdict === 'reject')
		return 'Inspected as not usable. A supervisor rejects it, or sends it back.';
	return inspection.verdict === 'needs repair'
		? 'In need of repair. Mend it and inspect it again, or let a supervisor decide.'
		: '';
}

const holdRows = (hold: keyof typeof HOLDS): Record<string, StepRow> => ({
	[`${hold}.unasked`]: row(
		HOLDS[hold].slug as StepSlug,
		`Hold point: ${HOLDS[hold].title.toLowerCase()}`,
		(c) => found(c) || 'Stop here. Look it over, then ask a supervisor to look and sign.',
		...(hold === 'moldAccepted' ? (['mold.repaired'] as const) : []),
		'hold.requested'
	),
	[`${hold}.asked`]: row(
		HOLDS[hold].slug as StepSlug,
		`Hold point: ${HOLDS[hold].title.toLowerCase()}`,
		(c) => found(c) || 'A supervisor has been asked. Work goes on when it is signed.',
		'hold.signed',
		'hold.sentBack',
		...(hold === 'moldAccepted'
			? (['mold.repaired', 'deviation.decided', 'mold.rejected'] as const)
			: [])
	)
});

const laidLine = (c: ProcessContext): string => {
	const batch = batchAtWork(c);
	if (!batch || c.laidG === 0) return '';
	return `${Math.round(c.laidG)} g of ${Math.round(batch.massG)} g is laid. `;
};

const whoDecides = (c: ProcessContext, phase: PhaseId): string =>
	isOpenOrder(c, phase) ? 'The supervisor has ordered it.' : 'A supervisor then decides.';

/** One row for each state in which the machine can rest; a test holds the two together. */
export const STEP_TABLE: Readonly<Record<string, StepRow>> = {
	brief: row(
		'brief',
		'Briefing',
		'Read what can hurt you here, read the room, set out your PPE.',
		'brief.finished',
		'room.read',
		'briefing.read'
	),
	pattern: row(
		'pattern',
		'Pattern',
		'Look the pattern over and fix it to the board.',
		'pattern.prepared'
	),
	'release.waxing': row(
		'wax',
		(c) => `Wax, coat ${c.waxCoats + 1} of ${c.plan.release.waxCoats}`,
		'Wipe a thin coat of wax over pattern, board and flange.',
		'wax.applied'
	),
	'release.hazing': row(
		'wax',
		(c) => `Wax, coat ${c.waxCoats + 1} of ${c.plan.release.waxCoats}`,
		'Let it haze, then buff with a clean cloth.',
		'wax.buffed'
	),
	'release.filming': row(
		'film',
		(c) => `Parting film, pass ${c.filmPasses + 1} of ${c.plan.release.filmPasses}`,
		'Lay one thin, unbroken pass of film. Keep flames and sparks away.',
		'film.applied'
	),
	'release.drying': row(
		'film',
		(c) => `Parting film, pass ${c.filmPasses + 1} of ${c.plan.release.filmPasses}`,
		'Let it dry with air moving; do not touch it wet.',
		'film.dried'
	),
	frame: row(
		'frame',
		'Frame',
		(c) =>
			`Set the frame ${Math.round(c.plan.frame.gapMm)} mm clear of the pattern, all round, screwed from below.`,
		'frame.fitted'
	),
	...holdRows('readyToCoat'),
	'coating.weighing': row(
		'weigh-and-mix',
		batchTitle,
		(c) => `${laidLine(c)}Weigh ${materialName(c)} in this order, thicker part first.`,
		'cup.weighed',
		'coat.finished'
	),
	'coating.weighed': row(
		'weigh-and-mix',
		batchTitle,
		'On ratio? Mix it: sides, bottom, stick; then into a second cup and again.',
		'cup.mixed',
		'cup.weighed',
		'cup.discarded'
	),
	'coating.mixed': row(
		'build-coat',
		batchTitle,
		'The pot life runs. Lay the whole cup, brush it into every corner.',
		'cup.applied',
		'cup.weighed',
		'cup.mixed',
		'cup.discarded'
	),
	'coating.brushing': row(
		'brush-back',
		(c) => `${batchTitle(c)}: brush back`,
		'It has begun to gel. Brush what ran down back up the walls and out of the low places.',
		'coat.brushedBack',
		'tack.tested'
	),
	'coating.curing': row(
		'tack-test',
		(c) => `${batchTitle(c)}: fingertip test`,
		'Press a gloved fingertip and lift: sticky, nothing comes away, a faint print stays.',
		'tack.tested'
	),
	'coating.missed': row(
		'abrade',
		(c) => `${batchTitle(c)}: ${isOpenOrder(c, 'build') ? 'abrade first' : 'window missed'}`,
		(c) => `Abrade the whole surface, wipe it, let it dry. ${whoDecides(c, 'build')}`,
		'surface.abraded'
	),
	'coating.deciding': row(
		'abrade',
		(c) => `${batchTitle(c)}: a decision is needed`,
		'The deviation waits for a supervisor. Do not coat.',
		'deviation.decided'
	),
	'thickness.measuring': row(
		'thickness',
		'Thickness check',
		(c) =>
			`Push the pin gauge in at each planned point: at least ${c.plan.glove.leastMm.toFixed(1)} mm.`,
		'thickness.measured'
	),
	'thickness.thin': row(
		'thickness',
		'Glove is thin',
		(c) =>
			`${c.thinnestMm ?? 0} mm at the thinnest. Add a coat while the window is open, or ask a supervisor to decide.`,
		'coat.added',
		'thickness.measured',
		'deviation.decided'
	),
	gloveCure: row(
		'glove-cure',
		'Glove cure',
		'Leave it alone, warm and dry. Then test before anything touches it.',
		'glove.tested'
	),
	trim: row(
		'trim',
		'Trim the glove',
		'Free the glove from the frame with a thin blade, lift the frame, trim the edge square and clean.',
		'glove.trimmed'
	),
	'shellRelease.waxing': row(
		'shell-release',
		'Wax the back of the glove',
		'Cover all of it. No buffing: coverage matters, gloss does not.',
		'glove.waxed'
	),
	'shellRelease.refitting': row(
		'shell-release',
		'Refit the frame',
		'Set the frame back and screw it down. A tight fit shows low shrinkage.',
		'frame.refitted'
	),
	...holdRows('readyForShell'),
	'shell.weighing': row(
		'weigh-and-mix',
		batchTitle,
		(c) => `${laidLine(c)}Weigh a small cup of ${materialName(c)}; it sets fast.`,
		'cup.weighed',
		'coat.finished'
	),
	'shell.weighed': row(
		'weigh-and-mix',
		batchTitle,
		'On ratio? Mix it briskly, sides and bottom.',
		'cup.mixed',
		'cup.weighed',
		'cup.discarded'
	),
	'shell.mixed': row(
		'shell',
		batchTitle,
		'The pot life runs. Press it on, keep corners and walls thick, then the next cup.',
		'cup.applied',
		'cup.weighed',
		'cup.mixed',
		'cup.discarded'
	),
	'shell.missed': row(
		'abrade',
		'Shell: the last round is hard',
		(c) => `Abrade where the next round goes, wipe it, let it dry. ${whoDecides(c, 'shell')}`,
		'surface.abraded'
	),
	'shell.deciding': row(
		'abrade',
		'Shell: a decision is needed',
		'The deviation waits for a supervisor. Do not lay more.',
		'deviation.decided'
	),
	'shell.finishing': row(
		'shell',
		'Finish the shell',
		'Gauge the thinnest place, fill the corners, build the feet level.',
		'shell.finished',
		'coat.added'
	),
	shellCure: row('shell-cure', 'Shell cure', 'Leave it until it is cold and hard.', 'shell.tested'),
	...holdRows('readyToOpen'),
	open: row(
		'open',
		'Open the mold',
		'Unscrew the board, wedge the frame up evenly all round. Never lever on the glove.',
		'mold.opened'
	),
	mark: row(
		'mark',
		'Mark glove and shell',
		'Mark the same side on both, so that they go back together the same way round.',
		'mold.marked'
	),
	peel: row('peel', 'Peel the glove', 'Start at a corner; slowly, all the way.', 'glove.peeled'),
	wash: row(
		'wash',
		'Wash',
		'Wash the film off with water, let the glove dry flat.',
		'glove.washed'
	),
	inspect: row(
		'inspect',
		'Inspect',
		'Look at it in raking light: voids, bubbles, tears, thin spots. Measure what matters.',
		'mold.inspected'
	),
	...holdRows('moldAccepted'),
	'pour.pouring': row(
		'first-pour',
		'First pour',
		(c) =>
			`Glove in its shell, level. Pour ${Math.round(c.plan.pour.massG)} g of ${c.plan.pour.materialName}.`,
		'part.poured'
	),
	'pour.setting': row(
		'first-pour',
		'First part',
		'Let it set as its sheet says, then release it and look.',
		'part.released'
	),
	handover: row(
		'hand-over',
		'Hand over',
		'Say how it is stored, repaired, and when it is worn out.',
		'mold.handedOver'
	),
	paused: row('brief', 'Paused', (c) => `Paused: ${c.pausedFor ?? ''}`, 'job.resumed'),
	troubled: row(
		'brief',
		(c) => (c.trouble ? TROUBLE_TITLES[c.trouble.id] : 'Trouble'),
		(c) => c.trouble?.note ?? '',
		'trouble.mended'
	),
	handedOver: row('hand-over', 'Handed over', 'The mold is in use. Its record is closed.'),
	abandoned: row('hand-over', 'Abandoned', (c) => `Given up: ${c.endReason ?? ''}`),
	rejected: row('mold-accepted', 'Rejected', (c) => `Rejected at inspection: ${c.endReason ?? ''}`)
};

/** The step text that fits: laying a coat has one text for thin, another for build coats. */
export function slugFor(path: string, c: ProcessContext): StepSlug {
	return path === 'coating.mixed' ? coatSlug(c) : (STEP_TABLE[path]?.slug ?? 'brief');
}
