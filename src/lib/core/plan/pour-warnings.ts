import { displayQuantity } from '../quantity/display';
import type { Unit } from '../quantity/unit';
import { typicalHeatJPerG } from './curing-material';
import type { PourBatches } from './pour-batches';
import type { PourPace } from './pour-pace';
import { warn, type Draft } from './trace';

/** Turns of mixing and pouring after which a pour that sets is refused; choice of the plan. */
const MOST_TURNS = 8;
const WAYS =
	'Choose a slower casting material, cool the room, add people, or pour in layers if its data sheet allows it.';

/** Says of a casting that cures and whose sheet gives no pot life that nobody can know how much to mix. */
export function warnOfNoPotLife(draft: Draft): void {
	const { casting } = draft.inputs.materials;
	if (typicalHeatJPerG(casting.family, false) === undefined) return;
	const text = `The data sheet of ${casting.name} gives no pot life: nobody can say how much of it is mixed and poured in time, or how hot it gets. Ask the maker before the first pour.`;
	warn(draft, 'warn', 'pour-time', 'pour', text);
}

/** Says that a pour cannot be mixed at all before it turns. */
export function warnOfNoBatch(draft: Draft, pace: PourPace): void {
	const { casting } = draft.inputs.materials;
	const { say } = inUnits(draft);
	const text = `${casting.name} works for ${say(pace.workS(1), 's')} at this temperature, and mixing takes ${say(pace.mixS, 's')}: none of it can be poured in time. ${WAYS}`;
	warn(draft, 'refuse', 'pour-time', 'pour', text);
}

/** Says what a pour of several batches asks for; refused when it would set long before the last is in. */
export function warnOfBatches(
	draft: Draft,
	pace: PourPace,
	batches: PourBatches,
	totalG: number
): void {
	const { people, materials } = draft.inputs;
	const { name } = materials.casting;
	const { count, massG, mixS = 0, workingS = Number.POSITIVE_INFINITY, spanS } = batches;
	if (count === 1) return;
	const { say } = inUnits(draft);
	const total = say(totalG, 'g');
	const potS = mixS + workingS;
	const turns = Math.ceil(count / people);
	const asPlanned = `${count} batches of ${say(massG, 'g')}, ${
		turns === 1
			? `each ${pace.isMelted ? 'carried' : 'mixed'} and poured by a person of its own at the same time`
			: 'each poured into the last while that is liquid'
	}`;
	if (!pace.isLimitedByTime) {
		const text = `${total} of ${name} is more than one person lifts and pours: ${asPlanned}.`;
		warn(
			draft,
			spanS > potS ? 'warn' : 'note',
			'pour-batches',
			'pour',
			`${text}${seam(spanS > potS)}`
		);
		return;
	}
	const cannot = `${total} of ${name} cannot be mixed and poured by one person within ${say(potS, 's')}, its pot life in such a batch`;
	if (turns > MOST_TURNS) {
		const text = `${cannot}; it would take ${count} batches, and set long before the last is in. ${WAYS}`;
		warn(draft, 'refuse', 'pour-time', 'pour', text);
		return;
	}
	warn(
		draft,
		'warn',
		'pour-time',
		'pour',
		`${cannot}. Planned: ${asPlanned}.${seam(spanS > potS)} ${WAYS}`
	);
}

const seam = (isTorn: boolean): string =>
	isTorn ? ' The first turns before the last is in: expect lines between them in the part.' : '';

function inUnits({ inputs }: Draft): { say: (value: number, unit: Unit) => string } {
	return { say: (value, unit) => displayQuantity(value, unit, inputs.shop.units) };
}
