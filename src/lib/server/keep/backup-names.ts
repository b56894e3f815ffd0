const NAME = /^glovewright-(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z\.(db|zip)$/;
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
 * have one, and of each of the five latest weeks. Files with other names are never touched.
 */
export function backupsToDrop(names: readonly string[]): string[] {
	const dated = names
		.flatMap((name) => {
			const at = backupTime(name);
			return at ? [{ name, dayNumber: Math.floor(Date.parse(at) / DAY_MS), at }] : [];
		})
		.sort((a, b) => b.at.localeCompare(a.at));
	const kept = new Set([
		...newestOfEach(dated, ({ dayNumber }) => dayNumber, DAYS),
		// 1970-01-01 was a Thursday; weeks begin on Monday.
		...newestOfEach(dated, ({ dayNumber }) => Math.floor((dayNumber + 3) / 7), WEEKS)
	]);
	return dated.map(({ name }) => name).filter((name) => !kept.has(name));
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
