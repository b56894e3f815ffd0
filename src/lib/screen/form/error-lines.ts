import { fieldId } from '../design/field';
import type { FieldErrors } from './read-entries';

/** One line of the summary: where it leads, what the place is called, what is wrong there. */
interface ErrorLine {
	field: string;
	label: string;
	message: string;
}

/** What is wrong, a line for each thing: two faults under one label with the same words are one. */
export function errorLines(errors: FieldErrors, labelOf: (path: string) => string): ErrorLine[] {
	const lines = new Map<string, ErrorLine>();
	for (const [path, message] of Object.entries(errors)) {
		const label = labelOf(path);
		// A message that begins with the name of its field says it for those who meet it at the field alone.
		const own = message.startsWith(`${label}: `) ? message.slice(label.length + 2) : message;
		const line = { field: fieldId(path), label, message: own };
		const key = `${line.label}\n${message}`;
		if (!lines.has(key)) lines.set(key, line);
	}
	return [...lines.values()];
}
