import type { Pattern } from '$lib/core/geometry/pattern';
import type { ChosenSheets } from '$lib/core/materials/compatibility';
import type { Sheet } from '$lib/core/materials/sheet';
import { planInputsSchema, type PlanInputs } from '$lib/core/plan/inputs';
import type { Shop } from '$lib/core/plan/shop';
import { issueErrors } from '$lib/screen/form/issue-errors';
import { readEntries, type FieldErrors, type NumberFields } from '$lib/screen/form/read-entries';
import { NONE, OVERRIDES, SLOTS, type Choices } from './choices';
import { proposeMaterials, type Chosen } from './propose-materials';
import { dayText, instantOf, nextShiftStart } from './shop-clock';

export const OVERRIDE_NUMBERS: NumberFields = {
	gloveThicknessMm: 'length',
	buildCoats: 'count',
	shellThicknessMm: 'length',
	detailCupG: 'grams',
	buildCupG: 'grams',
	shellCupG: 'grams',
	frameGapMm: 'length',
	roomTemperatureC: 'temperature',
	roomHumidityPct: 'percent',
	surfaceTemperatureC: 'temperature',
	people: 'count',
	'additions.*.partsPerHundred': 'plain'
};

const overridesSchema = planInputsSchema.pick({
	gloveThicknessMm: true,
	buildCoats: true,
	shellThicknessMm: true,
	detailCupG: true,
	buildCupG: true,
	shellCupG: true,
	frameGapMm: true,
	roomTemperatureC: true,
	roomHumidityPct: true,
	surfaceTemperatureC: true,
	additions: true,
	people: true
});

interface Given {
	choices: Choices;
	shop: Shop;
	/** Null when none is chosen, or the one in the address is gone. */
	pattern: Pattern | null;
	/** Retired sheets too: a link to an older choice still says what it was. */
	library: readonly Sheet[];
	now: string;
	/** The start that was seen, when a plan is accepted. */
	startAt?: string;
}

export interface ReadChoices {
	inputs: PlanInputs | null;
	sheets: ChosenSheets | null;
	errors: FieldErrors;
	startAt: string;
}

/** The inputs of a plan from what the address says, with proposals for what it leaves open. */
export function readChoices(given: Given): ReadChoices {
	const { choices, shop, pattern, library } = given;
	const errors: FieldErrors = {};
	const chosen: Chosen = {};
	for (const { slot, kind, label, required } of SLOTS) {
		const id = choices[slot];
		if (id === '') continue;
		const sheet = library.find((candidate) => candidate.id === id && candidate.kind === kind);
		if (id === NONE && !required) chosen[slot] = null;
		else if (sheet) chosen[slot] = sheet;
		else errors[slot] = `${label}: this data sheet is not in the library; choose another.`;
		if (sheet?.retired) {
			errors[slot] = `${label}: the data sheet “${sheet.name}” is retired; choose one in use.`;
		}
	}
	const active = library.filter(({ retired }) => !retired);
	const sheets = pattern && proposeMaterials(pattern, active, chosen);
	const overrides = readOverrides(choices, shop, errors);
	const startAt = given.startAt ?? readStart(choices, shop, given.now, errors);
	const lots = readLots(choices, sheets, shop, startAt, errors);
	const isReady = pattern && sheets && overrides && Object.keys(errors).length === 0;
	return {
		inputs: isReady
			? { shop, pattern, materials: compact(sheets), ...overrides, ...lots, startAt }
			: null,
		sheets,
		errors,
		startAt
	};
}

function readOverrides(choices: Choices, shop: Shop, errors: FieldErrors) {
	const { additions } = choices;
	const draft = {
		...Object.fromEntries(OVERRIDES.map(({ key }) => [key, choices[key]])),
		...(additions.length > 0 && { additions })
	};
	const read = readEntries(draft, OVERRIDE_NUMBERS, shop.units);
	const parsed = overridesSchema.safeParse({ people: 1, ...Object(read.value) });
	if (!parsed.success) {
		const context = { fields: OVERRIDE_NUMBERS, system: shop.units, draft };
		Object.assign(errors, issueErrors(parsed.error, context));
	}
	Object.assign(errors, read.errors);
	return parsed.success ? parsed.data : null;
}

/** When the lots on the shelf were made; a lot without a day counts as fresh, and is left out. */
function readLots(
	{ made }: Choices,
	sheets: ChosenSheets | null,
	shop: Shop,
	startAt: string,
	errors: FieldErrors
): Pick<PlanInputs, 'lots'> {
	const lots = new Map<string, string>();
	for (const { slot, label } of SLOTS) {
		const sheet = sheets?.[slot];
		if (made[slot] === '' || !sheet) continue;
		const madeAt = instantOf(`${made[slot]}T00:00`, shop.zone);
		if (madeAt === null) {
			errors[`made.${slot}`] = `${label}: not a day; accepted: a day such as May 30, 2026.`;
		} else if (madeAt > startAt) {
			errors[`made.${slot}`] =
				`${label}: made after the start of the job; accepted: ${dayText(startAt, shop.zone)} or earlier.`;
		} else {
			// One material in two places is one lot on the shelf; its older day counts.
			const known = lots.get(sheet.id);
			lots.set(sheet.id, known !== undefined && known < madeAt ? known : madeAt);
		}
	}
	return lots.size === 0
		? {}
		: { lots: [...lots].map(([materialId, madeAt]) => ({ materialId, madeAt })) };
}

function readStart({ start }: Choices, shop: Shop, now: string, errors: FieldErrors): string {
	const proposed = nextShiftStart(shop, now);
	if (start === '') return proposed;
	const startAt = instantOf(start, shop.zone);
	if (startAt === null)
		errors.start = 'Not a date and time; accepted: a day and a time, such as Nov 30, 2026, 07:30.';
	return startAt ?? proposed;
}

/** Without the places that stay empty, which a hash would otherwise have to know of. */
function compact(sheets: ChosenSheets): PlanInputs['materials'] {
	const { build, shell, casting, ...rest } = sheets;
	const kept = Object.fromEntries(Object.entries(rest).filter(([, sheet]) => sheet !== undefined));
	return { ...kept, build, shell, casting };
}
