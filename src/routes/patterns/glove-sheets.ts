import type { Db } from '$lib/server/database';
import { listSheets } from '$lib/server/sheets.repository';
import { coatSheetOf, type CoatSheet } from './coat-choice';

/** The shop's glove materials, as far as a mesh is judged by them. */
export async function gloveSheets(db: Db): Promise<CoatSheet[]> {
	return (await listSheets(db)).filter(({ kind }) => kind === 'glove').map(coatSheetOf);
}
