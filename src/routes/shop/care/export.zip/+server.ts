import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { error } from '@sveltejs/kit';
import { now } from '$lib/server/clock';
import { backupFolder } from '$lib/server/keep/backup-folder';
import { canBackUp, runTool } from '$lib/server/keep/schedule';
import { fileResponse } from '$lib/server/keep/send-file';
import { requireUnlocked } from '$lib/server/unlock';
import type { RequestEvent } from './$types';

/** The whole shop in open formats, without PINs, made in a process of its own so that no bench waits. */
export async function GET(event: RequestEvent) {
	await requireUnlocked(event);
	if (!canBackUp()) error(503, 'This server was started without its commands. Use npm start.');
	mkdirSync(backupFolder(), { recursive: true });
	const folder = mkdtempSync(join(backupFolder(), 'export-'));
	const clear = () => rmSync(folder, { recursive: true, force: true });
	const path = join(folder, 'shop.zip');
	try {
		await runTool(['export', path]);
		return fileResponse(path, `shop-${now().slice(0, 10)}.zip`, clear);
	} catch (failure) {
		clear();
		throw failure;
	}
}
