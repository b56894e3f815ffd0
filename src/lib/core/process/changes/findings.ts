import { isSince, type ProcessContext } from '../context';
import type { EventOf } from '../events';
import { deviation, redone } from './deviations';
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

const FLAWS = {
	voids: 'voids',
	bubbles: 'bubbles',
	tears: 'tears',
	thinSpots: 'thin spots'
} as const;

/** A mold in need of repair waits for the repair, or for a supervisor to let it be. */
export function inspected(c: ProcessContext, e: EventOf<'mold.inspected'>): Change {
	const inspection = { verdict: e.verdict, isAccepted: false };
	if (e.verdict !== 'needs repair' || !isSince(c, 2)) return { inspection };
	const flaws = Object.entries(FLAWS).flatMap(([key, name]) => {
		const count = e[key as keyof typeof FLAWS];
		return count > 0 ? [`${name} ${count}`] : [];
	});
	const what = ['The inspection found it in need of repair', flaws.join(', '), e.note ?? ''];
	return {
		inspection,
		deviations: deviation(c, e, `${what.filter(Boolean).join(': ')}.`, true)
	};
}

/** What is mended is looked at anew, so the old finding no longer counts. */
export function repaired(c: ProcessContext, e: EventOf<'mold.repaired'>): Change {
	return {
		inspection: null,
		hold: null,
		holdRequestedAt: null,
		deviations: redone(c.deviations, e, `Repaired: ${e.done}`)
	};
}
