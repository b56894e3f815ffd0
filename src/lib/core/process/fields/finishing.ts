import { placesToLookAt } from '../places-to-look-at';
import { choice, confirm, longText, note, number, text, type FieldMakers } from './field';

/** From opening to the handover. */
export const FINISHING: FieldMakers = {
	'mold.opened': () => [
		confirm('boardOff', 'Board is unscrewed and off'),
		confirm('wedgedEvenly', 'Frame was wedged up evenly, all round'),
		note
	],
	'mold.marked': () => [
		text('mark', 'The mark', true, 'for example an arrow and "N" on the north side'),
		confirm('sameSide', 'Same side marked on glove and on shell'),
		choice('partingLine', 'The parting line between glove and shell', [
			['uneven', 'Uneven: it keys the two by itself'],
			['plain', 'Plain: keys are drilled or added']
		]),
		text(
			'keys',
			'Plain line: which keys, and where',
			false,
			'for example two holes drilled through flange and shell, north and east'
		)
	],
	'glove.peeled': () => [
		choice('whole', 'The glove came off', [
			['true', 'Whole'],
			['false', 'Torn or marked']
		]),
		note
	],
	'glove.washed': () => [confirm('filmGone', 'All film is washed off, glove is dry')],
	'mold.inspected': (c) => [
		...placesToLookAt(c).map(({ key, text: where }) =>
			confirm(`lookedAt.${key}`, `Looked at: ${where}`)
		),
		number('voids', 'Voids', '', 0, 1000),
		number('bubbles', 'Bubbles', '', 0, 1000),
		number('tears', 'Tears', '', 0, 1000),
		number('thinSpots', 'Thin spots', '', 0, 1000),
		number('shoreA', 'Shore A, if you have a gauge', 'Shore A', 0, 100, false),
		{
			name: 'dimensions',
			label: 'Key dimensions, as measured',
			kind: 'dimensions',
			unit: 'mm',
			required: false
		},
		choice('verdict', 'Your verdict', [
			['sound', 'Sound'],
			['needs repair', 'Needs repair'],
			['reject', 'Not usable']
		]),
		note
	],
	'mold.repaired': () => [longText('done', 'What was mended, where, and how', true)],
	'part.poured': (c) => [
		{
			...number('massG', `${c.plan.pour.materialName} poured`, 'g', 1, 100_000),
			hint: `planned ${Math.round(c.plan.pour.massG)} g`
		},
		{
			...number('headMm', 'Head of liquid above the deepest point', 'mm', 1, 10_000),
			hint: `planned ${Math.round(c.plan.pour.headMm)} mm`
		},
		text('lot', 'Lot number', true)
	],
	'part.released': () => [
		choice('result', 'The first part is', [
			['good', 'Good'],
			['faulty', 'Faulty: pour again']
		]),
		note
	],
	'mold.handedOver': () => [
		text('to', 'Handed over to', true),
		longText(
			'storage',
			'How it is stored',
			true,
			'The glove rests in its shell, level, out of sun and heat.'
		),
		longText('repair', 'How it is repaired', true),
		longText('wornOutWhen', 'When it is worn out', true)
	]
};
