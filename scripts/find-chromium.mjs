import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import process from 'node:process';
import { run } from './run.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** Path of an installed Chromium or a browser built on it, or null. CHROMIUM_PATH comes first. */
export function findChromium() {
	const named = process.env.CHROMIUM_PATH;
	if (named) return existsSync(named) ? named : null;
	const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
	const places = NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
	return ['/usr/bin/chromium', ...places].find((place) => existsSync(place)) ?? null;
}

/** As `findChromium`, after installing Debian's package where that is possible. */
export async function chromiumOrInstall() {
	const found = findChromium();
	if (found || process.env.CHROMIUM_PATH) return found;
	const canInstall = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
	if (!canInstall) return null;

	console.log('Installing Chromium for the journeys …');
	const env = { DEBIAN_FRONTEND: 'noninteractive' };
	await run('apt-get', ['update', '-qq'], { env });
	await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], { env });
	return findChromium();
}
