import { shopSchema, type Shift, type Shop } from '$lib/core/plan/shop';
import { ML_PER_US_FL_OZ, MM_PER_IN } from '$lib/core/quantity/customary';
import { readSpan } from './read-clock';
import { issueErrors } from './issue-errors';
import { readEntries, type FieldErrors, type NumberFields } from './read-entries';
import { WEEKDAYS, type SetupDraft } from './setup-draft';

const NUMBERS: NumberFields = {
	scaleReadabilityG: 'grams',
	roomTemperatureC: 'temperature',
	laborPerHour: 'plain'
};

/** Until the shop sets its own; each is shown and can be changed in the shop's settings. */
const ASSUMED = {
	scaleReadabilityG: 0.1,
	roomTemperatureC: 21,
	roomHumidityPct: 50,
	laborPerHour: 0,
	brushingGPerMin: 60,
	pastingGPerMin: 90,
	cupVolumesMl: [100, 250, 500, 1000, 2500, 5000]
};
/** Sizes as a shop's cups and pails are sold there: 4 fl oz to a gallon. */
const US_CUPS_ML = [4, 8, 16, 32, 64, 128].map((ounces) => ounces * ML_PER_US_FL_OZ);
/** Three quarters of an inch, a common board there; common practice, no source. */
const US_BOARD_MM = 0.75 * MM_PER_IN;

/** The shop a setup form describes, or what is wrong with it. */
export function readSetup(draft: SetupDraft): { shop: Shop | null; errors: FieldErrors } {
	const system = draft.units === 'US' ? 'US' : 'SI';
	const { shifts, errors: shiftErrors } = readShifts(draft.shifts);
	const { name, zone, units, currency, scaleReadabilityG, roomTemperatureC, laborPerHour } = draft;
	const plain = {
		name,
		zone,
		units,
		currency: currency.trim().toUpperCase(),
		scaleReadabilityG,
		roomTemperatureC,
		laborPerHour
	};
	const { value, errors } = readEntries(plain, NUMBERS, system);
	const candidate = {
		...ASSUMED,
		...(system === 'US' && { cupVolumesMl: US_CUPS_ML, boardMm: US_BOARD_MM }),
		isDemo: false,
		...Object(value),
		shifts
	};
	const parsed = shopSchema.safeParse(candidate);
	const schemaErrors = parsed.success
		? {}
		: issueErrors(parsed.error, { fields: NUMBERS, system, draft });
	// Hours are judged day by day, where the schema knows only a list of shifts.
	const ownErrors = Object.entries(schemaErrors).filter(([path]) => !path.startsWith('shifts'));
	const all: FieldErrors = { ...Object.fromEntries(ownErrors), ...errors, ...shiftErrors };
	if (shifts.length === 0 && Object.keys(shiftErrors).length === 0) {
		all.shifts = 'No working hours are entered; accepted: one day at least.';
	}
	return parsed.success && Object.keys(all).length === 0
		? { shop: parsed.data, errors: {} }
		: { shop: null, errors: all };
}

function readShifts(rows: SetupDraft['shifts']): { shifts: Shift[]; errors: FieldErrors } {
	const errors: FieldErrors = {};
	const shifts = rows.flatMap(({ from, to }, i): Shift[] => {
		if (from.trim() === '' && to.trim() === '') return [];
		const span = readSpan({ from, to }, WEEKDAYS[i] ?? 'This day');
		if ('error' in span) {
			errors[`shifts.${i}.${span.at}`] = span.error;
			return [];
		}
		return [{ weekday: i + 1, ...span }];
	});
	return { shifts, errors };
}
