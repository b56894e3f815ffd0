import { arrheniusLaw, cureRateFrom, q10Law, timeAtTemperatureS } from '../laws/cure-rate';
import type { FigureInput, Law } from '../quantity/figure';
import { roundDownTo, roundUpTo } from '../quantity/rounding';
import type { SheetTime } from '../materials/sheet';
import { DEFAULTS, defaultInput, type DefaultKey } from './defaults';
import { entered, fromSheet } from './trace';

export interface RoomTime {
	timeS: number;
	law: Law;
	inputs: FigureInput[];
	isDefault: boolean;
}

const MINUTE_S = 60;

/**
 * A data-sheet time at the room's temperature, in whole minutes rounded to the safe side; the
 * default when the sheet gives none.
 *
 * @param safe - "later" for a wait, "sooner" for a window that shuts; "exact" is not rounded
 * @throws RangeError for a temperature outside −10 to 80 °C
 */
export function roomTime(given: {
	label: string;
	sheet: SheetTime | undefined;
	fallback: DefaultKey;
	temperatureC: number;
	safe: 'later' | 'sooner' | 'exact';
}): RoomTime {
	const { label, sheet, fallback, temperatureC, safe } = given;
	const at = sheet ?? { timeS: DEFAULTS[fallback].value, atC: DEFAULTS.referenceC.value };
	const points = [at, ...(sheet?.second ? [sheet.second] : [])].map(({ timeS, atC }) => ({
		timeS,
		temperatureC: atC
	}));
	const rate = cureRateFrom(points);
	const [first] = points;
	const exactS = first ? timeAtTemperatureS(first, temperatureC, rate) : at.timeS;
	const stated: FigureInput[] = sheet
		? [
				fromSheet('t_1', label, at.timeS, 's'),
				fromSheet('T_1', 'at the data sheet’s temperature', at.atC, 'C')
			]
		: [defaultInput('t_1', fallback), defaultInput('T_1', 'referenceC')];
	return {
		timeS: rounded(exactS, safe),
		law: rate.kind === 'arrhenius' ? arrheniusLaw : q10Law,
		inputs: [...stated, entered('T_2', 'room temperature', temperatureC, 'C')],
		isDefault: !sheet
	};
}

function rounded(timeS: number, safe: 'later' | 'sooner' | 'exact'): number {
	if (safe === 'exact') return timeS;
	return safe === 'later'
		? roundUpTo(timeS, MINUTE_S)
		: Math.max(MINUTE_S, roundDownTo(timeS, MINUTE_S));
}
