import { isOpenOrder } from '../context';
import {
	addLine,
	batchTitle,
	endLine,
	laidLine,
	laidTitle,
	materialName,
	whoDecides
} from './batch-words';
import { row, type StepRow } from './row';

/** Coats, their tests and the gauge. */
export const COATING: Readonly<Record<string, StepRow>> = {
	'coating.weighing': row(
		'weigh-and-mix',
		(w, c) => ({
			title: batchTitle(w, c),
			what:
				laidLine(w, c) +
				(endLine(w, c, 'Coat') || w.steps.coat.weigh(materialName(w, c)) + addLine(w, c))
		}),
		'cup.weighed',
		'coat.finished'
	),
	'coating.weighed': row(
		'weigh-and-mix',
		(w, c) => ({ title: batchTitle(w, c), what: w.steps.coat.mix }),
		'cup.mixed',
		'cup.weighed',
		'cup.discarded'
	),
	'coating.mixed': row(
		'build-coat',
		(w, c) => ({ title: batchTitle(w, c), what: w.steps.coat.lay }),
		'cup.applied',
		'cup.weighed',
		'cup.mixed',
		'cup.discarded'
	),
	'coating.brushing': row(
		'brush-back',
		(w, c) => ({
			title: w.steps.coat.brushBackTitle(batchTitle(w, c)),
			what: w.steps.coat.brushBack
		}),
		'coat.brushedBack',
		'tack.tested'
	),
	'coating.curing': row(
		'tack-test',
		(w, c) => ({ title: w.steps.coat.testTitle(laidTitle(w, c)), what: w.steps.coat.test }),
		'tack.tested'
	),
	'coating.missed': row(
		'abrade',
		(w, c) => ({
			title: w.steps.coat[isOpenOrder(c, 'build') ? 'abradeFirst' : 'missed'](laidTitle(w, c)),
			what: w.steps.coat[c.laidG > 0 ? 'abradeBare' : 'abrade'](whoDecides(w, c, 'build'))
		}),
		'surface.abraded'
	),
	'coating.deciding': row(
		'abrade',
		(w, c) => ({
			title: w.steps.coat.decisionTitle(laidTitle(w, c)),
			what: w.steps.coat.decision
		}),
		'deviation.decided'
	),
	'thickness.measuring': row(
		'thickness',
		({ steps: { thickness } }, c) => ({
			title: thickness.title,
			what: thickness.what(c.plan.glove.leastMm.toFixed(1))
		}),
		'thickness.measured'
	),
	'thickness.thin': row(
		'thickness',
		({ steps: { thickness } }, c) => ({
			title: thickness.thinTitle,
			what: thickness.thin(c.thinnestMm ?? 0)
		}),
		'coat.added',
		'thickness.measured',
		'deviation.decided'
	)
};
