import { describe, expect, test } from 'vitest';
import { benchView } from '../../src/lib/core/bench/bench-view';
import { readAct } from '../../src/lib/core/bench/read-act';
import { cupAdvice } from '../../src/lib/core/process/cup-advice';
import { mainAct } from '../../src/lib/screen/bench/main-act';
import { textsOfBench } from '../../src/lib/server/content';
import type { Coat, Plan } from '../../src/lib/core/plan/plan';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const LOTS = { A: 'a1', B: 'b1' };
const cup = (A: number, B: number) => ({ massesG: { A, B }, lots: LOTS });
const bench = (plan: Plan = handPlan()) => new BenchLog(plan).toCoats();
const viewOf = (log: BenchLog) =>
	benchView(
		{ id: 'job-1', plan: log.plan, headSeq: log.log.length, state: log.state },
		{
			viewer: { id: MAKER, name: 'Ines', role: 'mold maker' },
			names: {},
			at: log.at,
			zone: 'UTC',
			system: 'SI',
			texts: textsOfBench,
			training: null,
			actId: 'none'
		}
	);
const whatOf = (log: BenchLog) => viewOf(log).step.what;

describe('the line above a cup on the scale says the same as the words below it', () => {
	test.each([
		['on ratio', cup(80, 100), /^On ratio\? Mix it/],
		['little off', cup(88, 100), /^Off ratio: do not mix. Put it right as said below/],
		['a decimal point off', cup(800, 100), /^Off ratio: do not mix. Put it right/],
		['as running totals', cup(180, 100), /^Off ratio: do not mix. Put it right/],
		['far off', cup(300, 100), /^Off ratio, too far to put right: do not mix. Set it aside/],
		['one part alone', { massesG: { B: 100 }, lots: LOTS }, /^A is not in yet: pour it/]
	])('%s', (_, weighed, words) => {
		const log = bench().do('cup.weighed', weighed);
		expect(whatOf(log)).toMatch(words);
	});

	test('far off, setting it aside is offered beneath the weights', () => {
		const { step } = viewOf(bench().do('cup.weighed', cup(300, 100)));
		const main = mainAct(step.acts, { unread: 0, isBrief: false, isOthers: false });
		expect(main.act?.type).toBe('cup.weighed');
		expect(main.aside?.type).toBe('cup.discarded');
		expect(main.others.map(({ type }) => type)).not.toContain('cup.discarded');
	});

	test('what no cup of the shop holds with room to stir is said to be too much', () => {
		const { cup: atScale } = viewOf(bench());
		if (!atScale) throw new Error('no cup');
		expect(atScale.largestCupMl).toBe(2500);
		expect(cupAdvice(atScale, { A: 500, B: 625 })).toMatchObject({ isTooMuch: false });
		expect(cupAdvice(atScale, { A: 5000, B: 6250 })).toMatchObject({ isTooMuch: true });
	});
});

test('a cup much larger than planned says so while it is mixed and laid, and that it gets hot', () => {
	const plan = handPlan();
	const cupLives = [
		{ massG: 180, workingS: 1080, peakC: 40 },
		{ massG: 720, workingS: 480, peakC: 95 }
	];
	plan.coats = plan.coats.map((coat): Coat => ({ ...coat, cupLives }));
	// As planned it stays cool: neither its sheet nor the heat balance says otherwise.
	const { materials } = plan.inputs;
	const build = { ...materials.build, hazards: ['isocyanate', 'sensitizer'] };
	plan.inputs = { ...plan.inputs, materials: { ...materials, build } };
	const curve = [{ atS: 0, temperatureC: 23, conversion: 0 }];
	plan.cure = {
		materials: [
			{
				materialId: 'brush-80',
				materialName: 'Test brush urethane',
				cup: { massG: 180, workableS: 1080, peakC: 40, peakAtS: 2000, curve },
				film: { thicknessMm: 2, peakC: 30, curve },
				largestCalmG: 500,
				calmPeakC: 60
			}
		],
		night: null,
		caution: ''
	} as unknown as Plan['cure'];
	const hazards = (log: BenchLog) => viewOf(log).hurts.hazards.map(({ id }) => id);
	const planned = bench(plan).do('cup.weighed', cup(80, 100));
	expect(whatOf(planned)).not.toContain('planned');
	expect(hazards(planned)).not.toContain('hot-cup');
	const large = bench(plan).do('cup.weighed', cup(320, 400));
	const words = '720 g in it, planned 180 g: it heats more, and works for 8 min after mixing.';
	expect(whatOf(large)).toContain(words);
	expect(hazards(large)).toContain('hot-cup');
	expect(whatOf(large.do('cup.mixed'))).toContain(words);
});

describe('of the next cup one part may be weighed alone', () => {
	const laying = () => bench().coat(180).do('cup.weighed', cup(80, 100)).do('cup.mixed');
	const read = (log: BenchLog) => {
		const form = new FormData();
		const fields = { type: 'cup.weighed', 'massesG.B': '100', 'massesG.A': '' };
		for (const [name, value] of Object.entries(fields)) form.set(name, value);
		form.set('lots.B', 'b1');
		form.set('lots.A', '');
		return readAct(form, { state: log.state, by: MAKER, at: log.at, texts: textsOfBench });
	};

	test('while another is laid, and then its pot life does not run', () => {
		const log = laying();
		const answer = read(log);
		expect(answer).toMatchObject({ ok: true, event: { massesG: { B: 100 }, lots: { B: 'b1' } } });
		if (answer.ok) log.do('cup.weighed', answer.event);
		expect(viewOf(log).step.ahead).toMatchObject({ missing: ['A'], metAt: null });
		expect(whatOf(log.do('cup.applied'))).toContain('A is not in yet');
	});

	test('but of the one that is mixed next, each part is asked for', () => {
		const answer = read(bench());
		expect(answer.ok ? [] : Object.keys(answer.notDone.errors)).toEqual(['massesG.A', 'lots.A']);
	});
});
