import type { PhaseId } from '../../content/vocabulary';
import { batchAtWork, isOpenOrder, type ProcessContext } from '../context';

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

/** Who decides on abrading. */
export const whoDecides = (c: ProcessContext, phase: PhaseId): string =>
	isOpenOrder(c, phase) ? 'The supervisor has ordered it.' : 'A supervisor then decides.';
