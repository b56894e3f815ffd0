const NAME = /^glovewright-(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z\.(db|zip)$/;
const PARTIAL = '.partial';
const DAYS = 7;
const WEEKS = 5;
const DAY_MS = 86_400_000;

/** What a backup made at `at` is called: a SQLite file, or the whole shop as a zip from PostgreSQL. */
export function backupName(at: string, kind: 'db' | 'zip'): string {
	return `glovewright-${at.slice(0, 19).replaceAll(/[-:]/g, '')}Z.${kind}`;
}

/** When a backup was made, by its name; null when the name is not one of ours. */
export function backupTime(name: string): string | null {
	const [, year, month, day, hour, minute, second] = NAME.exec(name) ?? [];
	return year ? `${year}-${month}-${day}T${hour}:${minute}:${second}Z` : null;
}

/**
 * Names of the backups that are thrown away: kept are the last one of each of the seven latest days that
 * have one, and of each of the five latest weeks. Files with other names are never touched, nor are
 * backups named later than `at`: a clock was wrong, and nobody knows how old they are.
 *
 * @param isDamaged - whether the newest holds damaged records. Then the twelve oldest are kept too, which
 * are all there were when the damage came: a whole one is among them for as long as it takes
 */
export function backupsToDrop(
	names: readonly string[],
	{ at: now, isDamaged = false }: { at: string; isDamaged?: boolean }
): string[] {
	const nowMs = Date.parse(now);
	const dated = names
		.flatMap((name) => {
			const at = backupTime(name);
			const ms = Date.parse(at ?? '');
			return ms <= nowMs ? [{ name, dayNumber: Math.floor(ms / DAY_MS), ms }] : [];
		})
		.sort((a, b) => b.ms - a.ms);
	const kept = new Set([
		...newestOfEach(dated, ({ dayNumber }) => dayNumber, DAYS),
		// 1970-01-01 was a Thursday; weeks begin on Monday.
		...newestOfEach(dated, ({ dayNumber }) => Math.floor((dayNumber + 3) / 7), WEEKS),
		...(isDamaged ? dated.slice(-DAYS - WEEKS).map(({ name }) => name) : [])
	]);
	return dated.map(({ name }) => name).filter((name) => !kept.has(name));
}

/** Names of unfinished backups that are a day old: nobody is writing them any more. */
export function leftovers(names: readonly string[], at: string): string[] {
	return names.filter((name) => {
		const begun = name.endsWith(PARTIAL) ? backupTime(name.slice(0, -PARTIAL.length)) : null;
		return begun !== null && Date.parse(at) - Date.parse(begun) > DAY_MS;
	});
}

function newestOfEach<T extends { name: string }>(
	newestFirst: readonly T[],
	spanOf: (backup: T) => number,
	spans: number
): string[] {
	const first = new Map<number, string>();
	for (const backup of newestFirst) {
		const span = spanOf(backup);
		if (!first.has(span) && first.size < spans) first.set(span, backup.name);
	}
	return [...first.values()];
}
