import { withCustomary } from '$lib/core/quantity/with-customary';
import { isShutFirst, sheetContradictions } from '$lib/core/materials/contradictions';
import { familyProblem } from '$lib/core/materials/kind-families';
import { HAZARD_STATEMENT, sheetSchema, type Sheet } from '$lib/core/materials/sheet';
import { exclusionProblem } from '$lib/core/materials/usual-hazards';
import type { UnitSystem } from '$lib/core/quantity/display';
import { issueErrors } from '../form/issue-errors';
import { readEntries, type FieldErrors } from '../form/read-entries';
import { DENSITY_UNSAID, fitToKind, isCoating } from './kind-fields';
import type { SheetDraft, TimeDraft } from './sheet-draft';
import { hazardCautions } from './hazard-cautions';
import { sheetGaps } from './sheet-gaps';
import { SHEET_NUMBERS } from './sheet-numbers';

export interface SheetRead {
	sheet: Sheet | null;
	errors: FieldErrors;
	/** Numbers that contradict others of the sheet, by field; the sheet can be kept all the same. */
	flags: FieldErrors;
	/** What a plan will take of it that the sheet itself does not say, in words. */
	cautions: string[];
	/** Hazard statements as typed, each once, that look like one. */
	statements: string[];
}

interface Kept {
	id: string;
	retired: boolean;
}

/** The data sheet that a form describes, or what is wrong with it, by field, in the shop's units. */
export function readSheet(entered: SheetDraft, system: UnitSystem, kept: Kept): SheetRead {
	const typed = fitToKind(entered);
	const draft = {
		...typed,
		// A price that is not known is none; the plan then says so.
		kits: typed.kits.filter(isEntered).map((kit) => ({ ...kit, price: kit.price.trim() || '0' })),
		volatiles: typed.volatiles.filter(isEntered)
	};
	const context = { fields: SHEET_NUMBERS, system, draft };
	const { value, errors: unreadable } = readEntries(asked(draft), SHEET_NUMBERS, system);
	const parsed = sheetSchema.safeParse({
		...(isCoating(draft.kind) && { mixedDensityGPerMl: DENSITY_UNSAID }),
		...Object(value),
		hazardStatements: codes(draft.hazardStatements),
		hazards: draft.hazards,
		inhibitedBy: draft.inhibitedBy,
		kits: Object(value).kits ?? [],
		needsRelease: draft.needsRelease === 'on',
		...(draft.sdsExcludesUsual === 'on' && { sdsExcludesUsual: true }),
		...(draft.volatiles.length === 0 && draft.hasNoVolatiles === 'on' && { volatiles: [] }),
		...kept
	});
	const errors = atTheirRows(
		{ ...(parsed.success ? {} : issueErrors(parsed.error, context)), ...unreadable },
		typed
	);
	for (const path of Object.keys(errors)) {
		if (path.endsWith('.substance')) errors[path] = 'Nothing is chosen; accepted: one of the list.';
	}
	for (const path of ['family', 'body'] as const) {
		if (draft[path] === '') errors[path] = 'Nothing is chosen; accepted: one of the list.';
	}
	if (draft.volatiles.length > 0 && draft.hasNoVolatiles === 'on') {
		errors.hasNoVolatiles = 'Something is listed as evaporating; accepted: the list, or this tick.';
	}
	if (parsed.success) {
		Object.assign(errors, sheetGaps(parsed.data));
		if (isShutFirst(parsed.data)) {
			errors['recoatCloses.timeS'] =
				'The window shuts before it opens, so no coat could follow another; accepted: a later time, or an earlier almost tack-free.';
		}
		const family = familyProblem(parsed.data);
		if (family) errors.family = family;
		const contradicted = exclusionProblem(parsed.data);
		if (contradicted) errors.sdsExcludesUsual = contradicted;
	}
	const code = Object.keys(errors).find((path) => path.startsWith('hazardStatements.'));
	if (code) {
		const [, index] = code.split('.');
		errors.hazardStatements = `“${codes(draft.hazardStatements)[Number(index)]?.slice(0, 40)}” is not accepted; accepted: codes such as H317 or EUH208.`;
		for (const path of Object.keys(errors)) {
			if (path.startsWith('hazardStatements.')) delete errors[path];
		}
	}
	// What contradicts itself is said while the sheet is still incomplete.
	const flags = Object.fromEntries(
		Object.entries(parsed.success ? flagsOf(parsed.data, system) : {}).filter(
			([path]) => !errors[path]
		)
	);
	const isWhole = parsed.success && Object.keys(errors).length === 0;
	const cautions = parsed.success ? hazardCautions(parsed.data) : [];
	const statements = [...new Set(codes(draft.hazardStatements))].filter((typed) =>
		HAZARD_STATEMENT.test(typed)
	);
	return { sheet: isWhole ? parsed.data : null, errors, flags, cautions, statements };
}

