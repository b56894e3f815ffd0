import { z } from 'zod';

const text = z.string().default('');

/** The form in which a shop is set up, as typed. */
export const setupDraftSchema = z.object({
	name: text,
	zone: text,
	units: text,
	currency: text,
	/** Monday first; both blank on a day off. */
	shifts: z
		.array(z.object({ from: text, to: text }))
		.max(7)
		.default([]),
	scaleReadabilityG: text,
	roomTemperatureC: text,
	laborPerHour: text,
	owner: text
});
export type SetupDraft = z.infer<typeof setupDraftSchema>;

export const WEEKDAYS = [
	'Monday',
	'Tuesday',
	'Wednesday',
	'Thursday',
	'Friday',
	'Saturday',
	'Sunday'
] as const;

/** What the form proposes before anything is typed. */
export const EMPTY_SETUP: SetupDraft = {
	name: '',
	zone: 'America/Chicago',
	units: 'US',
	currency: 'USD',
	shifts: WEEKDAYS.map((_, i) => (i < 5 ? { from: '07:30', to: '16:00' } : { from: '', to: '' })),
	scaleReadabilityG: '0.1',
	roomTemperatureC: '',
	laborPerHour: '',
	owner: ''
};
