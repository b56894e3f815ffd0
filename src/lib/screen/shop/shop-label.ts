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
	cupVolumesMl: 'Cups on the shelf',
	nightTemperatureC: 'Room at night',
	roomSpreadK: 'Places differ by up to',
	roomVolumeM3: 'Volume of the room',
	measuredFanM3PerH: 'Outdoor air, measured',
	'fanGrille.meanMPerS': 'Mean air speed at the grille',
	'fanGrille.areaCm2': 'Area of the grille',
	'fanGrille.freeFraction': 'Share of the grille that is open',
	mixingFactor: 'Mixing factor',
	limitSets: 'Limits that count here',
	airSpeedMPerS: 'Air speed over drying film',
	ventilationNote: 'Note on the ventilation',
	asksTraining: 'Training on isocyanates',
	boardMm: 'Thickness of the frame’s boards',
	moldLifePours: 'Pours before a glove is worn out',
	'benchTimes.solidBlock.fixedS': 'Solid block: hands on, once',
	'benchTimes.solidBlock.perM2S': 'Solid block: hands on, by area',
	'benchTimes.solidBlock.daysCount': 'Solid block: working days',
	'benchTimes.pouredLayer.fixedS': 'Poured layer: hands on, once',
	'benchTimes.pouredLayer.perM2S': 'Poured layer: hands on, by area',
	'benchTimes.pouredLayer.daysCount': 'Poured layer: working days'
};

/** What a field of the settings is called on the screen. */
export function shopLabel(path: string): string {
	const day = /^(?:days|shifts)\.(\d)/.exec(path)?.[1];
	if (day && path.startsWith('days')) return WEEKDAYS[Number(day)] ?? path;
	if (path.startsWith('shifts')) return 'Working hours';
	if (path.startsWith('limitSets')) return SHOP_LABELS.limitSets ?? path;
	const cup = /^cupVolumesMl\.(\d+)/.exec(path)?.[1];
	return cup ? `Cup ${Number(cup) + 1}` : (SHOP_LABELS[path] ?? path);
}
