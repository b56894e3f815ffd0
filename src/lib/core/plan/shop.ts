import { z } from 'zod';
import { remembered } from './remembered';
import { LIMIT_SETS } from '../laws/exposure-limits';

/** Attended time of a way to build a mold, and its working days with overnight cures. */
const benchTimeSchema = z.strictObject({
	fixedS: z.number().min(0).max(1e6),
	perM2S: z.number().min(0).max(1e6),
	daysCount: z.number().min(0).max(365)
});

/** What a shop may say of its air; each has a stated default (see `defaults.ts`). */
const airFields = {
	roomVolumeM3: z.number().min(1).max(1e5).optional(),
	/** Outdoor air as measured, of all running fans together. */
	measuredFanM3PerH: z.number().min(0.01).max(1e6).optional(),
	/** Mean air speed at the fan's grille, from which its flow follows when none was measured. */
	fanGrille: z
		.strictObject({
			meanMPerS: z.number().positive().max(60),
			areaCm2: z.number().min(1).max(1e6),
			freeFraction: z.number().min(0.1).max(1)
		})
		.optional(),
	/** 1 where air sweeps past evenly, up to 10 in dead corners. */
	mixingFactor: z.number().min(1).max(10).optional(),
	/** Lists of limits that count here; the strictest of them is shown. */
	limitSets: z.array(z.enum(LIMIT_SETS)).min(1).max(4).optional(),
	/** Air speed over drying film. */
	airSpeedMPerS: z.number().min(0).max(3).optional(),
	ventilationNote: z.string().trim().max(500).optional()
};

const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time of day such as 07:30');

/** Working hours of one weekday, ISO numbering: 1 is Monday, 7 is Sunday. */
const shiftSchema = z
	.strictObject({ weekday: z.number().int().min(1).max(7), from: clock, to: clock })
	.refine((s) => s.from < s.to, { error: 'a shift ends after it begins, on the same day' });

const currencySchema = z.string().regex(/^[A-Z]{3}$/, 'an ISO 4217 code such as USD');

const isZone = remembered((zone: string): boolean => {
	try {
		new Intl.DateTimeFormat('en', { timeZone: zone });
		return true;
	} catch {
		return false;
	}
});

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
	cupVolumesMl: z.array(z.number().min(5).max(50_000)).min(1).max(20),
	/** Outside the shifts; cures are then counted through the night, hour by hour. */
	nightTemperatureC: z.number().min(-10).max(45).optional(),
	/** How far a place in the room may differ from its temperature; waits and windows keep to the safe side. */
	roomSpreadK: z.number().min(0).max(10).optional(),
	/** Thickness of the boards that frames and mold boards are built of. */
	boardMm: z.number().min(6).max(60).optional(),
	/** Pours before a glove is worn out. */
	moldLifePours: z.number().int().min(1).max(100_000).optional(),
	/** The shop's own times for the two other ways to build. */
	benchTimes: z
		.strictObject({
			'solid block': benchTimeSchema.optional(),
			'poured layer': benchTimeSchema.optional()
		})
		.optional(),
	/** Diisocyanates are mixed only by people whose training on them is in date; not asked when left out. */
	asksTraining: z.boolean().optional(),
	...airFields
});
export type Shop = z.infer<typeof shopSchema>;
export type Shift = z.infer<typeof shiftSchema>;
