import { z } from 'zod';

const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time of day such as 07:30');

/** Working hours of one weekday, ISO numbering: 1 is Monday, 7 is Sunday. */
export const shiftSchema = z
	.strictObject({ weekday: z.number().int().min(1).max(7), from: clock, to: clock })
	.refine((s) => s.from < s.to, { error: 'a shift ends after it begins, on the same day' });

export const currencySchema = z.string().regex(/^[A-Z]{3}$/, 'an ISO 4217 code such as USD');

function isZone(zone: string): boolean {
	try {
		new Intl.DateTimeFormat('en', { timeZone: zone });
		return true;
	} catch {
		return false;
	}
}

/** What a shop is and has. Every default a plan uses can be read and changed here. */
export const shopSchema = z.strictObject({
	name: z.string().trim().min(1).max(120),
	isDemo: z.boolean(),
	zone: z.string().max(60).refine(isZone, { error: 'an IANA zone such as America/Chicago' }),
	units: z.enum(['SI', 'US']),
	currency: currencySchema,
	shifts: z.array(shiftSchema).min(1).max(21),
	/** Smallest step of the scale used for weighing cups. */
	scaleReadabilityG: z.number().min(0.001).max(50),
	roomTemperatureC: z.number().min(0).max(45),
	roomHumidityPct: z.number().min(1).max(100),
	laborPerHour: z.number().min(0).max(10_000),
	/** Brushing rate of one person with a thixotropic coat, wet mass laid a minute. */
	brushingGPerMin: z.number().min(1).max(2000),
	/** Laying rate of one person with a backing paste. */
	pastingGPerMin: z.number().min(1).max(5000),
	/** Empty cups on the shelf, by brim volume. */
	cupVolumesMl: z.array(z.number().min(5).max(50_000)).min(1).max(20)
});
export type Shop = z.infer<typeof shopSchema>;
export type Shift = z.infer<typeof shiftSchema>;
