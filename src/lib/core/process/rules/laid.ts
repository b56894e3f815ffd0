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
		says: (c, _e, { rules: said }) => {
			const batch = batchAtWork(c);
			if (c.laidG <= 0) return said.nothingLaid;
			return said.laidShort({
				laidG: c.laidG.toFixed(0),
				plannedG: (batch?.massG ?? 0).toFixed(0)
			});
		}
	},
	/** Cloth or strand is counted, not weighed: a layer left out cannot be seen from outside. */
	layersCounted: {
		holds: (c, e) => {
			if (!is(e, 'coat.finished') || layersPlanned(c) === 0) return true;
			if (e.layersLaid === undefined) return false;
			return layersShortOf(c, e) === 0 || !!e.shortReason;
		},
		says: (c, e, { rules: said }) =>
			is(e, 'coat.finished') && e.layersLaid !== undefined
				? said.layersShort({ laid: e.layersLaid, planned: layersPlanned(c) })
				: said.countLayers(layersPlanned(c))
	},
	gloveCured: after(
		(c) => c.finishedAt,
		(c) => c.plan.gloveCure.testS,
		(said) => said.gloveNeedsTime
	),
	shellCured: after(
		(c) => c.finishedAt,
		(c) => c.plan.shellCure.testS,
		(said) => said.shellNeedsTime
	),
	shellThick: {
		holds: (c, e) =>
			is(e, 'shell.finished') && e.thicknessMm >= SHELL_FRACTION * c.plan.shell.thicknessMm,
		says: (c, _e, { rules: said }) =>
			said.shellThin((SHELL_FRACTION * c.plan.shell.thicknessMm).toFixed(1))
	}
});
