import { batchAtWork, isOpenOrder, type ProcessContext } from './context';
import type { EventType } from './events';
import { HOLDS } from './holds';
import { nextCup } from './next-cup';
import { PHASE_TITLES, TROUBLE_TITLES } from './titles';
import { LAID_FRACTION, SHELL_FRACTION } from './rules';
import type { ActField } from './step';
import { troublesIn, waysBackFrom, type WayBack } from './troubles';

const confirm = (name: string, label: string): ActField => ({
	name,
	label,
	kind: 'confirm',
	required: true
});
const longText = (name: string, label: string, required: boolean, hint?: string): ActField => ({
	name,
	label,
	kind: 'long text',
	required,
	...(hint ? { hint } : {})
});
const text = (name: string, label: string, required: boolean, hint?: string): ActField => ({
	name,
	label,
	kind: 'text',
	required,
	...(hint ? { hint } : {})
});
const number = (
	name: string,
	label: string,
	unit: string,
	min: number,
	max: number,
	required = true
): ActField => ({
	name,
	label,
	kind: 'number',
	unit,
	min,
	max,
	required
});
const choice = (
	name: string,
	label: string,
	pairs: Array<[string, string]>,
	hint?: string
): ActField => ({
	name,
	label,
	kind: 'choice',
	choices: pairs.map(([value, shown]) => ({ value, label: shown })),
	required: true,
	...(hint ? { hint } : {})
});

const note = longText('note', 'Note', false);

type FieldMaker = (context: ProcessContext) => ActField[];

const WAYS: Record<'resume' | 'redo coat', string> = {
	resume: 'Go on where we were',
	'redo coat': 'Lay this coat or round again'
};

function wayBackLabel(way: WayBack): string {
	return way === 'resume' || way === 'redo coat' ? WAYS[way] : `Back to: ${PHASE_TITLES[way]}`;
}

function isShort(c: ProcessContext): boolean {
	return c.laidG < LAID_FRACTION * (batchAtWork(c)?.massG ?? 0);
}

function weightFields(c: ProcessContext): ActField[] {
	const next = nextCup(c);
	if (!next) return [];
	return [
		{
			name: 'massesG',
			label: 'What the scale shows',
			kind: 'weights',
			unit: 'g',
			weights: next.cup.parts.map(({ part, massG }) => ({ part, targetG: massG })),
			required: true
		},
		{
			name: 'lots',
			label: 'Lot numbers, from the containers',
			kind: 'lots',
			weights: next.cup.parts.map(({ part, massG }) => ({ part, targetG: massG })),
			required: true
		}
	];
}

