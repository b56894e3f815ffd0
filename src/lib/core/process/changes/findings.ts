import { log, type LogWords } from '../../language/en/log';
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

/** A frame is noted from this part of its planned gap on, and never below so many mm; common practice, no source. */
const OFF_GAP_FRACTION = 0.2;
const LEAST_OFF_GAP_MM = 3;

/** A gap other than planned changes the flange, the frame's fit and what the coats take. */
export function frameFitted(c: ProcessContext, e: EventOf<'frame.fitted'>): Change {
	const plannedMm = c.plan.frame.gapMm;
	const toleranceMm = Math.max(LEAST_OFF_GAP_MM, OFF_GAP_FRACTION * plannedMm);
	if (!isSince(c, 3) || Math.abs(e.gapMm - plannedMm) <= toleranceMm) return {};
	const what = `The frame stands ${Number(e.gapMm.toFixed(1))} mm clear of the pattern; planned ${Number(plannedMm.toFixed(1))} mm, give or take ${Number(toleranceMm.toFixed(1))} mm.`;
	return { deviations: deviation(c, e, what) };
}

/** A dimension is noted from this part of the planned one on, and never below so many mm; common practice, no source. */
const OFF_SIZE_FRACTION = 0.02;
const LEAST_OFF_MM = 1;

/** What an inspection counted and measured beyond the plan, in words. */
export function flawsOf(e: EventOf<'mold.inspected'>, said = log): string[] {
	const counted = Object.entries(said.flaws).flatMap(([key, name]) => {
		const count = e[key as keyof LogWords['flaws']];
		return count > 0 ? [`${name} ${count}`] : [];
	});
	const sizes = e.dimensions.flatMap(({ name, plannedMm, measuredMm }) =>
		Math.abs(measuredMm - plannedMm) > Math.max(LEAST_OFF_MM, OFF_SIZE_FRACTION * plannedMm)
			? [said.size({ name, measuredMm, plannedMm })]
			: []
	);
	return [...counted, ...sizes];
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
	const flaws = (isSince(c, 3) ? flawsOf(e) : countsOf(e)).join(', ');
	const what = [`The inspection found it ${VERDICTS[e.verdict]}`, flaws, e.note ?? ''];
	const said = what.filter(Boolean).join(': ');
	const ended = isSince(c, 3) && said.endsWith('.') ? said : `${said}.`;
	return deviation(c, e, ended, needsRepair);
}

/** Earlier versions named the counts alone. */
function countsOf(e: EventOf<'mold.inspected'>): string[] {
	return flawsOf({ ...e, dimensions: [] });
}

/** Each finding that is not clean is kept, and a verdict given anew without a repair shows as such. */
function foundNow(c: ProcessContext, e: EventOf<'mold.inspected'>): Deviation[] {
	const before = c.inspection?.verdict ?? 'sound';
	const answered = redone(c.deviations, e, `Inspected anew: ${VERDICTS[e.verdict]}`);
	const changed =
		before === 'sound' || before === e.verdict
			? answered
			: deviation(
					{ ...c, deviations: answered },
					e,
					`Inspected anew with no repair logged: first found ${VERDICTS[before]}, now ${VERDICTS[e.verdict]}.`
				);
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
