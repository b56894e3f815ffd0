import { isLaying, isSince, mixersBeside, type ProcessContext } from '../context';
import { cupToWeigh } from '../next-cup';
import type { ActField } from '../step';
import { choice, longText, type FieldMakers } from './field';

function weightFields(c: ProcessContext): ActField[] {
	const next = cupToWeigh(c);
	if (!next) return [];
	return [
		{
			name: 'massesG',
			label: 'What the scale shows',
			kind: 'weights',
			unit: 'g',
			weights: next.cup.parts.map(({ part, massG }) => ({ part, targetG: massG })),
			required: true
		},
		{
			name: 'lots',
			label: 'Lot numbers, from the containers',
			kind: 'lots',
			weights: next.cup.parts.map(({ part, massG }) => ({ part, targetG: massG })),
			required: true
		}
	];
}

/** Weighing and setting aside a cup. */
export const CUPS: FieldMakers = {
	'cup.weighed': weightFields,
	'cup.mixed': (c) =>
		isLaying(c) && isSince(c, 3)
			? [
					choice(
						'mixedBy',
						'Who mixes it while you lay',
						mixersBeside(c, c.worker ?? '').map((person): [string, string] => [person, person]),
						'Whoever has read the briefings. They have then worked on this mold, and cannot sign it.'
					)
				]
			: [],
	'cup.discarded': (c) => [
		...(c.cupAhead === null
			? []
			: [
					choice('cup', 'Which cup', [
						['in hand', 'The one in hand: it is not laid any further'],
						['next', 'The next one, that was being prepared']
					])
				]),
		longText(
			'reason',
			'Why it is set aside',
			true,
			'Leave it in the extraction, on a surface that does not burn.'
		)
	]
};