function flagsOf(sheet: Sheet, system: UnitSystem): FieldErrors {
	const flags: FieldErrors = {};
	for (const { field, message } of sheetContradictions(sheet)) {
		// A ratio is one number of the sheet but a row of fields in the form.
		const path = field.startsWith('ratioBy') ? `${field}.0` : field;
		flags[path] ??= withCustomary(message, system);
	}
	return flags;
}

/** Blank ratios and times fall out as a whole, so that a temperature alone asks for nothing. */
function asked(draft: SheetDraft): object {
	const { ratioByWeight, ratioByVolume, tackFree, recoatCloses, demold, dry, potLife, ...rest } =
		draft;
	const isOnePart = draft.parts.length < 2;
	const ratio = (numbers: string[]) =>
		isOnePart || numbers.every((number) => number.trim() === '') ? undefined : numbers;
	return {
		...rest,
		volatiles: draft.volatiles.length > 0 ? draft.volatiles : undefined,
		hasNoVolatiles: '',
		hazardStatements: '',
		hazards: '',
		sdsExcludesUsual: undefined,
		inhibitedBy: '',
		needsRelease: '',
		ratioByWeight: ratio(ratioByWeight),
		ratioByVolume: ratio(ratioByVolume),
		potLife: potLife.timeS.trim() + potLife.massG.trim() === '' ? undefined : potLife,
		tackFree: time(tackFree),
		recoatCloses: time(recoatCloses),
		demold: time(demold),
		dry: time(dry)
	};
}

/** Whether anything stands in a row: then its name and size are needed. */
export const isEntered = (row: Record<string, string>): boolean =>
	Object.values(row).some((typed) => typed.trim() !== '');

/** Blank rows are not read, so an error is led back to the row that it was typed in. */
function atTheirRows(errors: FieldErrors, { kits, volatiles }: SheetDraft): FieldErrors {
	const places: Record<string, number[]> = {
		kits: kits.flatMap((row, i) => (isEntered(row) ? [i] : [])),
		volatiles: volatiles.flatMap((row, i) => (isEntered(row) ? [i] : []))
	};
	return Object.fromEntries(
		Object.entries(errors).map(([path, message]) => {
			const [list = '', row, ...rest] = path.split('.');
			const place = places[list]?.[Number(row)];
			return [place === undefined ? path : [list, place, ...rest].join('.'), message];
		})
	);
}

function time(draft: TimeDraft): object | undefined {
	const { timeS, second } = draft;
	if (timeS.trim() === '' && second.timeS.trim() === '') return undefined;
	return second.timeS.trim() === '' ? { timeS, atC: draft.atC } : draft;
}

function codes(text: string): string[] {
	return text
		.split(/[\s,;+]+/)
		.filter(Boolean)
		.map((code) => code.replace(/^(euh|h)(?=\d)/i, (letters) => letters.toUpperCase()));
}
