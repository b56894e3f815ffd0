import { z } from 'zod';
import { shopSchema, type Shift, type Shop } from '$lib/core/plan/shop';
import { issueErrors } from '../form/issue-errors';
import { readSpan } from '../form/read-clock';
import { readEntries, type FieldErrors } from '../form/read-entries';
import { WEEKDAYS } from '../form/setup-draft';
import type { ShopDraft } from './shop-draft';
import { SHOP_NUMBERS } from './shop-numbers';

/** The draft with blank cups taken out, so that an error stands where the cup is shown again. */
export function tidyDraft(draft: ShopDraft): ShopDraft {
	return { ...draft, cupVolumesMl: draft.cupVolumesMl.filter((cup) => cup.trim() !== '') };
}

/** The shop that a tidied draft describes, or what is wrong, field by field. */
export function readShop(
	draft: ShopDraft,
	isDemo: boolean
): { shop: Shop; errors: null } | { shop: null; errors: FieldErrors } {
	const system = draft.shownUnits === 'US' ? 'US' : 'SI';
	const { shifts, errors: shiftErrors } = readDays(draft.days);
	const plain = {
		...draft,
		currency: draft.currency.trim().toUpperCase(),
		days: undefined,
		shownUnits: undefined,
		asksTraining: undefined
	};
	const { value, errors: numberErrors } = readEntries(plain, SHOP_NUMBERS, system);
	const { limitSets, benchTimes, ...read } = Object(value);
	const parsed = shopSchema.safeParse({
		cupVolumesMl: [],
		...read,
		...(draft.limitSets.length > 0 && { limitSets }),
		...(benchTimes && { benchTimes: waysOf(benchTimes) }),
		...(draft.asksTraining === 'yes' && { asksTraining: true }),
		isDemo,
		shifts
	});
	const schemaErrors = parsed.success
		? {}
		: issueErrors(inForm(parsed.error), { fields: SHOP_NUMBERS, system, draft });
	// Hours are judged above, day by day, where the schema knows only a list of shifts.
	const ownErrors = Object.entries(schemaErrors).filter(([path]) => !path.startsWith('shifts'));
	const errors: FieldErrors = {
		...Object.fromEntries(ownErrors),
		...numberErrors,
		...shiftErrors
	};
	if (shifts.length === 0 && Object.keys(shiftErrors).length === 0) {
		errors.shifts = 'No working hours are entered; accepted: one day at least.';
	}
	if (draft.cupVolumesMl.length === 0) {
		errors.cupVolumesMl = 'No cup is entered; accepted: one size at least.';
	}
	return parsed.success && Object.keys(errors).length === 0
		? { shop: parsed.data, errors: null }
		: { shop: null, errors };
}

const waysOf = ({ solidBlock, pouredLayer }: Record<string, unknown>): object => ({
	...(solidBlock !== undefined && { 'solid block': solidBlock }),
	...(pouredLayer !== undefined && { 'poured layer': pouredLayer })
});

/** The schema's objections under the names that the form has for its fields. */
function inForm(error: z.ZodError): z.ZodError {
	const names: Record<string, string> = {
		'solid block': 'solidBlock',
		'poured layer': 'pouredLayer'
	};
	return new z.ZodError(
		error.issues.map((issue) => ({
			...issue,
			path: issue.path.map((key) => names[String(key)] ?? key)
		}))
	);
}

function readDays(days: ShopDraft['days']): { shifts: Shift[]; errors: FieldErrors } {
	const errors: FieldErrors = {};
	const shifts = days.flatMap((spans, i): Shift[] => {
		const day = WEEKDAYS[i] ?? 'This day';
		let last = '';
		return spans.flatMap(({ from, to }, j): Shift[] => {
			if (from.trim() === '' && to.trim() === '') return [];
			const path = `days.${i}.${j}`;
			const span = readSpan({ from, to }, day);
			if ('error' in span) {
				errors[path] = span.error;
				return [];
			}
			if (span.from < last) {
				errors[path] = `${day} begins again at ${span.from}; accepted: ${last} or later.`;
			}
			last = span.to;
			return [{ weekday: i + 1, ...span }];
		});
	});
	return { shifts, errors };
}
