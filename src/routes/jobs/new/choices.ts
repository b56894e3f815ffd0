import { z } from 'zod';

/** Places that a material fills in a mold, the kind of sheet each takes, and whether it may stay empty. */
export const SLOTS = [
	{ slot: 'build', kind: 'glove', label: 'Glove, build coats', required: true },
	{ slot: 'detail', kind: 'glove', label: 'Glove, detail coats', required: false },
	{ slot: 'shell', kind: 'shell', label: 'Backup shell', required: true },
	{ slot: 'reinforcement', kind: 'reinforcement', label: 'Reinforcement', required: false },
	{ slot: 'sealer', kind: 'sealer', label: 'Sealer', required: false },
	{ slot: 'wax', kind: 'wax', label: 'Wax', required: false },
	{ slot: 'film', kind: 'film', label: 'Parting film', required: false },
	{ slot: 'casting', kind: 'casting', label: 'Casting material', required: true }
] as const;
export type Slot = (typeof SLOTS)[number]['slot'];

/** What stands in the address for "nothing here", apart from "not chosen yet". */
export const NONE = 'none';

const text = z.string().catch('');

/** The choices for one mold as the address holds them; numbers are texts in the shop's units. */
export const choicesSchema = z.object({
	pattern: text,
	build: text,
	detail: text,
	shell: text,
	reinforcement: text,
	sealer: text,
	wax: text,
	film: text,
	casting: text,
	gloveThicknessMm: text,
	buildCoats: text,
	shellThicknessMm: text,
	frameGapMm: text,
	roomTemperatureC: text,
	roomHumidityPct: text,
	people: text,
	/** The shop's wall clock, "2026-11-30T07:30". */
	start: text
});
export type Choices = z.infer<typeof choicesSchema>;

/** What may be set by hand instead of what the plan proposes. */
export const OVERRIDES = [
	{ key: 'gloveThicknessMm', label: 'Glove thickness', whole: false },
	{ key: 'buildCoats', label: 'Build coats', whole: true },
	{ key: 'shellThicknessMm', label: 'Shell thickness', whole: false },
	{ key: 'frameGapMm', label: 'Gap to the frame', whole: false },
	{ key: 'roomTemperatureC', label: 'Room temperature', whole: false },
	{ key: 'roomHumidityPct', label: 'Room humidity', whole: false },
	{ key: 'people', label: 'People', whole: true }
] as const;
