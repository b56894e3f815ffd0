import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { sectionOfJob } from '../../src/lib/core/process/section-of-job';
import { contextOf, openJob } from '../../src/lib/core/process/job';
import { sectionOfPlan } from '../../src/lib/screen/plan/section-of-plan';
import { testInputs, testSheet } from '../fixtures/materials';
import type { Plan } from '../../src/lib/core/plan/plan';

const inputs = testInputs();
const { wax, film } = inputs.materials;
const withRelease = (release: object): Plan =>
	makePlan({ ...inputs, materials: { ...inputs.materials, ...release } });
const codesOf = ({ warnings }: Plan, severity: string): string[] =>
	warnings.filter((warning) => warning.severity === severity).map(({ code }) => code);

/** The labels of what keeps the glove off the pattern, on the plan's drawing and on the job's. */
function releases(plan: Plan): string[][] {
	const job = openJob(plan, {
		id: 'a',
		seq: 1,
		event: {
			type: 'job.opened',
			at: inputs.startAt,
			by: 'ada',
			jobId: 'job-00001',
			title: plan.title,
			planHash: '0'.repeat(64),
			processVersion: plan.processVersion,
			content: {}
		}
	});
	const below = (layers: readonly { kind: string; label: string }[]) =>
		layers
			.slice(
				0,
				layers.findIndex(({ kind }) => kind === 'build')
			)
			.filter(({ kind }) => kind === 'release')
			.map(({ label }) => label);
	return [below(sectionOfPlan(plan).layers), below(sectionOfJob(contextOf(job)).layers)];
}

describe('a urethane glove released by half of what keeps it off', () => {
	test('waits for a supervisor, and the drawings show only what is laid', () => {
		const whole = makePlan(inputs);
		expect(codesOf(whole, 'decide')).toEqual([]);
		expect(releases(whole)).toEqual([['Wax and parting film'], ['Wax and parting film']]);

		const waxAlone = withRelease({ film: undefined });
		expect(codesOf(waxAlone, 'decide')).toEqual(['release-thin']);
		expect(releases(waxAlone)).toEqual([['Wax'], ['Wax']]);
	});

	test('film alone is half as well, and no release at all is no layer', () => {
		expect(codesOf(withRelease({ wax: undefined, film }), 'decide')).toEqual(['release-thin']);
		expect(releases(withRelease({ wax: undefined, film }))).toEqual([
			['Parting film'],
			['Parting film']
		]);
		const bare = withRelease({ wax: undefined, film: undefined });
		expect(codesOf(bare, 'refuse')).toContain('release-missing');
		expect(releases(bare)).toEqual([[], []]);
		expect(wax).toBeDefined();
	});
});

describe('a shell cup that would melt its cup', () => {
	// An epoxy sets far more heat free than a backing paste: 300 J/g and above (see curing-material).
	const paste = { ...testSheet('paste-9'), heatJPerG: 300 };
	const planOf = (over: object = {}) =>
		makePlan({ ...inputs, ...over, materials: { ...inputs.materials, shell: paste } });

	test('waits for a supervisor', () => {
		const plan = planOf();
		const shell = plan.cure?.materials.find(({ materialId }) => materialId === paste.id);
		expect(shell?.cup.peakC).toBeGreaterThan(120);
		expect(codesOf(plan, 'decide')).toContain('hot-cup');
	});
});

describe('a slow resin in a large cup', () => {
	// Slow enough that a small cup gives off its heat as fast as it makes it.
	const resin = {
		...testSheet('paste-9'),
		heatJPerG: 220,
		potLife: { timeS: 90 * 60, massG: 1000, atC: 23 }
	};
	const planOf = (over: object = {}) =>
		makePlan({ ...inputs, ...over, materials: { ...inputs.materials, shell: resin } });
	const heatOf = (plan: Plan) =>
		plan.cure?.materials.find(({ materialId }) => materialId === resin.id);

	test('is offered in cups that stay cooler, and those need nobody’s word', () => {
		const plan = planOf();
		const offeredG = heatOf(plan)?.smallerCupG ?? 0;
		expect(codesOf(plan, 'decide')).toEqual(['hot-cup']);
		expect(offeredG).toBeGreaterThan(25);
		expect(offeredG).toBeLessThan(heatOf(plan)?.cup.massG ?? 0);

		const smaller = planOf({ shellCupG: offeredG });
		expect(heatOf(smaller)?.cup.massG).toBeLessThanOrEqual(offeredG);
		expect(heatOf(smaller)?.cup.peakC).toBeLessThanOrEqual(120);
		expect(codesOf(smaller, 'decide')).toEqual([]);
		const cups = smaller.shell.rounds.flatMap((round) => round.cups);
		expect(Math.max(...cups.map(({ massG }) => massG))).toBeLessThanOrEqual(offeredG);
	});
});
