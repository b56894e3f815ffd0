import {
	linearShrinkageFraction,
	partSizeLaw,
	partSizeMm,
	patternSizeLaw,
	patternSizeMm,
	shrinkageLaw,
	volumeShrinkageFraction,
	type ShrinkageStage
} from '../laws/shrinkage';
import type { Sheet } from '../materials/sheet';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { assumed, computed, fromSheet, inherited, traced, tradeLaw, type Draft } from './trace';

type SizesSection = NonNullable<Plan['sizes']>;

const stageLaw = tradeLaw(
	'stated-shrinkage',
	'Shrinkage of one material',
	'S as stated, give or take its spread; a typical one where the data sheet is silent',
	'a part that is free to shrink; a shell and a core hold it back'
);

/** Plaster grows on setting, by 0.1 to 0.3 % (handbook value, from memory). */
const PLASTER: ShrinkageStage = { low: -0.003, likely: -0.002, high: -0.001 };
/** A sheet that says nothing of shrinkage: none to half a percent; common practice, no source. */
const UNKNOWN: ShrinkageStage = { low: 0, likely: 0.002, high: 0.005 };

function stageOf(sheet: Sheet): ShrinkageStage & { isStated: boolean } {
	if (sheet.linearShrinkagePct === undefined) {
		return { ...(sheet.family === 'plaster' ? PLASTER : UNKNOWN), isStated: false };
	}
	const likely = sheet.linearShrinkagePct / 100;
	const spread = DEFAULTS.shrinkSpread.value;
	return { low: likely * (1 - spread), likely, high: likely * (1 + spread), isStated: true };
}

/** Where the shrinkage of a silent sheet comes from, as the trace and the note say it. */
const sourceOf = ({ family }: Sheet): string =>
	family === 'plaster' ? 'handbook value, from memory' : 'common practice, no source';

/** Size of the part against its pattern, with a range, and the oversize that would make up for it. */
export function sizesSection(draft: Draft): SizesSection {
	const { build, casting } = draft.inputs.materials;
	const { lengthMm, widthMm, heightMm } = draft.surface;
	const glove = stageOf(build);
	const cast = stageOf(casting);
	const stages = [glove, cast].map(({ low, likely, high }) => ({ low, likely, high }));
	const input = (symbol: string, sheet: Sheet, stage: ReturnType<typeof stageOf>) => ({
		...(stage.isStated
			? fromSheet(symbol, `shrinkage of ${sheet.name}`, stage.likely, 'fraction')
			: assumed(
					symbol,
					`shrinkage of ${sheet.name} (${sourceOf(sheet)})`,
					stage.likely,
					'fraction'
				)),
		low: stage.low,
		high: stage.high
	});
	const silent = [...new Set([glove.isStated ? [] : build, cast.isStated ? [] : casting].flat())];
	const exactly = (fraction: number): ShrinkageStage => ({
		low: fraction,
		likely: fraction,
		high: fraction
	});
	const inputs = [
		input('S_1', build, glove),
		input('S_2', casting, cast),
		defaultInput('spread', 'shrinkSpread')
	];
	const shrinkage = (key: 'glove' | 'casting', sheet: Sheet, stage: ShrinkageStage): number =>
		traced(draft, `sizes.${key}ShrinkageFraction`, {
			label: `Shrinkage of ${sheet.name}`,
			value: stage.likely,
			unit: 'fraction',
			law: stageLaw,
			inputs: inputs.filter((_, i) => i === (key === 'glove' ? 0 : 1) || i === 2),
			low: stage.low,
			high: stage.high
		});
	const rows = (
		[
			['length', lengthMm],
			['width', widthMm],
			['height', heightMm]
		] as const
	).map(([dimension, patternMm], i) => {
		const part = partSizeMm({ patternMm, stages });
		const from = computed('L_pattern', 'pattern', patternMm, 'mm');
		return {
			dimension,
			patternMm,
			partMm: traced(draft, `sizes.rows.${i}.partMm`, {
				label: `Part: ${dimension}`,
				value: part.likelyMm,
				unit: 'mm',
				law: partSizeLaw,
				inputs: [from, ...inputs],
				low: part.lowMm,
				high: part.highMm
			}),
			lowMm: part.lowMm,
			highMm: part.highMm,
			oversizeMm: traced(draft, `sizes.rows.${i}.oversizeMm`, {
				label: `Pattern for a part of this ${dimension}`,
				value: patternSizeMm({ partMm: patternMm, stages }),
				unit: 'mm',
				law: patternSizeLaw,
				inputs: [computed('L_part', 'wanted', patternMm, 'mm'), ...inputs],
				...inherited(draft, inputs.slice(0, 2), (...fractions) =>
					patternSizeMm({ partMm: patternMm, stages: fractions.map(exactly) })
				)
			})
		};
	});
	const afterMm = partSizeMm({ patternMm: lengthMm, stages }).likelyMm;
	const together = linearShrinkageFraction({ beforeMm: lengthMm, afterMm });
	return {
		rows,
		gloveShrinkageFraction: shrinkage('glove', build, glove),
		castingShrinkageFraction: shrinkage('casting', casting, cast),
		volumeShrinkageFraction: traced(draft, 'sizes.volumeShrinkageFraction', {
			label: 'Shrinkage by volume, glove and casting together',
			value: volumeShrinkageFraction(together),
			unit: 'fraction',
			law: shrinkageLaw,
			inputs,
			...inherited(draft, inputs.slice(0, 2), (first = 0, second = 0) =>
				volumeShrinkageFraction(1 - (1 - first) * (1 - second))
			)
		}),
		note:
			glove.isStated && cast.isStated
				? 'From the data sheets, with half of each as its spread; a shell and a core hold it back.'
				: `${silent.map((sheet) => `The data sheet of ${sheet.name} gives no shrinkage: a typical one stands in for it (${sourceOf(sheet)}).`).join(' ')} Measure the first part.`
	};
}
