import type { MeasureId } from '../form/measure';
import type { NumberFields } from '../form/read-entries';

/** Times are typed as data sheets print them: working times in minutes, cures in hours. */
const time = (name: string, measure: MeasureId): NumberFields => ({
	[`${name}.timeS`]: measure,
	[`${name}.atC`]: 'temperature',
	[`${name}.second.timeS`]: measure,
	[`${name}.second.atC`]: 'temperature'
});

/** Number fields of a data sheet's form and how each is typed. */
export const SHEET_NUMBERS: NumberFields = {
	'parts.*.densityGPerMl': 'density',
	'parts.*.viscosityPaS': 'viscosity',
	'ratioByWeight.*': 'plain',
	'ratioByVolume.*': 'plain',
	ratioToleranceFraction: 'fractionPct',
	mixedDensityGPerMl: 'density',
	mixedViscosityPaS: 'viscosity',
	yieldStressPa: 'stress',
	'potLife.timeS': 'minutes',
	'potLife.massG': 'grams',
	'potLife.atC': 'temperature',
	mixS: 'minutes',
	...time('tackFree', 'minutes'),
	...time('recoatCloses', 'hours'),
	...time('demold', 'hours'),
	...time('dry', 'minutes'),
	shoreA: 'plain',
	shoreD: 'plain',
	linearShrinkagePct: 'percent',
	meltsAtC: 'temperature',
	poursAtC: 'temperature',
	heatLimitC: 'temperature',
	elongationPct: 'percent',
	tearNPerMm: 'tear',
	modulusMPa: 'modulus',
	arealG: 'areal',
	spreadGPerM2: 'areal',
	'kits.*.massG': 'mass',
	'kits.*.price': 'plain',
	shelfLifeDays: 'days',
	'volatiles.*.fraction': 'fractionPct',
	heatJPerG: 'heat',
	specificHeatJPerGK: 'heatCapacity',
	'useTemperature.minC': 'temperature',
	'useTemperature.maxC': 'temperature'
};