/** The fields each act asks for, from the present state. Acts that ask for nothing are left out. */
export const ACT_FIELDS: Partial<Record<EventType, FieldMaker>> = {
	'room.read': () => [
		number('temperatureC', 'Room temperature', 'C', -10, 50),
		number('humidityPct', 'Relative humidity', '%', 1, 100),
		number('surfaceC', 'Pattern surface, if you measured it', 'C', -10, 60, false),
		{ ...confirm('extractionOn', 'Extraction is running'), required: false }
	],
	'brief.finished': () => [
		confirm('sdsRead', 'I have read the SDS of every material'),
		confirm('ppeOut', 'PPE is out, and fits'),
		confirm('spillKitKnown', 'I know where spill kit, eyewash and first aid are'),
		confirm('trainingInDate', 'My training for these materials is in date')
	],
	'pattern.prepared': () => [
		confirm('dry', 'Dry through'),
		confirm('sound', 'Sound: no loose or soft places'),
		confirm('sealedOrDense', 'Sealed, or dense by nature'),
		confirm('inhibitorsConsidered', 'Nothing on it stops the cure'),
		confirm('fixedToBoard', 'Fixed to the board: it cannot lift or float'),
		confirm('footGapsFilled', 'Gaps at the foot are filled'),
		note
	],
	'film.dried': () => [confirm('unbroken', 'Dry to the touch, unbroken, no beads')],
	'frame.fitted': (c) => [
		{
			...number('gapMm', 'Clear gap between pattern and frame', 'mm', 0, 500),
			hint: `planned ${Math.round(c.plan.frame.gapMm)} mm`
		},
		confirm('screwedFromBelow', 'Screwed down from below'),
		confirm('cornersTight', 'Corners and foot are tight'),
		confirm('insideReleased', 'Inside of the frame is released')
	],
	'hold.requested': () => [longText('note', 'Anything the supervisor should look at', false)],
	'hold.sentBack': (c) => [
		choice(
			'to',
			'Send back to',
			c.hold ? HOLDS[c.hold].sendBack.map((to): [string, string] => [to, PHASE_TITLES[to]]) : []
		),
		longText('reason', 'What has to be put right', true)
	],
	'hold.signed': () => [note],
	'mold.rejected': () => [longText('reason', 'Why the mold cannot be used', true)],
	'cup.weighed': weightFields,
	'cup.discarded': () => [
		longText(
			'reason',
			'Why it is set aside',
			true,
			'Leave it in the extraction, on a surface that does not burn.'
		)
	],
	'coat.finished': (c) => [
		longText('shortReason', 'If less went on than planned: why', isShort(c))
	],
	'tack.tested': () => [
		choice('result', 'What the gloved fingertip found', [
			['wet', 'Wet: it comes off on the glove'],
			['almost tack-free', 'Almost tack-free: sticky, takes nothing away, faint print'],
			['hard', 'Hard: no print, no stick']
		]),
		text('place', 'Where', false)
	],
	'surface.abraded': (c) => [
		text('grit', 'Abraded with', true, 'for example 120 grit'),
		confirm('wiped', 'Dust wiped off'),
		confirm('dried', 'Wiped surface is dry'),
		isOpenOrder(c, c.phase)
			? { ...longText('reason', 'Why it is abraded', true), preset: c.sentBack?.reason ?? '' }
			: longText('reason', 'Why the window was missed', true)
	],
	'deviation.decided': () => [
		choice('accepted', 'Decision', [
			['true', 'Accept: work goes on'],
			['false', 'Not yet: to be put right']
		]),
		longText('note', 'Reason', true)
	],
	'thickness.measured': () => [
		{
			name: 'points',
			label: 'Pin gauge readings, three places or more',
			kind: 'points',
			unit: 'mm',
			min: 0,
			max: 100,
			required: true,
			hint: 'Take walls, corners and the thinnest-looking place.'
		}
	],
	'coat.added': () => [longText('reason', 'Why another one is needed', true)],
	'glove.tested': (c) => [
		choice('result', 'The glove is', [
			['cured', 'Cured: springs back, no dent stays'],
			['soft', 'Still soft or tacky']
		]),
		{
			...number('shoreA', 'Shore A, if you have a gauge', 'Shore A', 0, 100, false),
			...(c.plan.glove.shoreA === null ? {} : { hint: `the sheet says ${c.plan.glove.shoreA}` })
		}
	],
	'glove.trimmed': () => [
		confirm('edgeSquare', 'Glove edge is square and clean: nothing to pinch'),
		confirm('frameClean', 'Frame is scraped and sanded clean')
	],
	'glove.waxed': (c) => [
		confirm('wholeBack', 'Wax covers the whole back, corners and walls too'),
		{
			...number('coats', 'Coats of wax', '', 1, 6),
			hint: `planned ${c.plan.shellRelease.waxCoats}`
		}
	],
	'frame.refitted': () => [
		choice('tight', 'The frame went back', [
			['true', 'Tight: little shrinkage'],
			['false', 'Loose: the glove has shrunk']
		]),
		note
	],
	'shell.finished': (c) => [
		{
			...number('thicknessMm', 'Thickness at the thinnest place', 'mm', 0, 200),
			hint: `planned ${Math.round(c.plan.shell.thicknessMm)} mm; at least ${(SHELL_FRACTION * c.plan.shell.thicknessMm).toFixed(1)} mm`
		},
		confirm('cornersFull', 'Corners and walls are full'),
		confirm('feetLevel', 'Feet are built: it will stand level upside down')
	],
	'shell.tested': () => [
		choice('result', 'The shell is', [
			['hard', 'Hard: a nail leaves no mark, it rings'],
			['soft', 'Still soft or warm']
		])
	],
	'mold.opened': () => [
		confirm('boardOff', 'Board is unscrewed and off'),
		confirm('wedgedEvenly', 'Frame was wedged up evenly, all round'),
		note
	],
	'mold.marked': () => [
		text('mark', 'The mark', true, 'for example an arrow and "N" on the north side'),
		confirm('sameSide', 'Same side marked on glove and on shell')
	],
	'glove.peeled': () => [
		choice('whole', 'The glove came off', [
			['true', 'Whole'],
			['false', 'Torn or marked']
		]),
		note
	],
	'glove.washed': () => [confirm('filmGone', 'All film is washed off, glove is dry')],
	'mold.inspected': () => [
		number('voids', 'Voids', '', 0, 1000),
		number('bubbles', 'Bubbles', '', 0, 1000),
		number('tears', 'Tears', '', 0, 1000),
		number('thinSpots', 'Thin spots', '', 0, 1000),
		number('shoreA', 'Shore A, if you have a gauge', 'Shore A', 0, 100, false),
		{
			name: 'dimensions',
			label: 'Key dimensions, as measured',
			kind: 'dimensions',
			unit: 'mm',
			required: false
		},
		choice('verdict', 'Your verdict', [
			['sound', 'Sound'],
			['needs repair', 'Needs repair'],
			['reject', 'Not usable']
		]),
		note
	],
	'part.poured': (c) => [
		{
			...number('massG', `${c.plan.pour.materialName} poured`, 'g', 1, 100_000),
			hint: `planned ${Math.round(c.plan.pour.massG)} g`
		},
		{
			...number('headMm', 'Head of liquid above the deepest point', 'mm', 1, 10_000),
			hint: `planned ${Math.round(c.plan.pour.headMm)} mm`
		},
		text('lot', 'Lot number', true)
	],
	'part.released': () => [
		choice('result', 'The first part is', [
			['good', 'Good'],
			['faulty', 'Faulty: pour again']
		]),
		note
	],
	'mold.handedOver': () => [
		text('to', 'Handed over to', true),
		longText(
			'storage',
			'How it is stored',
			true,
			'The glove rests in its shell, level, out of sun and heat.'
		),
		longText('repair', 'How it is repaired', true),
		longText('wornOutWhen', 'When it is worn out', true)
	],
	'trouble.reported': (c) => [
		choice(
			'trouble',
			'What is wrong',
			troublesIn(c.phase).map((id): [string, string] => [id, TROUBLE_TITLES[id]])
		),
		text('place', 'Where on the mold', false),
		longText('note', 'What you see', true)
	],
	'trouble.mended': (c) => [
		longText('how', 'What was done', true),
		choice(
			'wayBack',
			'How work goes on',
			waysBackFrom(c).map((way): [string, string] => [way, wayBackLabel(way)])
		)
	],
	'job.paused': () => [longText('reason', 'Why', true)],
	'job.takenOver': () => [note],
	'job.abandoned': () => [longText('reason', 'Why the job is given up', true)],
	'act.undone': () => [longText('reason', 'What was wrong with the entry', true)]
};
