import { ENGLISH } from '../language/words';
import { takenHazards } from '../materials/usual-hazards';
import type { Plan } from '../plan/plan';
import { batchAtWork, isLaying, type ProcessContext } from '../process/context';
import type { EventType, ProcessEvent } from '../process/events';
import { isInDate } from './training';

/** Until when each person's training on isocyanates holds, by person; whoever never passed is not in it. */
export type Expiries = Readonly<Record<string, string>>;

type Materials = Plan['inputs']['materials'];

const hasIsocyanate = (sheet: Materials[keyof Materials] | undefined): boolean =>
	sheet !== undefined && takenHazards(sheet).includes('isocyanate');

/**
 * Whether an act of this type begins work with diisocyanates, as things stand. What is weighed is mixed and laid
 * by whoever has it in hand, so the one who takes it over is asked too; later it would set, and no record hold it.
 */
export function handlesIsocyanate(type: EventType, c: ProcessContext): boolean {
	const { materials } = c.plan.inputs;
	const isInBatch = () => {
		const id = batchAtWork(c)?.materialId;
		return hasIsocyanate(Object.values(materials).find((sheet) => sheet?.id === id));
	};
	switch (type) {
		case 'brief.finished':
			return Object.values(materials).some(hasIsocyanate);
		case 'cup.weighed':
			return isInBatch();
		case 'cup.mixed':
			return isLaying(c) && isInBatch();
		case 'job.takenOver':
			return (c.cup !== null || c.cupAhead !== null) && isInBatch();
		case 'part.poured':
			return hasIsocyanate(materials.casting);
		default:
			return false;
	}
}

/** Who handles the material in this act: whoever mixes while another lays, or else the doer. */
export function handlerOf(event: Pick<ProcessEvent, 'type' | 'by'> & { mixedBy?: string }): string {
	return event.type === 'cup.mixed' ? (event.mixedBy ?? event.by) : event.by;
}

/** Until when a person's training holds; an id is what somebody sent, so only own keys count. */
export function expiryIn(expiries: Expiries, personId: string): string | undefined {
	return Object.hasOwn(expiries, personId) ? expiries[personId] : undefined;
}

/** Why a person whose training is not in date does not handle diisocyanates, and what to do; null when it is. */
export function outOfDateWords(
	expiresAt: string | undefined,
	at: string,
	{ rules: said } = ENGLISH
): string | null {
	if (isInDate(expiresAt, at)) return null;
	return said.trainingDo(expiresAt ? said.trainingOver(expiresAt.slice(0, 10)) : said.trainingNone);
}
