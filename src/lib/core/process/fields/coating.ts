import type { Words } from '../../language/words';
import { batchAtWork, isOpenOrder, type ProcessContext } from '../context';
import { LAID_FRACTION } from '../rules/laid';
import { layersPlanned } from '../layers';
import type { ActField } from '../step';
import { choice, confirm, longText, number, text, type FieldMakers } from './field';

function isShort(c: ProcessContext): boolean {
	return c.laidG < LAID_FRACTION * (batchAtWork(c)?.massG ?? 0);
}

function layerFields(c: ProcessContext, { fields }: Words): ActField[] {
	const planned = layersPlanned(c);
	if (planned === 0) return [];
	return [
		{
			...number('layersLaid', fields.coat.layers, '', 0, 99),
			hint: fields.planned(String(planned))
		}
	];
}

/** Coats and rounds, their tests and the gauge. */
export const COATING: FieldMakers = {
	'coat.finished': (c, w) => [
		...layerFields(c, w),
		longText('shortReason', w.fields.coat.short, isShort(c))
	],
	'tack.tested': (_c, { fields: { coat } }) => [
		choice('result', coat.fingertip, [
			['wet', coat.wet],
			['almost tack-free', coat.tackFree],
			['hard', coat.hard]
		]),
		text('place', coat.where, false)
	],
	'surface.abraded': (c, { fields: { coat } }) => [
		text('grit', coat.grit, true, coat.gritHint),
		confirm('wiped', coat.wiped),
		confirm('dried', coat.dried),
		isOpenOrder(c, c.phase)
			? { ...longText('reason', coat.whyAbraded, true), preset: c.sentBack?.reason ?? '' }
			: longText('reason', coat.whyMissed, true)
	],
	'thickness.measured': (_c, { fields: { coat } }) => [
		{
			name: 'points',
			label: coat.points,
			kind: 'points',
			unit: 'mm',
			min: 0,
			max: 100,
			required: true,
			hint: coat.pointsHint
		}
	],
	'coat.added': (_c, { fields }) => [longText('reason', fields.coat.whyAnother, true)]
};
