import { expect, test } from 'vitest';
import { eventSchema } from '../../src/lib/core/process/events';
import { errorsAt, fieldErrors } from '../../src/lib/core/bench/field-errors';
import { SPANISH } from '../../src/lib/core/language/es/spanish';
import { ENGLISH } from '../../src/lib/core/language/words';
import { eventFromForm, filledRows, isEventType } from '../../src/lib/core/bench/form-event';

function form(fields: Record<string, string>): FormData {
	const data = new FormData();
	for (const [name, value] of Object.entries(fields)) data.append(name, value);
	return data;
}

const posted = (event: Record<string, unknown>) =>
	eventSchema.safeParse({ ...event, at: '2026-03-02T14:00:00Z', by: 'mara' });

test('weights and lots are read into records by part', () => {
	const event = eventFromForm(
		'cup.weighed',
		form({ 'massesG.B': '200.4', 'massesG.A': ' 160 ', 'lots.A': 'L1', 'lots.B': 'L2' })
	);
	expect(event).toEqual({
		type: 'cup.weighed',
		massesG: { B: 200.4, A: 160 },
		lots: { A: 'L1', B: 'L2' }
	});
	expect(posted(event).success).toBe(true);
});

test('rows are read in order, empty ones left out', () => {
	const event = eventFromForm(
		'thickness.measured',
		form({
			'points[10].place': 'rim',
			'points[10].thicknessMm': '4',
			'points[0].place': 'north wall',
			'points[0].thicknessMm': '5.2',
			'points[1].place': '',
			'points[1].thicknessMm': ''
		})
	);
	expect(event.points).toEqual([
		{ place: 'north wall', thicknessMm: 5.2 },
		{ place: 'rim', thicknessMm: 4 }
	]);
});

test('what is optional and left empty is not there; a box left open is false', () => {
	expect(
		eventFromForm('room.read', form({ temperatureC: '22', humidityPct: '45', surfaceC: '' }))
	).toEqual({ type: 'room.read', temperatureC: 22, humidityPct: 45, extractionOn: false });
});

test('a choice between true and false is read as such', () => {
	const event = eventFromForm('frame.refitted', form({ tight: 'false' }));
	expect(event).toEqual({ type: 'frame.refitted', tight: false });
});

test.each(['', 'abc', '1e3', '12,5', 'NaN', 'Infinity', '0x10'])(
	'"%s" is no number, and the error names its field',
	(temperatureC) => {
		const event = eventFromForm('room.read', form({ temperatureC, humidityPct: '45' }));
		expect(posted(event).success).toBe(false);
		const errors = fieldErrors(event, [
			{
				name: 'temperatureC',
				label: 'Room',
				kind: 'number',
				unit: 'C',
				min: -10,
				max: 50,
				required: true
			}
		]);
		expect(errors).toEqual({
			temperatureC: '“Room”: type a number from −10 to 50 °C, such as 20.'
		});
	}
);

test('each tick left open is named, so that no two errors of a form read the same', () => {
	const errors = fieldErrors({ type: 'brief.finished' }, [
		{ name: 'sdsRead', label: 'I have read the SDS', kind: 'confirm', required: true },
		{ name: 'ppeOut', label: 'PPE is out, and fits', kind: 'confirm', required: true }
	]);
	expect(errors.sdsRead).toContain('“I have read the SDS”');
	expect(errors.ppeOut).toContain('“PPE is out, and fits”');
	expect(errors.sdsRead).not.toBe(errors.ppeOut);
});

test('a form cannot say who or when, nor name an act that does not exist', () => {
	const event = eventFromForm('wax.applied', form({ by: 'somebody', at: '2020-01-01T00:00:00Z' }));
	expect(event).toEqual({ type: 'wax.applied' });
	expect(isEventType('wax.applied')).toBe(true);
	expect(isEventType('__proto__')).toBe(false);
	expect(isEventType('wax.removed')).toBe(false);
});

test('rows keep their places: empty ones, and dimensions that were not measured, count as not there', () => {
	const points = form({
		'points[0].place': '',
		'points[0].thicknessMm': '',
		'points[2].place': 'North wall',
		'points[2].thicknessMm': '4.8'
	});
	expect(filledRows(points, 'points')).toEqual([2]);
	const dimensions = form({
		'dimensions[0].name': 'Overall length',
		'dimensions[0].plannedMm': '300',
		'dimensions[0].measuredMm': '',
		'dimensions[1].name': 'Overall width',
		'dimensions[1].plannedMm': '200',
		'dimensions[1].measuredMm': '200.5'
	});
	expect(filledRows(dimensions, 'dimensions')).toEqual([1]);
	expect(eventFromForm('mold.inspected', dimensions).dimensions).toEqual([
		{ name: 'Overall width', plannedMm: 200, measuredMm: 200.5 }
	]);
});

test('places that were ticked are read into a record, and none is no entry', () => {
	const event = eventFromForm('mold.inspected', form({ 'lookedAt.1': 'true', 'lookedAt.3': 'on' }));
	expect(event.lookedAt).toEqual({ 1: true, 3: true });
	expect(eventFromForm('mold.inspected', form({}))).not.toHaveProperty('lookedAt');
});

test('what the act has no field for is said in the reader’s language too, at its place', () => {
	const words = { ...ENGLISH, errors: SPANISH.errors };
	const photos = fieldErrors({ type: 'wax.applied', photos: ['no hash'] }, [], 'SI', words);
	expect(photos).toEqual({ photos: expect.stringContaining('Las fotos no se aceptaron') });
	const field = {
		name: 'points',
		label: 'Lecturas',
		kind: 'points' as const,
		min: 0,
		max: 100,
		unit: 'mm',
		required: true
	};
	const paths = [['points', 1, 'place'], ['sentAt']];
	expect(errorsAt(paths, [field], 'SI', words)).toEqual({
		'points[1].place': 'Diga dónde, por ejemplo «pared norte».',
		sentAt: expect.stringContaining('no se aceptó como se envió')
	});
});
