import { eventSchema } from '../process/events';
import type { UnitSystem } from '../quantity/display';
import { typedUnitOf } from '../process/typed-units';
import type { ActField } from '../process/step';

/** What is wrong with an act's fields, by the name the field has in the form; empty when nothing is. */
export function fieldErrors(
	event: Record<string, unknown>,
	fields: readonly ActField[],
	system: UnitSystem = 'SI'
): Record<string, string> {
	const filled = { ...event, at: '2026-01-01T00:00:00Z', by: 'nobody' };
	const parsed = eventSchema.safeParse(filled);
	if (parsed.success) return {};
	const errors: Record<string, string> = {};
	for (const { path, message } of parsed.error.issues) {
		const field = fields.find(({ name }) => name === path[0]);
		errors[formName(path)] ??= field ? accepted(field, path, system) : message;
	}
	return errors;
}

function formName(path: readonly PropertyKey[]): string {
	return path
		.map((key, i) => (typeof key === 'number' ? `[${key}]` : (i > 0 ? '.' : '') + String(key)))
		.join('');
}

/** What a field takes, in words for the person who filled it in. */
function accepted(field: ActField, path: readonly PropertyKey[], system: UnitSystem): string {
	const { kind, min = 0, max = 100_000, unit = '' } = field;
	switch (kind) {
		case 'confirm':
			return `Not ticked: “${field.label}”. Tick it when it is so; if not, stop and put it right first.`;
		case 'choice':
			return `“${field.label}”: choose one.`;
		case 'number':
			return `“${field.label}”: ${numberWanted({ min, max, unit }, system)}`;
		case 'weights':
			return `${partOf(path)}type what the scale shows for it alone, in grams, such as 120.5.`;
		case 'lots':
			return `${partOf(path)}type the lot number from its container.`;
		case 'points':
			if (path.length < 2) return 'Take at least three readings.';
			return path[2] === 'place'
				? 'Say where, such as "north wall".'
				: `A reading: ${numberWanted({ min, max, unit }, system)}`;
		case 'dimensions':
			return path[2] === 'name'
				? 'Say what was measured.'
				: `Type a length in ${system === 'US' ? 'in, such as 4.75' : 'mm, such as 120.5'}.`;
		default:
			return `“${field.label}”: write a few words.`;
	}
}

/** Which part an error of a cup is about: "B: ". */
function partOf(path: readonly PropertyKey[]): string {
	return path.length > 1 ? `${String(path[1])}: ` : 'Each part: ';
}

function numberWanted(
	{ min, max, unit }: { min: number; max: number; unit: string },
	system: UnitSystem
): string {
	const measure = typedUnitOf(unit, system);
	const typed = (value: number) => Number((measure?.fromCore(value) ?? value).toFixed(2));
	const shown = measure ? ` ${measure.unit}` : unit ? ` ${unit}` : '';
	const example = typed(Math.max(min, Math.min(50, Math.round((min + max) / 2))));
	return `type a number from ${typed(min)} to ${typed(max)}${shown}, such as ${example}.`.replace(
		/ -/g,
		' −'
	);
}
