import { z } from 'zod';
import type { Shop } from '$lib/core/plan/shop';
import { fieldTexts } from '../form/field-texts';
import { BENCH_NUMBERS, SHOP_NUMBERS } from './shop-numbers';

const text = z.string().default('');

const benchTimeDraft = z.object({ fixedS: text, perM2S: text, daysCount: text }).prefault({});

/** A shop's settings as typed. */
export const shopDraftSchema = z.object({
	name: text,
	zone: text,
	units: text,
	/** Units the page was shown in: what was typed is read in these, also when the choice is changed. */
	shownUnits: text,
	currency: text,
	/** Monday first; each day a few spans, blank where none. */
	days: z
		.array(z.array(z.object({ from: text, to: text })).max(3))
		.max(7)
		.default([]),
	scaleReadabilityG: text,
	roomTemperatureC: text,
	roomHumidityPct: text,
	laborPerHour: text,
	brushingGPerMin: text,
	pastingGPerMin: text,
	cupVolumesMl: z.array(text).max(30).default([]),
	nightTemperatureC: text,
	roomSpreadK: text,
	roomVolumeM3: text,
	measuredFanM3PerH: text,
	fanGrille: z.object({ meanMPerS: text, areaCm2: text, freeFraction: text }).prefault({}),
	mixingFactor: text,
	/** None ticked is all of them, as where the shop says nothing. */
	limitSets: z.array(z.string()).max(10).default([]),
	airSpeedMPerS: text,
	ventilationNote: text,
	boardMm: text,
	moldLifePours: text,
	/** 'yes' when it is asked for in date. */
	asksTraining: text,
	/** Names of fields hold no blanks, those of the ways to build do. */
	benchTimes: z.object({ solidBlock: benchTimeDraft, pouredLayer: benchTimeDraft }).prefault({})
});
export type ShopDraft = z.infer<typeof shopDraftSchema>;

export const MOST_CUPS = 20;

/** A shop's settings as they stand in the form, in its own units. */
export function draftOfShop(shop: Shop): ShopDraft {
	const { shifts, benchTimes } = shop;
	return shopDraftSchema.parse({
		...Object(fieldTexts(shop, SHOP_NUMBERS, shop.units)),
		shownUnits: shop.units,
		asksTraining: shop.asksTraining ? 'yes' : '',
		days: Array.from({ length: 7 }, (_, i) =>
			shifts
				.filter(({ weekday }) => weekday === i + 1)
				.sort((a, b) => a.from.localeCompare(b.from))
				.map(({ from, to }) => ({ from, to }))
		),
		benchTimes: fieldTexts(
			{
				solidBlock: benchTimes?.['solid block'],
				pouredLayer: benchTimes?.['poured layer']
			},
			BENCH_NUMBERS,
			shop.units
		)
	});
}
