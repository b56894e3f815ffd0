import { ENGLISH, type Words } from '../language/words';
import { takenHazards } from '../materials/usual-hazards';
import type { Plan } from '../plan/plan';
import { batchAtWork, isLaying, type ProcessContext } from '../process/context';
import type { EventType } from '../process/events';
import { isInDate } from './training';

/** Until when each person's training on isocyanates holds, by person; whoever never passed is not in it. */
export type Expiries = Readonly<Record<string, string>>;

type Materials = Plan['inputs']['materials'];

const hasIsocyanate = (sheet: Materials[keyof Materials] | undefined): boolean =>
	sheet !== undefined && takenHazards(sheet).includes('isocyanate');

/**
 * Whether an act of this type begins work with diisocyanates, as things stand. What is weighed is mixed and laid
 * by whoever has it in hand, so the one who takes it over is asked too; later it would set, and no record hold it.
 * Mixing beside who lays is asked about, never refused: `mixesBeside`.
 */
export function handlesIsocyanate(type: EventType, c: ProcessContext): boolean {
	const { materials } = c.plan.inputs;
	const isInBatch = () => isOfIsocyanate(c);
	switch (type) {
		case 'brief.finished':
			return Object.values(materials).some(hasIsocyanate);
		case 'cup.weighed':
			return isInBatch();
		case 'job.takenOver':
			return (c.cup !== null || c.cupAhead !== null) && isInBatch();
		case 'part.poured':
			return hasIsocyanate(materials.casting);
		default:
			return false;
	}
}

/**
 * Whether a cup that is mixed now is one of diisocyanates, mixed by another than who lays. What is mixed is mixed: refused,
 * the record would lose it, and a cup set aside is more vapor and heat than one laid. So it is taken, and noted.
 */
export function mixesBeside(type: EventType, c: ProcessContext): boolean {
	return type === 'cup.mixed' && isLaying(c) && isOfIsocyanate(c);
}

function isOfIsocyanate(c: ProcessContext): boolean {
	const id = batchAtWork(c)?.materialId;
	return hasIsocyanate(Object.values(c.plan.inputs.materials).find((sheet) => sheet?.id === id));
}

/** Until when a person's training holds; an id is what somebody sent, so only own keys count. */
export function expiryIn(expiries: Expiries, personId: string): string | undefined {
	return Object.hasOwn(expiries, personId) ? expiries[personId] : undefined;
}

/** Why a person whose training is not in date does not handle diisocyanates, and what to do; null when it is. */
export function outOfDateWords(
	expiresAt: string | undefined,
	at: string,
	{ rules: said }: Pick<Words, 'rules'> = ENGLISH
): string | null {
	const state = outOfDateState(expiresAt, at, { rules: said });
	return state && said.trainingDo(state);
}

/** What is wrong with a training that is not in date: run out when, or none on record; null when it is in date. */
export function outOfDateState(
	expiresAt: string | undefined,
	at: string,
	{ rules: said }: Pick<Words, 'rules'> = ENGLISH
): string | null {
	if (isInDate(expiresAt, at)) return null;
	return expiresAt ? said.trainingOver(expiresAt.slice(0, 10)) : said.trainingNone;
}
