import { confirm, note, number, type FieldMakers } from './field';

/** From the briefing to the frame. */
export const PREPARING: FieldMakers = {
	'room.read': () => [
		number('temperatureC', 'Room temperature', 'C', -10, 50),
		number('humidityPct', 'Relative humidity', '%', 1, 100),
		number('surfaceC', 'Pattern surface, if you measured it', 'C', -10, 60, false),
		{ ...confirm('extractionOn', 'Extraction is running'), required: false }
	],
	'brief.finished': () => [
		confirm('sdsRead', 'I have read the SDS of every material'),
		confirm('ppeOut', 'PPE is out, and fits'),
		confirm('spillKitKnown', 'I know where spill kit, eyewash and first aid are'),
		confirm('trainingInDate', 'My training for these materials is in date')
	],
	'sealer.dried': () => [confirm('dry', 'Dry through: a knuckle feels dry, not cool')],
	'pattern.prepared': (c) => [
		confirm('dry', 'Dry through'),
		confirm('sound', 'Sound: no loose or soft places'),
		confirm(
			'sealedOrDense',
			c.plan.inputs.pattern.porosity === 'dense'
				? 'Dense by nature: a drop of water stands on it'
				: 'Sealed all over: a drop of water stands on it'
		),
		confirm('inhibitorsConsidered', 'Nothing on it stops the cure'),
		confirm('fixedToBoard', 'Fixed to the board: it cannot lift or float'),
		confirm('footGapsFilled', 'Gaps at the foot are filled'),
		note
	],
	'film.dried': () => [confirm('unbroken', 'Dry to the touch, unbroken, no beads')],
	'frame.fitted': (c) => [
		{
			...number('gapMm', 'Clear gap between pattern and frame', 'mm', 0, 500),
			hint: `planned ${Math.round(c.plan.frame.gapMm)} mm`
		},
		confirm('screwedFromBelow', 'Screwed down from below'),
		confirm('cornersTight', 'Corners and foot are tight'),
		confirm('insideReleased', 'Inside of the frame is released')
	]
};
