import { WEEKDAYS } from '$lib/screen/form/setup-draft';

const LABELS: Record<string, string> = {
	name: 'Name of the shop',
	zone: 'Time zone',
	units: 'Units',
	currency: 'Currency',
	shifts: 'Working hours',
	scaleReadabilityG: 'Smallest step of the scale',
	roomTemperatureC: 'Room temperature',
	laborPerHour: 'Cost of an hour of labor',
	owner: 'Your name',
	pin: 'PIN',
	pinAgain: 'PIN again'
};

/** What a field of the setup form is called on the screen. */
export function setupLabel(path: string): string {
	const day = /^shifts\.(\d)/.exec(path)?.[1];
	return day ? (WEEKDAYS[Number(day)] ?? path) : (LABELS[path] ?? path);
}
