import type { Words } from '../../language/words';
import { isLaying, isSince, mixersBeside, type ProcessContext } from '../context';
import { cupToWeigh } from '../next-cup';
import type { ActField } from '../step';
import { choice, longText, type FieldMakers } from './field';

function weightFields(c: ProcessContext, { fields: { cup } }: Words): ActField[] {
	const next = cupToWeigh(c);
	if (!next) return [];
	return [
		{
			name: 'massesG',
			label: cup.masses,
			kind: 'weights',
			unit: 'g',
			weights: next.cup.parts.map(({ part, massG }) => ({ part, targetG: massG })),
			required: true
		},
		{
			name: 'lots',
			label: cup.lots,
			kind: 'lots',
			weights: next.cup.parts.map(({ part, massG }) => ({ part, targetG: massG })),
			required: true
		}
	];
}

/** Weighing and setting aside a cup. */
export const CUPS: FieldMakers = {
	'cup.weighed': weightFields,
	'cup.mixed': (c, { fields: { cup } }) =>
		isLaying(c) && isSince(c, 3)
			? [
					choice(
						'mixedBy',
						cup.mixedBy,
						mixersBeside(c, c.worker ?? '').map((person): [string, string] => [person, person]),
						cup.mixedByHint
					)
				]
			: [],
	'cup.discarded': (c, { fields: { cup } }) => [
		...(c.cupAhead === null
			? []
			: [
					choice('cup', cup.which, [
						['in hand', cup.inHand],
						['next', cup.next]
					])
				]),
		longText('reason', cup.whyAside, true, cup.asideHint)
	]
};
