import { LIMIT_SETS } from '$lib/core/laws/exposure-limits';
import { DEFAULTS } from '$lib/core/plan/defaults';
import type { Shop } from '$lib/core/plan/shop';
import { displayQuantity } from '$lib/core/quantity/display';
import type { Unit } from '$lib/core/quantity/unit';
import { SHOP_LABELS } from './shop-label';

interface Fact {
	label: string;
	value: string;
}

/** What a shop may leave open, with the default that then counts said in words. */
export function optionalFacts(shop: Shop): Fact[] {
	const shown = (value: number, unit: Unit) => displayQuantity(value, unit, shop.units);
	const or = (value: number | undefined, unit: Unit, otherwise: string) =>
		value === undefined ? otherwise : shown(value, unit);
	const fact = (path: string, value: string): Fact => ({ label: SHOP_LABELS[path] ?? path, value });
	const { fanGrille } = shop;
	const grille = fanGrille
		? `${shown(fanGrille.meanMPerS, 'm/s')} over ${shown(fanGrille.areaCm2, 'cm2')}, ${shown(fanGrille.freeFraction, 'fraction')} open`
		: `not measured; ${DEFAULTS.airChanges.value} air changes an hour are assumed`;
	return [
		fact('nightTemperatureC', or(shop.nightTemperatureC, 'C', 'as by day')),
		fact('roomSpreadK', or(shop.roomSpreadK, 'K', 'not at all')),
		fact(
			'roomVolumeM3',
			or(shop.roomVolumeM3, 'm3', `not given; ${shown(DEFAULTS.roomM3.value, 'm3')} is assumed`)
		),
		fact('measuredFanM3PerH', or(shop.measuredFanM3PerH, 'm3/h', grille)),
		fact(
			'mixingFactor',
			or(shop.mixingFactor, 'count', `not given; ${DEFAULTS.mixingFactor.value} is assumed`)
		),
		fact('limitSets', (shop.limitSets ?? LIMIT_SETS).join(', ')),
		fact(
			'boardMm',
			or(shop.boardMm, 'mm', `not given; ${shown(DEFAULTS.boardMm.value, 'mm')} is assumed`)
		),
		fact(
			'moldLifePours',
			or(shop.moldLifePours, 'count', `not given; ${DEFAULTS.moldLifePours.value} is assumed`)
		),
		fact('asksTraining', shop.asksTraining ? 'asked for in date' : 'not asked for'),
		...(shop.ventilationNote ? [fact('ventilationNote', shop.ventilationNote)] : [])
	];
}
