import { placesToLookAt } from '../places-to-look-at';
import { choice, confirm, longText, note, number, text, type FieldMakers } from './field';

/** From opening to the handover. */
export const FINISHING: FieldMakers = {
	'mold.opened': (_c, w) => [
		confirm('boardOff', w.fields.open.boardOff),
		confirm('wedgedEvenly', w.fields.open.wedged),
		note(w)
	],
	'mold.marked': (_c, { fields: { mark } }) => [
		text('mark', mark.mark, true, mark.markHint),
		confirm('sameSide', mark.sameSide),
		choice('partingLine', mark.line, [
			['uneven', mark.uneven],
			['plain', mark.plain]
		]),
		text('keys', mark.keys, false, mark.keysHint)
	],
	'glove.peeled': (_c, w) => [
		choice('whole', w.fields.peel.off, [
			['true', w.fields.peel.whole],
			['false', w.fields.peel.torn]
		]),
		note(w)
	],
	'glove.washed': (_c, { fields }) => [confirm('filmGone', fields.filmGone)],
	'mold.inspected': (c, w) => {
		const { inspect, glove } = w.fields;
		return [
			...placesToLookAt(c, w).map(({ key, text: where }) =>
				confirm(`lookedAt.${key}`, inspect.lookedAt(where))
			),
			number('voids', inspect.voids, '', 0, 1000),
			number('bubbles', inspect.bubbles, '', 0, 1000),
			number('tears', inspect.tears, '', 0, 1000),
			number('thinSpots', inspect.thinSpots, '', 0, 1000),
			number('shoreA', glove.shoreA, 'Shore A', 0, 100, false),
			{
				name: 'dimensions',
				label: inspect.dimensions,
				kind: 'dimensions',
				unit: 'mm',
				required: false
			},
			choice('verdict', inspect.verdict, [
				['sound', inspect.sound],
				['needs repair', inspect.needsRepair],
				['reject', inspect.reject]
			]),
			note(w)
		];
	},
	'mold.repaired': (_c, { fields }) => [longText('done', fields.repaired, true)],
	'part.poured': ({ plan: { pour } }, { fields }) => [
		{
			...number('massG', fields.pour.poured(pour.materialName), 'g', 1, 100_000),
			hint: fields.planned(`${Math.round(pour.massG)} g`)
		},
		{
			...number('headMm', fields.pour.head, 'mm', 1, 10_000),
			hint: fields.planned(`${Math.round(pour.headMm)} mm`)
		},
		text('lot', fields.lot, true)
	],
	'part.released': (_c, w) => [
		choice('result', w.fields.pour.partIs, [
			['good', w.fields.pour.good],
			['faulty', w.fields.pour.faulty]
		]),
		note(w)
	],
	'mold.handedOver': (_c, { fields: { handover } }) => [
		text('to', handover.to, true),
		longText('storage', handover.storage, true, handover.storageHint),
		longText('repair', handover.repair, true),
		longText('wornOutWhen', handover.wornOut, true)
	]
};
