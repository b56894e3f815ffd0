import type { ErrorWords } from '../language/en/errors';
import { withLocalDigits } from '../language/local-digits';
import { ENGLISH } from '../language/words';
import { eventSchema } from '../process/events';
import type { UnitSystem } from '../quantity/display';
import { typedUnitOf } from '../process/typed-units';
import type { ActField } from '../process/step';

/** What is wrong with an act's fields, by the name the field has in the form; empty when nothing is. */
export function fieldErrors(
	event: Record<string, unknown>,
	fields: readonly ActField[],
	system: UnitSystem = 'SI',
	w = ENGLISH
): Record<string, string> {
	const filled = { ...event, at: '2026-01-01T00:00:00Z', by: 'nobody' };
	const parsed = eventSchema.safeParse(filled);
	const errors: Record<string, string> = {};
	for (const { kind, name, label, required } of fields) {
		// What only some plans ask for is left open by the schema.
		if (kind === 'confirm' && required && event[name] !== true) {
			errors[name] = withLocalDigits(w.errors.notTicked(label), w.locale);
		}
	}
	const paths = (parsed.error?.issues ?? []).map(({ path }) => path);
	return { ...errorsAt(paths, fields, system, w), ...errors };
}

/** What is accepted at each place of an act that was not taken, by the name the field has in the form. */
export function errorsAt(
	paths: readonly PropertyKey[][],
	fields: readonly ActField[],
	system: UnitSystem,
	w = ENGLISH
): Record<string, string> {
	const errors: Record<string, string> = {};
	for (const path of paths) {
		const field = fields.find(({ name }) => name === path[0]);
		const isPhoto = path[0] === 'photos';
		const words = field
			? accepted(field, { path, system, said: w.errors })
			: isPhoto
				? w.errors.photos
				: w.errors.notTaken(String(path[0]));
		errors[isPhoto ? 'photos' : formName(path)] ??= withLocalDigits(words, w.locale);
	}
	return errors;
}

function formName(path: readonly PropertyKey[]): string {
	return path
		.map((key, i) => (typeof key === 'number' ? `[${key}]` : (i > 0 ? '.' : '') + String(key)))
		.join('');
}

interface Asked {
	path: readonly PropertyKey[];
	system: UnitSystem;
	said: ErrorWords;
}

/** What a field takes, in words for the person who filled it in. */
function accepted(field: ActField, { path, system, said }: Asked): string {
	const { kind, min = 0, max = 100_000, unit = '' } = field;
	switch (kind) {
		case 'confirm':
			return said.notTicked(field.label);
		case 'choice':
			return said.chooseOne(field.label);
		case 'number':
			return said.numberAt({
				label: field.label,
				wanted: numberWanted({ min, max, unit }, system, said)
			});
		case 'weights':
			return partOf(path, said) + said.mass;
		case 'lots':
			return partOf(path, said) + said.lot;
		case 'points':
			if (path.length < 2) return said.threeReadings;
			return path[2] === 'place'
				? said.sayWhere
				: said.reading(numberWanted({ min, max, unit }, system, said));
		case 'dimensions':
			return path[2] === 'name' ? said.sayWhat : system === 'US' ? said.lengthIn : said.lengthMm;
		default:
			return said.fewWords(field.label);
	}
}

/** Which part an error of a cup is about: "B: ". */
function partOf(path: readonly PropertyKey[], said: ErrorWords): string {
	return path.length > 1 ? said.ofPart(String(path[1])) : said.eachPart;
}

function numberWanted(
	{ min, max, unit }: { min: number; max: number; unit: string },
	system: UnitSystem,
	said: ErrorWords
): string {
	const measure = typedUnitOf(unit, system);
	const typed = (value: number) => Number((measure?.fromCore(value) ?? value).toFixed(2));
	const shown = measure ? ` ${measure.unit}` : unit ? ` ${unit}` : '';
	const example = typed(Math.max(min, Math.min(50, Math.round((min + max) / 2))));
	return said
		.number({ from: typed(min), to: typed(max), unit: shown, such: example })
		.replace(/ -/g, ' −');
}
