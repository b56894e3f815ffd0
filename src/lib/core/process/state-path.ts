import type { Snapshot } from './transition';

/** Where the machine stands as one dotted word, for example "coating.weighing" or "paused". */
export function statePath(snapshot: Snapshot): string {
	const parts: string[] = [];
	let value: unknown = snapshot.value;
	while (typeof value === 'object' && value !== null) {
		const [entry] = Object.entries(value);
		if (!entry) break;
		parts.push(entry[0]);
		value = entry[1];
	}
	if (typeof value === 'string') parts.push(value);
	return parts[0] === 'working' ? parts.slice(1).join('.') : parts.join('.');
}
