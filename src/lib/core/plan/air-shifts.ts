import { eightHourPpm, exposureDoseLaw } from '../laws/exposure-dose';
import { SHIFT_S } from '../laws/shift-average';
import { SUBSTANCES, type SubstanceId } from '../laws/substances';
import { releaseAt, type ReleaseAt } from './air-pulse';
import type { AirRelease } from './air-releases';
import { flowInput, mixingInput, volumeInput, type AirRoom } from './air-room';
import { limitOf, traceLimit } from './air-limits';
import type { Plan } from './plan';
import { computed, inherited, traced, type Draft } from './trace';
import { withinLaw } from './within-law';

/** A step counts as part of a shift from this share of its average on; choice of what to show. */
const LEAST_SHARE = 0.01;

type AirSection = NonNullable<Plan['air']>;
type AirShift = NonNullable<AirSection['shifts']>[number];

/** One time that something is laid, with the step it belongs to. */
interface Pulse {
	step: number;
	startMs: number;
	rateGPerMin: number;
	release: ReleaseAt;
}

/**
 * The worst eight hours of each substance as the calendar has its work: every coat and round that falls
 * into them, of every step, and what lingers from before.
 */
export function airShifts(
	draft: Draft,
	room: AirRoom,
	releases: readonly AirRelease[],
	steps: AirSection['steps'],
	calendar: Plan['calendar']
): AirShift[] {
	const startOf = new Map(calendar.map(({ id, startAt }) => [id, Date.parse(startAt)]));
	const ids = [...new Set(releases.map(({ substanceId }) => substanceId))];
	const found: AirShift[] = [];
	for (const substanceId of ids) {
		const pulses = releases.flatMap(({ use, releaseGPerMin, ...each }, step) =>
			each.substanceId === substanceId
				? use.taskIds.flatMap((id): Pulse[] => {
						const startMs = startOf.get(id);
						const ceilingPpm = steps[step]?.ceilingPpm ?? null;
						const release = releaseAt(draft, substanceId, use.overS, ceilingPpm);
						return startMs === undefined
							? []
							: [{ step, startMs, rateGPerMin: releaseGPerMin, release }];
					})
				: []
		);
		const shift =
			pulses.length > 0 &&
			withinLaw(draft, 'air', `Worst shift, ${SUBSTANCES[substanceId].name}`, () =>
				worstShift(draft, room, { substanceId, pulses }, `air.shifts.${found.length}`)
			);
		if (shift) found.push(shift);
	}
	return found;
}

/** What all of these add up to over the eight hours from an instant, ppm. */
function averageOf(
	pulses: readonly Pulse[],
	fromMs: number,
	rateOf: (pulse: Pulse) => number,
	...air: number[]
): number {
	return pulses.reduce((sum, pulse) => {
		const fromS = (fromMs - pulse.startMs) / 1000;
		return fromS + SHIFT_S <= 0
			? sum
			: sum + eightHourPpm(pulse.release(rateOf(pulse), ...air), fromS);
	}, 0);
}

/** The strictest eight-hour limit of the chosen lists, with its trace; null when none of them has one. */
function averageLimit(
	draft: Draft,
	substanceId: SubstanceId,
	{ limitSets }: AirRoom,
	path: string
): AirShift['limit'] {
	const limit = limitOf(substanceId, limitSets, 'average');
	if (limit) {
		const all = limitSets.flatMap((set) => limitOf(substanceId, [set], 'average') ?? []);
		traceLimit(draft, `${path}.limit.ppm`, SUBSTANCES[substanceId].name, limit, all);
	}
	return limit;
}

function worstShift(
	draft: Draft,
	room: AirRoom,
	{ substanceId, pulses }: { substanceId: SubstanceId; pulses: readonly Pulse[] },
	path: string
): AirShift {
	const { name } = SUBSTANCES[substanceId];
	const { flowM3PerH, mixingFactor, roomM3 } = room;
	const likely = ({ rateGPerMin }: Pulse): number => rateGPerMin;
	const windows = [...new Set(pulses.map(({ startMs }) => startMs))].map((fromMs) => ({
		fromMs,
		ppm: averageOf(pulses, fromMs, likely, flowM3PerH, mixingFactor, roomM3)
	}));
	const worst = windows.reduce((most, each) => (each.ppm > most.ppm ? each : most));
	const inside = pulses.filter((pulse) => {
		const alone = averageOf([pulse], worst.fromMs, likely, flowM3PerH, mixingFactor, roomM3);
		return alone >= LEAST_SHARE * worst.ppm;
	});
	const steps = [...new Set(inside.map(({ step }) => step))];
	const rates = steps.map((step, i) => {
		const rate = inside.find((pulse) => pulse.step === step)?.rateGPerMin ?? 0;
		return computed(`ṁ_${i + 1}`, 'release', rate, 'g/min', `air.steps.${step}.releaseGPerMin`);
	});
	// All releases are high or low together, so that they count as one uncertain argument.
	const together = { ...computed('', '', 0, 'fraction'), low: 0, high: 1 };
	const shared = [flowInput(room), mixingInput(draft, room), volumeInput(room)];
	const rateAt =
		(share: number) =>
		({ step, rateGPerMin }: Pulse): number => {
			const { low = rateGPerMin, high = rateGPerMin } =
				draft.figures[`air.steps.${step}.releaseGPerMin`] ?? {};
			return low + share * (high - low);
		};
	return {
		substanceId,
		substance: name,
		fromAt: new Date(worst.fromMs).toISOString(),
		steps,
		limit: averageLimit(draft, substanceId, room, path),
		averagePpm: traced(draft, `${path}.averagePpm`, {
			label: `${name}: average over the worst eight hours of the calendar, for one who stays throughout`,
			value: worst.ppm,
			unit: 'ppm',
			law: exposureDoseLaw,
			inputs: [...rates, ...shared],
			...inherited(draft, [together, ...shared], (share = 0, ...air) =>
				averageOf(pulses, worst.fromMs, rateAt(share), ...air)
			),
			note: 'All coats and rounds that the calendar puts into these hours, and what lingers from before. Where you breathe it is higher.'
		})
	};
}
