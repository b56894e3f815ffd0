import { join } from 'node:path';
import { error } from '@sveltejs/kit';
import { backupFolder, listBackups } from '$lib/server/keep/backup-folder';
import { fileResponse } from '$lib/server/keep/send-file';
import { requireUnlocked } from '$lib/server/unlock';
import type { RequestEvent } from './$types';

/** One backup, to be kept somewhere else. It holds the hashes of PINs: it is kept like a key. */
export async function GET(event: RequestEvent) {
	await requireUnlocked(event);
	const { name } = event.params;
	// Only what the folder lists is sent, so no name leads out of it.
	const found = listBackups(backupFolder()).find((backup) => backup.name === name);
	if (!found) error(404, 'There is no such backup.');
	return fileResponse(join(backupFolder(), found.name), found.name);
}
