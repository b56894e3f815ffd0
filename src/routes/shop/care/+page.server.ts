import { fail } from '@sveltejs/kit';
import { now } from '$lib/server/clock';
import {
	deviceOf,
	endDevice,
	listDevices,
	onlyKnownDevices,
	registerDevice,
	saveSetting,
	setOnlyKnownDevices
} from '$lib/server/devices';
import { backupFolder, lastBackup, listBackups } from '$lib/server/keep/backup-folder';
import { ageOfBackupS, backUpNow, canBackUp, isOverdue } from '$lib/server/keep/schedule';
import {
	endOtherSessions,
	endSessionById,
	IDLE_CHOICES_MIN,
	idleMinutes,
	listSessions
} from '$lib/server/session-list';
import { IDLE_SETTING, SESSION_COOKIE } from '$lib/server/sessions';
import { requireUnlocked } from '$lib/server/unlock';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
	await requireUnlocked(event);
	const { locals, cookies } = event;
	const { db } = locals;
	const at = now();
	const ageS = ageOfBackupS(at);
	return {
		at,
		zone: locals.shop?.zone ?? 'UTC',
		canBackUp: canBackUp(),
		backups: listBackups(backupFolder()),
		last: lastBackup(backupFolder()),
		isOverdue: isOverdue(ageS),
		sessions: await listSessions(db, cookies.get(SESSION_COOKIE)),
		devices: await listDevices(db),
		thisDevice: await deviceOf(db, cookies),
		onlyKnown: await onlyKnownDevices(db),
		idleMin: await idleMinutes(db),
		idleChoices: [...IDLE_CHOICES_MIN]
	};
};

export const actions: Actions = {
	backup: async (event) => {
		await requireUnlocked(event);
		const isMade = await backUpNow();
		return isMade
			? { done: 'A backup was made and verified.' }
			: fail(500, { refused: 'The backup was not made, or is of damaged records; see below.' });
	},
	endSession: async (event) => {
		await requireUnlocked(event);
		const form = await event.request.formData();
		await endSessionById(event.locals.db, String(form.get('session') ?? ''));
		return { done: 'The session has ended.' };
	},
	endOthers: async (event) => {
		await requireUnlocked(event);
		const count = await endOtherSessions(event.locals.db, event.cookies.get(SESSION_COOKIE));
		return { done: `${count} sessions have ended; only yours goes on.` };
	},
	register: async (event) => {
		const { id } = await requireUnlocked(event);
		const form = await event.request.formData();
		const name = String(form.get('name') ?? '').trim();
		if (name === '' || name.length > 60) {
			return fail(400, { nameError: 'Accepted: a name of 1 to 60 characters.' });
		}
		const { db } = event.locals;
		const before = await deviceOf(db, event.cookies);
		if (before) await endDevice(db, before.id, now());
		await registerDevice(db, { name, by: id, at: now() }, event);
		return { done: `This device is registered as ${name}.` };
	},
	endDevice: async (event) => {
		await requireUnlocked(event);
		const form = await event.request.formData();
		await endDevice(event.locals.db, String(form.get('device') ?? ''), now());
		return { done: 'The device is no longer registered, and its sessions have ended.' };
	},
	settings: async (event) => {
		await requireUnlocked(event);
		const { db } = event.locals;
		const form = await event.request.formData();
		const idleMin = Number(form.get('idleMin'));
		if (!IDLE_CHOICES_MIN.some((choice) => choice === idleMin)) {
			return fail(400, { refused: `Accepted: ${IDLE_CHOICES_MIN.join(', ')} minutes.` });
		}
		const isOn = form.get('onlyKnown') === 'yes';
		if (isOn && !(await deviceOf(db, event.cookies))) {
			return fail(409, { refused: 'Register this device first, or nobody could sign in on it.' });
		}
		await saveSetting(db, IDLE_SETTING, String(idleMin));
		await setOnlyKnownDevices(db, isOn);
		return { done: 'Saved.' };
	}
};
