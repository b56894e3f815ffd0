import { describe, expect, test } from 'vitest';
import { hurtsOf } from '../../src/lib/core/bench/bench-hurts';
import type { Sheet } from '../../src/lib/core/materials/sheet';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planSchema } from '../../src/lib/core/plan/plan';
import { draftOfSheet } from '../../src/lib/screen/material/draft-of-sheet';
import { readSheet } from '../../src/lib/screen/material/read-sheet';
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

describe('a cup that gets hot', () => {
	const shell = silent('paste-9', { hazards: ['isocyanate', 'sensitizer'], heatJPerG: 200 });
	const hot = planOf({ shell });

	test('is a hazard with its briefing, though nobody ticked it', () => {
		const heats = hot.cure?.materials.find(({ materialId }) => materialId === shell.id);
		expect(heats?.cup.peakC).toBeGreaterThan(80);
		expect(hot.hazards).toContain('hot-cup');
		expect(hot.briefings).toContain('exotherm-and-waste');
	});

	test('is shown at the step that mixes it, whatever the text of the step names', () => {
		const text = { slug: 'shell', hurts: [] } as unknown as Parameters<typeof hurtsOf>[0];
		expect(hurtsOf(text, 'shell', hot).hazards.map(({ id }) => id)).toContain('hot-cup');
		expect(hurtsOf(text, 'build', hot).hazards.map(({ id }) => id)).not.toContain('hot-cup');
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
