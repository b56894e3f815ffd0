import { z } from 'zod';
import { formTree } from '$lib/screen/form/form-tree';

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

export const MOST_ADDITIONS = 10;

const text = z.string().catch('');
const NOT_MADE = Object.fromEntries(SLOTS.map(({ slot }) => [slot, ''])) as Record<Slot, string>;

/** The choices for one mold as the address holds them; numbers are texts in the shop's units. */
const choicesSchema = z.object({
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
	detailCupG: text,
	buildCupG: text,
	shellCupG: text,
	frameGapMm: text,
	roomTemperatureC: text,
	roomHumidityPct: text,
	people: text,
	surfaceTemperatureC: text,
	/** Day on which the lot on the shelf was made, "2026-05-30", by the place that it fills. */
	made: z
		.object(Object.fromEntries(SLOTS.map(({ slot }) => [slot, text])) as Record<Slot, typeof text>)
		.catch(NOT_MADE),
	additions: z
		.array(z.object({ to: text, name: text, partsPerHundred: text }))
		.max(MOST_ADDITIONS)
		.catch([])
		.transform((rows) => rows.filter((row) => Object.values(row).some((typed) => typed !== ''))),
	/** The shop's wall clock, "2026-11-30T07:30". */
	start: text
});
export type Choices = z.infer<typeof choicesSchema>;

/** The choices that an address holds; what cannot be read there is not chosen. */
export function readQuery(query: URLSearchParams): Choices {
	return choicesSchema.parse(formTree(query));
}

/** What was chosen for a field of this name, "additions.0.name"; empty for none. */
export function choiceAt(choices: Choices, name: string): string {
	const value = name
		.split('.')
		.reduce<unknown>((node, key) => (node ? Reflect.get(Object(node), key) : undefined), choices);
	return typeof value === 'string' ? value : '';
}

interface Override {
	key:
		| 'gloveThicknessMm'
		| 'buildCoats'
		| 'shellThicknessMm'
		| 'detailCupG'
		| 'buildCupG'
		| 'shellCupG'
		| 'frameGapMm'
		| 'roomTemperatureC'
		| 'roomHumidityPct'
		| 'surfaceTemperatureC'
		| 'people';
	label: string;
	whole?: boolean;
	hint?: string;
}

/** What may be set by hand instead of what the plan proposes. */
export const OVERRIDES: readonly Override[] = [
	{ key: 'gloveThicknessMm', label: 'Glove thickness' },
	{ key: 'buildCoats', label: 'Build coats', whole: true },
	{ key: 'shellThicknessMm', label: 'Shell thickness' },
	{ key: 'detailCupG', label: 'Largest cup of a detail coat' },
	{ key: 'buildCupG', label: 'Largest cup of a build coat' },
	{ key: 'shellCupG', label: 'Largest cup of the shell' },
	{ key: 'frameGapMm', label: 'Gap to the frame' },
	{ key: 'roomTemperatureC', label: 'Room temperature' },
	{ key: 'roomHumidityPct', label: 'Room humidity' },
	{
		key: 'surfaceTemperatureC',
		label: 'Coldest place of the pattern',
		hint: 'Left blank: as warm as the room. A pattern from a cold store draws dew.'
	},
	{ key: 'people', label: 'People', whole: true }
];

/** What a field of the choices is called, by its name. */
export function choiceLabel(name: string): string {
	const [root = '', key = ''] = name.split('.');
	const slot = SLOTS.find((each) => each.slot === (root === 'made' ? key : root));
	if (slot) return root === 'made' ? `${slot.label}: lot made on` : slot.label;
	if (root === 'start') return 'Start';
	return OVERRIDES.find((each) => each.key === root)?.label ?? 'Additions to a mix';
}
