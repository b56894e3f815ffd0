import type { ProcessContext } from '../context';
import type { EventOf } from '../events';
import { deviation } from './deviations';
import type { Change } from './work';

export function thicknessMeasured(c: ProcessContext, e: EventOf<'thickness.measured'>): Change {
	const thinnestMm = Math.min(...e.points.map((p) => p.thicknessMm));
	return {
		thinnestMm,
		...(thinnestMm < c.plan.glove.leastMm
			? {
					deviations: deviation(
						c,
						e,
						`The glove is ${thinnestMm} mm at its thinnest point; the plan asks for ${c.plan.glove.leastMm.toFixed(1)} mm.`,
						true
					)
				}
			: {})
	};
}

export function looseFrame(c: ProcessContext, e: EventOf<'frame.refitted'>): Change {
	if (e.tight) return {};
	return {
		deviations: deviation(
			c,
			e,
			`The frame went back loose: the glove shrank more than planned. ${e.note ?? ''}`.trim()
		)
	};
}

export function peeled(c: ProcessContext, e: EventOf<'glove.peeled'>): Change {
	if (e.whole) return {};
	return {
		deviations: deviation(c, e, `The glove did not come off whole. ${e.note ?? ''}`.trim())
	};
}
