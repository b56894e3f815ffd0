import type { PhaseId } from '../../content/vocabulary';
import { batchAtWork, isOpenOrder, type ProcessContext } from '../context';
import { layersPlanned } from '../layers';
import { nextCup } from '../next-cup';

/** The coat or round at work, by its title. */
export const batchTitle = (c: ProcessContext) => batchAtWork(c)?.title ?? 'Coat';
/** What it is made of. */
export const materialName = (c: ProcessContext) => batchAtWork(c)?.materialName ?? 'the material';

/** How much of it is laid; empty before its first cup. */
export const laidLine = (c: ProcessContext): string => {
	const batch = batchAtWork(c);
	if (!batch || c.laidG === 0) return '';
	return `${Math.round(c.laidG)} g of ${Math.round(batch.massG)} g is laid. `;
};

/** What is left to do when no further cup is to be weighed; empty while one is. */
export const endLine = (c: ProcessContext, noun: 'coat' | 'round'): string => {
	const batch = batchAtWork(c);
	if (!batch || c.laidG === 0 || nextCup(c) !== null) return '';
	const isOver = Math.round(c.laidG) > Math.round(batch.massG);
	return `${isOver ? 'More than planned' : 'All of it is on'}: finish the ${noun}.`;
};

/** The coat whose surface is tested or abraded: the one laid last while nothing of the next is on it. */
export const laidTitle = (c: ProcessContext): string =>
	(c.laidG === 0 ? c.coats[c.coatIndex - 1]?.title : undefined) ?? batchTitle(c);

/** How many layers of cloth or strand go into the round at work; the next cup where it takes none. */
export const layersLine = (c: ProcessContext): string => {
	const layers = layersPlanned(c);
	if (layers === 0) return 'Then the next cup.';
	return `${layers} ${layers === 1 ? 'layer' : 'layers'} of ${c.plan.inputs.materials.reinforcement?.name ?? 'reinforcement'} in this round: wet through, air rolled out.`;
};

/** Who decides on abrading. */
export const whoDecides = (c: ProcessContext, phase: PhaseId): string =>
	isOpenOrder(c, phase) ? 'The supervisor has ordered it.' : 'A supervisor then decides.';
