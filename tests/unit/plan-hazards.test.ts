import { describe, expect, test } from 'vitest';
import { hurtsOf } from '../../src/lib/core/bench/bench-hurts';
import { HAZARDS } from '../../src/lib/core/content/vocabulary';
import type { Sheet } from '../../src/lib/core/materials/sheet';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planSchema } from '../../src/lib/core/plan/plan';
import { cupLabels } from '../../src/lib/core/process/cup-labels';

import { draftOfSheet } from '../../src/lib/screen/material/draft-of-sheet';
import { readSheet } from '../../src/lib/screen/material/read-sheet';
import { BenchLog } from '../fixtures/bench-log';
import { testInputs, testSheet } from '../fixtures/materials';

const silent = (id: string, over: Partial<Sheet> = {}): Sheet => ({
	...testSheet(id),
	hazardStatements: [],
	hazards: [],
	...over
});
const inputs = testInputs();
const planOf = (over: Partial<typeof inputs.materials>) =>
	makePlan({ ...inputs, materials: { ...inputs.materials, ...over } });

describe('a plan of urethanes whose sheets tick no hazard', () => {
	const bare = planOf({
		build: silent('brush-80'),
		shell: silent('paste-9')
	});

	test('asks for what isocyanate asks for, and says what it assumes', () => {
		expect(bare.hazards).toEqual(expect.arrayContaining(['isocyanate', 'sensitizer']));
		expect(bare.briefings).toContain('isocyanates');
		expect(bare.ppe).toEqual(expect.arrayContaining(['gloves', 'respirator', 'sleeves']));
		const said = bare.warnings.filter(({ code }) => code === 'hazards-assumed');
		expect(said.map(({ severity }) => severity)).toContain('warn');
		expect(said.map(({ text }) => text).join()).toContain('Assumed for a urethane');
	});

	test('looks at isocyanate in the air', () => {
		const build = bare.inputs.materials.build.id;
		expect(bare.air?.steps.filter(({ materialId }) => materialId === build)).toContainEqual(
			expect.objectContaining({ substanceId: 'mdi' })
		);
	});

	test('is a plan as it is kept, and keeps the sheets as they were entered', () => {
		expect(planSchema.parse(bare)).toEqual(bare);
		expect(bare.inputs.materials.build.hazards).toEqual([]);
	});

	test('takes nothing away but for an SDS that was read, and says so', () => {
		const sds = { sdsExcludesUsual: true as const };
		const plan = planOf({ build: silent('brush-80', sds) });
		const texts = plan.warnings.filter(({ code }) => code === 'hazards-excluded');
		expect(texts).toHaveLength(1);
		expect(texts[0]?.text).toContain('check it before the first cup');
	});
});

describe('a sheet whose hazard statements mean more than it ticks', () => {
	const epoxy = {
		family: 'epoxy' as const,
		hazards: ['amine'],
		hazardStatements: ['H317', 'H242']
	};

	test('has at the bench and on its cups what the plan asks protection against', () => {
		const plan = planOf({ build: silent('brush-80', epoxy) });
		const meant = ['amine', 'sensitizer', 'peroxide'] as const;
		expect(plan.hazards).toEqual(expect.arrayContaining([...meant]));
		const text = { slug: 'build-coat', hurts: [] } as unknown as Parameters<typeof hurtsOf>[0];
		const shown = hurtsOf(text, 'build', plan).hazards.map(({ id }) => id);
		expect(shown).toEqual(expect.arrayContaining([...meant]));
		const [label] = cupLabels(new BenchLog(plan).state).filter(
			({ materialName }) => materialName === plan.inputs.materials.build.name
		);
		const words = meant.map((id): string => HAZARDS[id].label);
		expect(label?.hazards).toEqual(expect.arrayContaining(words));
	});

	test('plans nothing while it says that its SDS names none of it', () => {
		const both = { sdsExcludesUsual: true as const, hazardStatements: ['H334'] };
		const field = 'materials.build.sdsExcludesUsual';
		expect(() => planOf({ build: silent('brush-80', both) })).toThrow(
			expect.objectContaining({ problems: [expect.objectContaining({ path: field })] })
		);
	});
});

describe('a cup that gets hot', () => {
	const shell = silent('paste-9', { hazards: ['isocyanate', 'sensitizer'], heatJPerG: 200 });
	const build = silent('brush-80', { hazards: ['isocyanate'], heatJPerG: 20 });
	const hot = planOf({ build, shell });

	test('is a hazard with its briefing, though nobody ticked it', () => {
		const heats = hot.cure?.materials.find(({ materialId }) => materialId === shell.id);
		expect(heats?.cup.peakC).toBeGreaterThan(80);
		expect(hot.hazards).toContain('hot-cup');
		expect(hot.briefings).toContain('exotherm-and-waste');
	});

	test('is shown at the step that mixes it, whatever the text of the step names', () => {
		const hurtsAt = (slug: string, phase: 'shell' | 'build') => {
			const text = { slug, hurts: [] } as unknown as Parameters<typeof hurtsOf>[0];
			return hurtsOf(text, phase, hot).hazards.map(({ id }) => id);
		};
		expect(hurtsAt('shell', 'shell')).toContain('hot-cup');
		expect(hurtsAt('build-coat', 'build')).not.toContain('hot-cup');
		expect(hurtsAt('weigh-and-mix', 'build')).not.toContain('hot-cup');
	});
});

describe('the form of a data sheet', () => {
	const kept = { id: 'x', retired: false };
	const draft = draftOfSheet(silent('brush-80'), 'SI');

	test('cautions when nothing is ticked of what is usual for its family, and keeps it', () => {
		const { sheet, cautions } = readSheet(draft, 'SI', kept);
		expect(sheet).not.toBeNull();
		expect(cautions.join()).toContain('isocyanate');
		const said = { ...draft, hazards: ['isocyanate'] };
		expect(readSheet(said, 'SI', kept).cautions).toEqual([]);
	});

	test('takes an SDS that excludes them, still cautions, and brings the tick back', () => {
		const { sheet, cautions } = readSheet({ ...draft, sdsExcludesUsual: 'on' }, 'SI', kept);
		expect(sheet?.sdsExcludesUsual).toBe(true);
		expect(cautions.join()).toContain('no protection');
		expect(sheet && draftOfSheet(sheet, 'SI').sdsExcludesUsual).toBe('on');
	});

	test('refuses the tick beside a statement or a box that says otherwise', () => {
		const both = { ...draft, sdsExcludesUsual: 'on', hazardStatements: 'H334' };
		expect(Object.keys(readSheet(both, 'SI', kept).errors)).toEqual(['sdsExcludesUsual']);
		const ticked = { ...draft, sdsExcludesUsual: 'on', hazards: ['isocyanate'] };
		expect(readSheet(ticked, 'SI', kept).sheet).toBeNull();
	});
});
