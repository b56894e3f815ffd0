import { isOpenOrder } from '../context';
import { batchTitle, endLine, laidLine, laidTitle, materialName, whoDecides } from './batch-words';
import { row, type StepRow } from './row';

/** Coats, their tests and the gauge. */
export const COATING: Readonly<Record<string, StepRow>> = {
	'coating.weighing': row(
		'weigh-and-mix',
		batchTitle,
		(c) =>
			laidLine(c) +
			(endLine(c, 'coat') || `Weigh ${materialName(c)} in this order, thicker part first.`),
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
		(c) => `${laidTitle(c)}: fingertip test`,
		'Press a gloved fingertip and lift: sticky, nothing comes away, a faint print stays.',
		'tack.tested'
	),
	'coating.missed': row(
		'abrade',
		(c) => `${laidTitle(c)}: ${isOpenOrder(c, 'build') ? 'abrade first' : 'window missed'}`,
		(c) =>
			`Abrade ${c.laidG > 0 ? 'what is still bare' : 'the whole surface'}, wipe it, let it dry. ${whoDecides(c, 'build')}`,
		'surface.abraded'
	),
	'coating.deciding': row(
		'abrade',
		(c) => `${laidTitle(c)}: a decision is needed`,
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
	)
};
