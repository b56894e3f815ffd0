import { additionG, additionLaw } from '../laws/proportioning';
import type { PlacedBatch } from './batch-paths';
import type { Plan } from './plan';
import { computed, entered, traced, type Draft } from './trace';

/** Thickener, pigment or accelerator for each cup, as parts per hundred of the mix. */
export function additionsSection(
	draft: Draft,
	placed: readonly PlacedBatch[],
	pour: Plan['pour']
): Plan['additions'] {
	return draft.inputs.additions?.map(({ to, name, partsPerHundred }, i) => {
		const batches =
			to === 'casting'
				? [{ id: 'pour', title: 'First pour', massG: pour.massG, cups: 1, figure: 'pour.massG' }]
				: placed
						.filter((batch) => ('kind' in batch ? batch.kind : 'shell') === to)
						.map(({ id, title, massG, cups, path }) => ({
							id,
							title,
							massG,
							cups: cups.length,
							figure: `${path}.massG`
						}));
		const each = batches.map(({ id, title, massG, cups }, k) => ({
			id,
			title,
			perCupG: traced(draft, `additions.${i}.batches.${k}.perCupG`, {
				label: `${title}: ${name} in each cup`,
				value: additionG({ baseG: massG / cups, partsPerHundred }),
				unit: 'g',
				law: additionLaw,
				inputs: [
					computed('m_base', 'cup without it', massG / cups, 'g'),
					entered('p', 'parts per hundred', partsPerHundred, 'count')
				],
				note: 'On top of the cup’s parts, stirred into the first of them unless its sheet says otherwise.'
			})
		}));
		return {
			to,
			name,
			partsPerHundred,
			totalG: totalOf(draft, { name, partsPerHundred, batches, path: `additions.${i}.totalG` }),
			batches: each
		};
	});
}

function totalOf(
	draft: Draft,
	given: {
		name: string;
		partsPerHundred: number;
		batches: readonly { title: string; massG: number; figure: string }[];
		path: string;
	}
): number {
	const { name, partsPerHundred, batches, path } = given;
	const parts = entered('p', 'parts per hundred', partsPerHundred, 'count');
	const massesOf = batches.map(({ title, massG, figure }, i) =>
		computed(`m_${i + 1}`, title, massG, 'g', figure)
	);
	const sumOf = (pick: (batch: (typeof batches)[number]) => number): number =>
		batches.reduce((sum, batch) => sum + additionG({ baseG: pick(batch), partsPerHundred }), 0);
	return traced(draft, path, {
		label: `${name}: in all`,
		value: sumOf(({ massG }) => massG),
		unit: 'g',
		law: { ...additionLaw, formula: 'm_add = Σ m_base · p / 100' },
		inputs: [...massesOf, parts],
		// One hand lays all coats too thick or too thin: their ranges add up.
		low: sumOf(({ figure, massG }) => draft.figures[figure]?.low ?? massG),
		high: sumOf(({ figure, massG }) => draft.figures[figure]?.high ?? massG)
	});
}
