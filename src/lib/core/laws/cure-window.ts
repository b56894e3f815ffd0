import type { Law } from '../quantity/figure';
import { roundDownTo, roundUpTo } from '../quantity/rounding';
import { assertWithin } from '../quantity/assert-within';
import { timeAtTemperatureS, type CureRate } from './cure-rate';

export const cureWindowLaw: Law = {
	id: 'cure-window',
	name: 'A window of the data sheet at the shop’s temperature',
	formula: 'opens later, shuts sooner: t · k(T_sheet) / k(T) over the spread of T',
	source: 'Arrhenius or Q10; rounding to the safe side: common practice, no source',
	validity: 'as the rate; the clock says when to try, the test decides'
};

/** Waits are told in whole minutes. */
const MINUTE_S = 60;

/**
 * From when to when, in seconds: the opening as the coldest, the shutting as the warmest place of
 * the shop asks for, each rounded to the safe side by a minute.
 *
 * @param sheet - times at `temperatureC`; `shutS` is null when the window does not shut
 * @param room - `spreadK` is how far a place may differ from the room, 0 to 10
 * @returns `isOpen` false when the spread is so wide that the window shuts before it opens
 */
export function cureWindowS(
	sheet: { openS: number; shutS: number | null; temperatureC: number },
	room: { temperatureC: number; spreadK: number },
	rate: CureRate
): { openS: number; shutS: number | null; isOpen: boolean } {
	assertWithin(room.spreadK, 0, 10, 'spreadK');
	const at = (timeS: number, temperatureC: number) =>
		timeAtTemperatureS({ timeS, temperatureC: sheet.temperatureC }, temperatureC, rate);

	const openS = roundUpTo(at(sheet.openS, room.temperatureC - room.spreadK), MINUTE_S);
	if (sheet.shutS === null) return { openS, shutS: null, isOpen: true };
	const shutS = roundDownTo(at(sheet.shutS, room.temperatureC + room.spreadK), MINUTE_S);
	return { openS, shutS, isOpen: shutS > openS };
}
