import { canonicalJson } from '$lib/core/log/canonical';
import type { Db } from '../database';
import { readEvents } from '../event-rows';
import { listPatterns } from '../patterns.repository';
import { listPeople } from '../people.repository';
import { listSheets } from '../sheets.repository';
import { csvLine } from './csv';
import type { Chunks } from './zip-writer';

/** The same shop for a spreadsheet, file by file. */
export function csvFiles(db: Db, jobIds: readonly string[]): Array<[string, Chunks]> {
	return [
		['csv/molds.csv', moldLines(db, jobIds)],
		['csv/entries.csv', entryLines(db, jobIds)],
		['csv/people.csv', personLines(db)],
		['csv/materials.csv', sheetLines(db)],
		['csv/patterns.csv', patternLines(db)]
	];
}

async function* moldLines(db: Db, jobIds: readonly string[]): AsyncGenerator<string> {
	yield csvLine(['mold', 'title', 'opened at', 'last entry at', 'entries', 'last hash']);
	for (const id of jobIds) {
		const log = await readEvents(db, id);
		const [first, last] = [log[0], log.at(-1)];
		const title = first?.event.type === 'job.opened' ? first.event.title : '';
		yield csvLine([id, title, first?.event.at, last?.event.at, log.length, last?.hash]);
	}
}

async function* entryLines(db: Db, jobIds: readonly string[]): AsyncGenerator<string> {
	const names = new Map((await listPeople(db)).map(({ id, name }) => [id, name]));
	yield csvLine(['mold', 'number', 'done at', 'taken at', 'by', 'what', 'details', 'hash']);
	for (const id of jobIds) {
		for (const { seq, recordedAt, event, hash } of await readEvents(db, id)) {
			const { type, at, by, ...details } = event;
			const who = names.get(by) ?? by;
			yield csvLine([id, seq, at, recordedAt, who, type, canonicalJson(details), hash]);
		}
	}
}

async function* personLines(db: Db): AsyncGenerator<string> {
	yield csvLine(['person', 'name', 'role', 'retired']);
	for (const { id, name, role, retired } of await listPeople(db)) {
		yield csvLine([id, name, role, retired]);
	}
}

async function* sheetLines(db: Db): AsyncGenerator<string> {
	yield csvLine(['material', 'name', 'kind', 'retired']);
	for (const { id, name, kind, retired } of await listSheets(db, { withRetired: true })) {
		yield csvLine([id, name, kind, retired ?? false]);
	}
}

async function* patternLines(db: Db): AsyncGenerator<string> {
	yield csvLine(['pattern', 'name', 'changed at']);
	for (const { id, pattern, updatedAt } of await listPatterns(db)) {
		yield csvLine([id, pattern.name, updatedAt]);
	}
}
