import { displayQuantity, type UnitSystem } from '$lib/core/quantity/display';
import type { Unit } from '$lib/core/quantity/unit';
import { recordTime } from './record-time';

/** How a record is read: people by name, instants by the shop's clock, quantities in the reader's units. */
export interface RecordReader {
	who: (personId: string) => string;
	when: (at: string) => string;
	show: (value: number, unit: Unit) => string;
	system: UnitSystem;
}

export function recordReader(terms: {
	names: Readonly<Record<string, string>>;
	zone: string;
	system: UnitSystem;
}): RecordReader {
	return {
		who: (personId) => terms.names[personId] ?? personId,
		when: (at) => recordTime(at, terms.zone),
		show: (value, unit) => displayQuantity(value, unit, terms.system),
		system: terms.system
	};
}

/** "+1.2%" with its sign, "0%" when nothing is off; null reads as a dash. */
export function offText(fraction: number | null): string {
	if (fraction === null) return '—';
	const percent = Number((fraction * 100).toFixed(1));
	if (percent === 0) return '0%';
	return `${percent > 0 ? '+' : '−'}${Math.abs(percent)}%`;
}
