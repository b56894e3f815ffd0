import type { PhaseId } from '../../content/vocabulary';
import type { Words } from '../../language/words';
import { batchAtWork, isOpenOrder, type ProcessContext } from '../context';
import { numberText } from '../../quantity/display';
import { additionTarget, cupAdditions } from '../cup-additions';
import { layersPlanned } from '../layers';
import { nextCup } from '../next-cup';

const TITLES = {
	'Detail coat': 'detailCoat',
	'Build coat': 'buildCoat',
	'Extra coat': 'extraCoat',
	'Shell round': 'round',
	'Extra round': 'extraRound'
} as const;

/** The title of a coat or round, which the plan keeps in English, in the reader's words. */
export function titleInWords(title: string, { steps: { batch } }: Words): string {
	const [, name, number = ''] = /^(\D+) (\d+)$/.exec(title) ?? [];
	const key = TITLES[name as keyof typeof TITLES];
	return key ? batch[key](number) : title;
}

/** The coat or round at work, by its title. */
export const batchTitle = (w: Words, c: ProcessContext) => {
	const batch = batchAtWork(c);
	return batch ? titleInWords(batch.title, w) : w.steps.batch.coat;
};
/** What it is made of. */
export const materialName = ({ steps }: Words, c: ProcessContext) =>
	batchAtWork(c)?.materialName ?? steps.batch.material;

/** What goes into the cup besides its parts; empty where the plan adds nothing. */
export const addLine = ({ steps }: Words, c: ProcessContext): string => {
	const batch = batchAtWork(c);
	if (!batch) return '';
	const added = cupAdditions(c.plan, additionTarget(batch), nextCup(c)?.cup.massG ?? 0);
	const said = added.map(({ name, massG }) => `${name}, ${numberText(massG, 3, 1)} g`);
	return said.length > 0 ? steps.batch.add(said.join('; ')) : '';
};

/** How much of it is laid; empty before its first cup. */
export const laidLine = ({ steps }: Words, c: ProcessContext): string => {
	const batch = batchAtWork(c);
	if (!batch || c.laidG === 0) return '';
	return steps.batch.laid({ laidG: Math.round(c.laidG), ofG: Math.round(batch.massG) });
};

/** What is left to do when no further cup is to be weighed; empty while one is. */
export const endLine = (
	{ steps: { batch: said } }: Words,
	c: ProcessContext,
	noun: 'Coat' | 'Round'
): string => {
	const batch = batchAtWork(c);
	if (!batch || c.laidG === 0 || nextCup(c) !== null) return '';
	const isOver = Math.round(c.laidG) > Math.round(batch.massG);
	return said[`${isOver ? 'over' : 'all'}${noun}`];
};

/** The coat whose surface is tested or abraded: the one laid last while nothing of the next is on it. */
export const laidTitle = (w: Words, c: ProcessContext): string => {
	const below = c.laidG === 0 ? c.coats[c.coatIndex - 1]?.title : undefined;
	return below === undefined ? batchTitle(w, c) : titleInWords(below, w);
};

/** How many layers of cloth or strand go into the round at work; the next cup where it takes none. */
export const layersLine = ({ steps: { batch } }: Words, c: ProcessContext): string => {
	const layers = layersPlanned(c);
	if (layers === 0) return batch.nextCup;
	const material = c.plan.inputs.materials.reinforcement?.name ?? batch.reinforcement;
	return batch.layers({ n: layers, material });
};

/** Who decides on abrading. */
export const whoDecides = (
	{ steps: { batch } }: Words,
	c: ProcessContext,
	phase: PhaseId
): string => (isOpenOrder(c, phase) ? batch.ordered : batch.decides);
