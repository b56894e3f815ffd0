import { makePlan } from '../../src/lib/core/plan/make-plan';
import type { PlanInputs } from '../../src/lib/core/plan/inputs';
import type { Solid } from '../../src/lib/core/geometry/pattern';
import { detailInputs } from '../fixtures/materials';
import { measureCpuMs, measureMs, medianOf } from './measure';

const FRAME_MS = 16;
const RUNS = 200;
const WARM_UP = 60;

/** Thirty solids in a row, ten build coats over two detail coats, and a start that tears a window. */
function largeInputs(roomTemperatureC = 23): PlanInputs {
	const base = detailInputs({ buildCoats: 10, gloveThicknessMm: 12, roomTemperatureC });
	const solids = Array.from({ length: 30 }, (_, i): Solid => ({
		shape: i % 2 ? 'cylinder' : 'dome',
		id: `s${i}`,
		name: `S${i}`,
		on: 'board',
		against: [],
		diameterMm: 60,
		heightMm: 30
	}));
	return { ...base, pattern: { ...base.pattern, body: { kind: 'solids', solids } } };
}

/** What the plan costs beside a floor of the same size, measured in turn so that both meet the same machine. */
export function benchPlan(): string[] {
	const same = largeInputs();
	const plan = makePlan(same);
	const copy = () => JSON.parse(JSON.stringify(plan)) as unknown;
	let typed = 0;
	// A temperature that was never asked before: nothing remembered helps.
	const cold = () => makePlan(largeInputs(20 + (typed += 1) / 1000));
	const again = () => makePlan(same);
	for (let i = 0; i < WARM_UP; i += 1) [again, cold, copy].forEach((run) => run());
	const times = Array.from({ length: RUNS }, () => ({
		again: measureMs(again),
		cold: measureMs(cold),
		copy: measureMs(copy)
	}));
	const work = Array.from({ length: RUNS }, () => ({
		again: measureCpuMs(again),
		cold: measureCpuMs(cold),
		copy: measureCpuMs(copy)
	}));
	const floorMs = medianOf(times.map(({ copy: ms }) => ms));
	const line = (what: string, key: keyof (typeof times)[number]) => {
		const all = times.map((run) => run[key]);
		const [median, least] = [medianOf(all), Math.min(...all)];
		const cpu = medianOf(work.map((run) => run[key]));
		const verdict =
			median < FRAME_MS ? 'within' : cpu < FRAME_MS ? 'within when undisturbed' : 'over';
		const ms = [median, least, cpu].map((each) => `${each.toFixed(2)} ms`);
		return `| ${what} | ${ms.join(' | ')} | ${(median / floorMs).toFixed(2)} | ${verdict} |`;
	};
	const kB = Math.round(JSON.stringify(plan).length / 1000);
	return [
		`Plan of 30 solids in ${plan.coats.length} coats, ${Object.keys(plan.figures).length} traced numbers, ${kB} kB as JSON.`,
		`Median of ${RUNS} runs after ${WARM_UP} to warm up; floor: JSON.parse(JSON.stringify(plan)), run in turn with them.`,
		'',
		'| what | median | least | median processor time | median / floor | one frame, 16 ms |',
		'|---|---|---|---|---|---|',
		line('the same plan again', 'again'),
		line('a plan with a number never typed before', 'cold'),
		line('floor: the plan copied through JSON', 'copy')
	];
}
