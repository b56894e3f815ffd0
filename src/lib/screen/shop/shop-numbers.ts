import type { NumberFields } from '../form/read-entries';

/** Bench times of one way to build, as they are typed. */
export const BENCH_NUMBERS: NumberFields = {
	'solidBlock.fixedS': 'hours',
	'solidBlock.perM2S': 'hoursPerArea',
	'solidBlock.daysCount': 'days',
	'pouredLayer.fixedS': 'hours',
	'pouredLayer.perM2S': 'hoursPerArea',
	'pouredLayer.daysCount': 'days'
};

/** Number fields of the shop's settings and how each is typed. */
export const SHOP_NUMBERS: NumberFields = {
	scaleReadabilityG: 'grams',
	roomTemperatureC: 'temperature',
	roomHumidityPct: 'percent',
	laborPerHour: 'plain',
	brushingGPerMin: 'rate',
	pastingGPerMin: 'rate',
	'cupVolumesMl.*': 'volume',
	nightTemperatureC: 'temperature',
	roomSpreadK: 'difference',
	roomVolumeM3: 'room',
	measuredFanM3PerH: 'airFlow',
	'fanGrille.meanMPerS': 'airSpeed',
	'fanGrille.areaCm2': 'area',
	'fanGrille.freeFraction': 'fractionPct',
	mixingFactor: 'plain',
	airSpeedMPerS: 'airSpeed',
	boardMm: 'length',
	moldLifePours: 'count',
	...Object.fromEntries(
		Object.entries(BENCH_NUMBERS).map(([path, measure]) => [`benchTimes.${path}`, measure])
	)
};
