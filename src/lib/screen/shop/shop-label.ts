import { WEEKDAYS } from '../form/setup-draft';

export const SHOP_LABELS: Record<string, string> = {
	name: 'Name of the shop',
	zone: 'Time zone',
	units: 'Units',
	currency: 'Currency',
	shifts: 'Working hours',
	scaleReadabilityG: 'Smallest step of the scale',
	roomTemperatureC: 'Room temperature',
	roomHumidityPct: 'Relative humidity',
	laborPerHour: 'Cost of an hour of labor',
	brushingGPerMin: 'Brushing rate',
	pastingGPerMin: 'Laying rate of paste',
	cupVolumesMl: 'Cups on the shelf'
};

/** What a field of the settings is called on the screen. */
export function shopLabel(path: string): string {
	const day = /^(?:days|shifts)\.(\d)/.exec(path)?.[1];
	if (day && path.startsWith('days')) return WEEKDAYS[Number(day)] ?? path;
	if (path.startsWith('shifts')) return 'Working hours';
	const cup = /^cupVolumesMl\.(\d+)/.exec(path)?.[1];
	return cup ? `Cup ${Number(cup) + 1}` : (SHOP_LABELS[path] ?? path);
}
