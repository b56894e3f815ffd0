import { batchAtWork, isOpenOrder, type ProcessContext } from '../context';
import { LAID_FRACTION } from '../rules/laid';
import { layersPlanned } from '../layers';
import type { ActField } from '../step';
import { choice, confirm, longText, number, text, type FieldMakers } from './field';

function isShort(c: ProcessContext): boolean {
	return c.laidG < LAID_FRACTION * (batchAtWork(c)?.massG ?? 0);
}

function layerFields(c: ProcessContext): ActField[] {
	const planned = layersPlanned(c);
	if (planned === 0) return [];
	return [
		{
			...number('layersLaid', 'Layers of reinforcement in this round, counted', '', 0, 99),
			hint: `planned ${planned}`
		}
	];
}

/** Coats and rounds, their tests and the gauge. */
export const COATING: FieldMakers = {
	'coat.finished': (c) => [
		...layerFields(c),
		longText('shortReason', 'If less went on than planned: why', isShort(c))
	],
	'tack.tested': () => [
		choice('result', 'What the gloved fingertip found', [
			['wet', 'Wet: it comes off on the glove'],
			['almost tack-free', 'Almost tack-free: sticky, takes nothing away, faint print'],
			['hard', 'Hard: no print, no stick']
		]),
		text('place', 'Where', false)
	],
	'surface.abraded': (c) => [
		text('grit', 'Abraded with', true, 'for example 120 grit'),
		confirm('wiped', 'Dust wiped off'),
		confirm('dried', 'Wiped surface is dry'),
		isOpenOrder(c, c.phase)
			? { ...longText('reason', 'Why it is abraded', true), preset: c.sentBack?.reason ?? '' }
			: longText('reason', 'Why the window was missed', true)
	],
	'thickness.measured': () => [
		{
			name: 'points',
			label: 'Pin gauge readings, three places or more',
			kind: 'points',
			unit: 'mm',
			min: 0,
			max: 100,
			required: true,
			hint: 'Take walls, corners and the thinnest-looking place.'
		}
	],
	'coat.added': () => [longText('reason', 'Why another one is needed', true)]
};
