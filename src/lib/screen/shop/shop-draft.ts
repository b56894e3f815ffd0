import { z } from 'zod';
import type { Shop } from '$lib/core/plan/shop';
import { fieldText, measureOf } from '../form/measure';

const text = z.string().default('');

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
	cupVolumesMl: z.array(text).max(30).default([])
});
export type ShopDraft = z.infer<typeof shopDraftSchema>;

export const MOST_CUPS = 20;

/** A shop's settings as they stand in the form, in its own units. */
export function draftOfShop(shop: Shop): ShopDraft {
	const inUnits = (value: number, id: Parameters<typeof measureOf>[0]) =>
		fieldText(value, measureOf(id, shop.units));
	return {
		name: shop.name,
		zone: shop.zone,
		units: shop.units,
		shownUnits: shop.units,
		currency: shop.currency,
		days: Array.from({ length: 7 }, (_, i) =>
			shop.shifts
				.filter(({ weekday }) => weekday === i + 1)
				.sort((a, b) => a.from.localeCompare(b.from))
				.map(({ from, to }) => ({ from, to }))
		),
		scaleReadabilityG: inUnits(shop.scaleReadabilityG, 'grams'),
		roomTemperatureC: inUnits(shop.roomTemperatureC, 'temperature'),
		roomHumidityPct: inUnits(shop.roomHumidityPct, 'percent'),
		laborPerHour: inUnits(shop.laborPerHour, 'plain'),
		brushingGPerMin: inUnits(shop.brushingGPerMin, 'rate'),
		pastingGPerMin: inUnits(shop.pastingGPerMin, 'rate'),
		cupVolumesMl: shop.cupVolumesMl.map((ml) => inUnits(ml, 'volume'))
	};
}
