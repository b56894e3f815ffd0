import { batchAtWork } from '../context';
import { layersShortOf, layersPlanned } from '../layers';
import { after, is, rules } from './rule';

/** A coat or round counts as laid from this part of its planned mass on; common practice, no source. */
export const LAID_FRACTION = 0.85;
/** A shell counts as thick enough from this part of its planned thickness on; common practice, no source. */
export const SHELL_FRACTION = 0.85;

/** Whether enough is on, and has cured. */
export const LAID = rules({
	enoughLaid: {
		holds: (c, e) => {
			const batch = batchAtWork(c);
			if (!is(e, 'coat.finished') || !batch || c.laidG <= 0) return false;
			return c.laidG >= LAID_FRACTION * batch.massG || !!e.shortReason;
		},
		says: (c) => {
			const batch = batchAtWork(c);
			if (c.laidG <= 0) return 'nothing is laid yet';
			return `${c.laidG.toFixed(0)} g of ${(batch?.massG ?? 0).toFixed(0)} g is laid: mix another cup, or say why it stays short`;
		}
	},
	/** Cloth or strand is counted, not weighed: a layer left out cannot be seen from outside. */
	layersCounted: {
		holds: (c, e) => {
			if (!is(e, 'coat.finished') || layersPlanned(c) === 0) return true;
			if (e.layersLaid === undefined) return false;
			return layersShortOf(c, e) === 0 || !!e.shortReason;
		},
		says: (c, e) =>
			is(e, 'coat.finished') && e.layersLaid !== undefined
				? `${e.layersLaid} of ${layersPlanned(c)} layers of reinforcement are in: lay the rest, or say why it stays short`
				: `count the layers of reinforcement in this round; the plan has ${layersPlanned(c)}`
	},
	gloveCured: after(
		(c) => c.finishedAt,
		(c) => c.plan.gloveCure.testS,
		'the glove needs its time: test'
	),
	shellCured: after(
		(c) => c.finishedAt,
		(c) => c.plan.shellCure.testS,
		'the shell needs its time: test'
	),
	shellThick: {
		holds: (c, e) =>
			is(e, 'shell.finished') && e.thicknessMm >= SHELL_FRACTION * c.plan.shell.thicknessMm,
		says: (c) =>
			`the thinnest place must reach ${(SHELL_FRACTION * c.plan.shell.thicknessMm).toFixed(1)} mm: lay another cup there`
	}
});
