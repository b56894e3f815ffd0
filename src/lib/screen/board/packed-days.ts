import type { Stretch } from '$lib/core/process/ahead/place-ahead';
import type { DaysLine } from './days-line';

/** Lines as they travel: a stretch is six numbers, since a hundred molds have thousands of them. */
export interface PackedDays {
	/** Instants count in seconds from here. */
	fromMs: number;
	titles: string[];
	lines: Array<Omit<DaysLine, 'stretches'> & { stretches: PackedStretch[] }>;
}

/** Kind, title, begin, end, when it must have begun or `NEVER`, and 1 for outside, 2 for missed, added. */
type PackedStretch = [number, number, number, number, number, number];
/** It can wait; no instant is so long ago. */
const NEVER = -1e9;
const KINDS = ['work', 'hold', 'wait', 'window'] as const satisfies ReadonlyArray<Stretch['kind']>;

/** Lines to send, to the second; `unpackDays` makes them whole. */
export function packDays(lines: readonly DaysLine[], fromMs: number): PackedDays {
	const titles = [
		...new Set(lines.flatMap(({ stretches }) => stretches.map(({ title }) => title)))
	];
	const placeOf = new Map(titles.map((title, index) => [title, index]));
	const seconds = (ms: number) => Math.round((ms - fromMs) / 1000);
	return {
		fromMs,
		titles,
		lines: lines.map((line) => ({
			...line,
			stretches: line.stretches.map((stretch): PackedStretch => [
				KINDS.indexOf(stretch.kind),
				placeOf.get(stretch.title) ?? -1,
				seconds(stretch.fromMs),
				seconds(stretch.toMs),
				stretch.latestMs === null ? NEVER : seconds(stretch.latestMs),
				Number(stretch.isOutside) + 2 * Number(stretch.isMissed)
			])
		}))
	};
}

/** The lines that `packDays` was given, to the second. */
export function unpackDays({ fromMs, titles, lines }: PackedDays): DaysLine[] {
	const instant = (seconds: number) => fromMs + seconds * 1000;
	return lines.map((line) => ({
		...line,
		stretches: line.stretches.map(([kind, title, from, to, latest, marks]) => ({
			title: titles[title] ?? '',
			kind: KINDS[kind] ?? 'wait',
			fromMs: instant(from),
			toMs: instant(to),
			latestMs: latest === NEVER ? null : instant(latest),
			isOutside: (marks & 1) === 1,
			isMissed: (marks & 2) === 2
		}))
	}));
}
