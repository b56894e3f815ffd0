import { BRUSH_LOSS_G, CUP_LOSS_G } from '../laws/coat-losses';
import { mixWaste, mixWasteLaw, partWasteG, partWasteLaw, WASTE_CAUTION } from '../laws/waste';
import { around } from '../quantity/range';
import { DEFAULTS, defaultInput } from './defaults';
import type { PlacedBatch } from './batch-paths';
import type { Plan } from './plan';
import { computed, constant, inherited, traced, tradeLaw, type Draft } from './trace';
import { withinLaw } from './within-law';

type WasteSection = NonNullable<Plan['waste']>;

const mixedLaw = tradeLaw(
	'mixed-in-all',
	'What is mixed of one material',
	'm = Σ m_i',
	'coats and rounds as they are planned; a cup that is mixed again comes on top'
);

/** What is mixed and thrown away while the mold is built, and behind each part over its life. */
export function wasteSection(
	draft: Draft,
	batches: readonly PlacedBatch[],
	facts: { weights: Plan['weights']; life: NonNullable<Plan['life']>; pour: Plan['pour'] }
): WasteSection {
	const ids = [...new Set(batches.map(({ materialId }) => materialId))];
	const lines = ids.flatMap((materialId, i) => {
		const mine = batches.filter((batch) => batch.materialId === materialId);
		const name = mine[0]?.materialName ?? '';
		const line = withinLaw(draft, 'order', `Waste of ${name}`, () =>
			wasteLine(draft, { materialId, name, mine, path: `waste.lines.${i}`, weights: facts.weights })
		);
		return line ?? [];
	});
	const buildG = lines.reduce((sum, { wasteG }) => sum + wasteG, 0);
	const shares = lines.map(({ materialName, wasteG }, i) =>
		computed(`m_${i + 1}`, materialName, wasteG, 'g', `waste.lines.${i}.wasteG`)
	);
	traced(draft, 'waste.buildG', {
		label: 'Waste of the build',
		value: buildG,
		unit: 'g',
		law: mixWasteLaw,
		inputs: shares,
		...inherited(draft, shares, (...wastesG) => wastesG.reduce((sum, each) => sum + each, 0))
	});
	const { weights, life, pour } = facts;
	const pourG = pour.massG * DEFAULTS.pourLoss.value;
	const partsPerMold = Math.max(1, draft.inputs.pattern.partsWanted / Math.max(1, life.moldsCount));
	const wornG = weights.gloveG + weights.shellG;
	const behind = [
		computed('m_build', 'waste of the build', buildG, 'g', 'waste.buildG'),
		computed('m_worn mold', 'glove and shell, worn', wornG, 'g', 'weights.gloveAndShellG'),
		computed('n_parts', 'parts from one mold', partsPerMold, 'count'),
		{
			...computed('m_pour', 'left of each pour', pourG, 'g'),
			...around(pourG, 2 * DEFAULTS.pourSpread.value)
		}
	];
	const partWaste = (buildWasteG = 0, wornMoldG = 0, parts = 1, pourWasteG = 0): number =>
		partWasteG({ buildWasteG, wornMoldG, partsPerMold: parts, pourWasteG });
	return {
		lines,
		buildG,
		perPartG: traced(draft, 'waste.perPartG', {
			label: 'Waste behind each part',
			value: partWaste(buildG, wornG, partsPerMold, pourG),
			unit: 'g',
			law: partWasteLaw,
			inputs: behind,
			...inherited(draft, behind, partWaste)
		}),
		caution: WASTE_CAUTION
	};
}

function wasteLine(
	draft: Draft,
	given: {
		materialId: string;
		name: string;
		mine: readonly PlacedBatch[];
		path: string;
		weights: Plan['weights'];
	}
): WasteSection['lines'][number] {
	const { materialId, name, mine, path, weights } = given;
	const { people, materials } = draft.inputs;
	const cupsCount = mine.reduce((sum, { cups }) => sum + cups.length, 0);
	const brushesCount = mine.length * people;
	const mixedG = mine.reduce((sum, { massG }) => sum + massG, 0);
	const isTrimmed = materialId === materials.build.id;
	// A thicker glove is also more that was mixed.
	const wasteAt = (gloveG: number) =>
		mixWaste({
			mixedG: mixedG + (isTrimmed ? gloveG - weights.gloveG : 0),
			cupsCount,
			cupResidueG: CUP_LOSS_G,
			brushesCount,
			brushResidueG: BRUSH_LOSS_G,
			trimG: isTrimmed ? gloveG * DEFAULTS.trimShare.value : 0
		});
	const { wasteG, wasteFraction } = wasteAt(weights.gloveG);
	const inputs = [
		...(isTrimmed
			? [
					computed('m_glove', 'glove as laid', weights.gloveG, 'g', 'weights.gloveG'),
					defaultInput('m_trim / m_glove', 'trimShare')
				]
			: []),
		computed('n_cup', 'cups', cupsCount, 'count'),
		constant('r_cup', 'left in a cup (common practice, no source)', CUP_LOSS_G, 'g'),
		computed('n_brush', 'brushes, one a person and coat', brushesCount, 'count'),
		constant('r_brush', 'left in a brush (common practice, no source)', BRUSH_LOSS_G, 'g')
	];
	const number = (key: 'wasteG' | 'wasteFraction', label: string, value: number): number =>
		traced(draft, `${path}.${key}`, {
			label: `${name}: ${label}`,
			value,
			unit: key === 'wasteG' ? 'g' : 'fraction',
			law: mixWasteLaw,
			inputs,
			...inherited(draft, inputs, (gloveG = 0) => wasteAt(isTrimmed ? gloveG : 0)[key])
		});
	return {
		materialId,
		materialName: name,
		mixedG: traceMixed(draft, { name, mine, mixedG, path }),
		wasteG: number('wasteG', 'mixed and thrown away', wasteG),
		wasteFraction: number('wasteFraction', 'share thrown away', wasteFraction)
	};
}

function traceMixed(
	draft: Draft,
	given: { name: string; mine: readonly PlacedBatch[]; mixedG: number; path: string }
): number {
	const { name, mine, mixedG, path } = given;
	const sumOf = (end: 'low' | 'high'): number =>
		mine.reduce(
			(sum, { path: batch, massG }) => sum + (draft.figures[`${batch}.massG`]?.[end] ?? massG),
			0
		);
	return traced(draft, `${path}.mixedG`, {
		label: `${name}: mixed`,
		value: mixedG,
		unit: 'g',
		law: mixedLaw,
		inputs: mine.map(({ title, massG, path: batch }, i) =>
			computed(`m_${i + 1}`, title, massG, 'g', `${batch}.massG`)
		),
		// One hand lays all coats too thick or too thin: their ranges add up.
		low: sumOf('low'),
		high: sumOf('high')
	});
}
