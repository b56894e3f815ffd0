import type { Found } from '../../language/en/deviations';
import { log } from '../../language/en/log';
import { isSince, type Deviation, type ProcessContext } from '../context';
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
						{ key: 'tooThin', given: { thinnestMm, leastMm: c.plan.glove.leastMm } },
						true
					)
				}
			: {})
	};
}

export function looseFrame(c: ProcessContext, e: EventOf<'frame.refitted'>): Change {
	if (e.tight) return {};
	return {
		deviations: deviation(c, e, { key: 'looseFrame', given: { note: e.note ?? '' } })
	};
}

export function peeled(c: ProcessContext, e: EventOf<'glove.peeled'>): Change {
	if (e.whole) return {};
	return {
		deviations: deviation(c, e, { key: 'torn', given: { note: e.note ?? '' } })
	};
}

/** A frame is noted from this part of its planned gap on, and never below so many mm; common practice, no source. */
const OFF_GAP_FRACTION = 0.2;
const LEAST_OFF_GAP_MM = 3;

/** A gap other than planned changes the flange, the frame's fit and what the coats take. */
export function frameFitted(c: ProcessContext, e: EventOf<'frame.fitted'>): Change {
	const plannedMm = c.plan.frame.gapMm;
	const toleranceMm = Math.max(LEAST_OFF_GAP_MM, OFF_GAP_FRACTION * plannedMm);
	if (!isSince(c, 3) || Math.abs(e.gapMm - plannedMm) <= toleranceMm) return {};
	const tenth = (mm: number) => Number(mm.toFixed(1));
	const given = {
		gapMm: tenth(e.gapMm),
		plannedMm: tenth(plannedMm),
		toleranceMm: tenth(toleranceMm)
	};
	return { deviations: deviation(c, e, { key: 'gap', given }) };
}

/** A dimension is noted from this part of the planned one on, and never below so many mm; common practice, no source. */
const OFF_SIZE_FRACTION = 0.02;
const LEAST_OFF_MM = 1;
const FLAWS = ['voids', 'bubbles', 'tears', 'thinSpots'] as const satisfies ReadonlyArray<
	keyof typeof log.flaws
>;

/** What an inspection counted, and the dimensions it measured off the plan. */
function findingsOf(e: EventOf<'mold.inspected'>): Pick<Found, 'flaws' | 'sizes'> {
	const flaws = FLAWS.map((flaw) => ({ flaw, count: e[flaw] })).filter(({ count }) => count > 0);
	const sizes = e.dimensions.filter(
		({ plannedMm, measuredMm }) =>
			Math.abs(measuredMm - plannedMm) > Math.max(LEAST_OFF_MM, OFF_SIZE_FRACTION * plannedMm)
	);
	return { flaws, sizes };
}

/** What an inspection counted and measured beyond the plan, in words. */
export function flawsOf(e: EventOf<'mold.inspected'>, said = log): string[] {
	const { flaws, sizes } = findingsOf(e);
	return [
		...flaws.map(({ flaw, count }) => `${said.flaws[flaw]} ${count}`),
		...sizes.map(said.size)
	];
}

/** The verdict as a person reads it. */
const VERDICTS = log.verdicts;

/** A mold in need of repair waits for the repair, or for a supervisor to let it be. */
export function inspected(c: ProcessContext, e: EventOf<'mold.inspected'>): Change {
	const inspection = { verdict: e.verdict, isAccepted: false };
	if (!isSince(c, 2)) return { inspection };
	if (isSince(c, 3)) return { inspection, deviations: foundNow(c, e) };
	return e.verdict === 'needs repair' ? { inspection, deviations: noted(c, e) } : { inspection };
}

function noted(c: ProcessContext, e: EventOf<'mold.inspected'>): Deviation[] {
	const needsRepair = e.verdict === 'needs repair';
	const { flaws, sizes } = findingsOf(e);
	const given: Found = {
		verdict: e.verdict,
		flaws,
		// Earlier versions named the counts alone.
		sizes: isSince(c, 3) ? sizes : [],
		note: e.note ?? '',
		alwaysStop: !isSince(c, 3)
	};
	return deviation(c, e, { key: 'found', given }, needsRepair);
}

/** Each finding that is not clean is kept, and a verdict given anew without a repair shows as such. */
function foundNow(c: ProcessContext, e: EventOf<'mold.inspected'>): Deviation[] {
	const before = c.inspection?.verdict ?? 'sound';
	const answered = redone(c.deviations, e, `Inspected anew: ${VERDICTS[e.verdict]}`);
	const changed =
		before === 'sound' || before === e.verdict
			? answered
			: deviation({ ...c, deviations: answered }, e, {
					key: 'foundAnew',
					given: { before, now: e.verdict }
				});
	const isClean = e.verdict === 'sound' && flawsOf(e).length === 0;
	return isClean ? changed : noted({ ...c, deviations: changed }, e);
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
