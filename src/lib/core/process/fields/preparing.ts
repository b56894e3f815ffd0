import { confirm, note, number, type FieldMakers } from './field';

/** From the briefing to the frame. */
export const PREPARING: FieldMakers = {
	'room.read': (c, { fields: { room } }) => [
		number('temperatureC', room.temperature, 'C', -10, 50),
		number('humidityPct', room.humidity, '%', 1, 100),
		c.phase === 'frame'
			? number('surfaceC', room.surfaceNow, 'C', -10, 60)
			: number('surfaceC', room.surface, 'C', -10, 60, false),
		{ ...confirm('extractionOn', room.extraction), required: false }
	],
	'brief.finished': (_c, { fields: { brief } }) => [
		confirm('sdsRead', brief.sdsRead),
		confirm('ppeOut', brief.ppeOut),
		confirm('spillKitKnown', brief.spillKitKnown),
		confirm('trainingInDate', brief.trainingInDate)
	],
	'sealer.dried': (_c, { fields }) => [confirm('dry', fields.sealerDry)],
	'pattern.prepared': (c, w) => {
		const { pattern } = w.fields;
		const isDense = c.plan.inputs.pattern.porosity === 'dense';
		return [
			confirm('dry', pattern.dry),
			confirm('sound', pattern.sound),
			confirm('sealedOrDense', isDense ? pattern.dense : pattern.sealed),
			confirm('inhibitorsConsidered', pattern.inhibitors),
			confirm('fixedToBoard', pattern.fixed),
			confirm('footGapsFilled', pattern.foot),
			note(w)
		];
	},
	'film.dried': (_c, { fields }) => [confirm('unbroken', fields.filmUnbroken)],
	'frame.fitted': (c, { fields: { frame, planned } }) => [
		{
			...number('gapMm', frame.gap, 'mm', 0, 500),
			hint: planned(`${Math.round(c.plan.frame.gapMm)} mm`)
		},
		confirm('screwedFromBelow', frame.below),
		confirm('cornersTight', frame.corners),
		...(c.plan.release.needed ? [confirm('insideReleased', frame.released)] : [])
	]
};
