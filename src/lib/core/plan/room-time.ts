import {
	arrheniusLaw,
	cureRateFrom,
	q10Law,
	timeAtTemperatureS,
	type CureRate,
	type TimeAt
} from '../laws/cure-rate';
import { cureWindowLaw, cureWindowS } from '../laws/cure-window';
import type { FigureInput, Law } from '../quantity/figure';
import type { SheetTime } from '../materials/sheet';
import { DEFAULTS, defaultInput, type DefaultKey } from './defaults';
import { entered, fromSheet } from './trace';

export interface RoomTime {
	timeS: number;
	law: Law;
	inputs: FigureInput[];
	isDefault: boolean;
	/** Between the warmest and the coldest place of the room, when the shop says how far they differ. */
	range: { low: number; high: number } | null;
}

const MINUTE_S = 60;

/**
 * A data-sheet time at the room's temperature, in whole minutes rounded to the safe side; the
 * default when the sheet gives none.
 *
 * @param spreadK - how far a place in the room may differ from it: a wait is then counted in the
 *   coldest, a window in the warmest
 * @param safe - "later" for a wait, "sooner" for a window that shuts; "exact" is not rounded
 * @throws RangeError for a temperature outside −10 to 80 °C
 */
export function roomTime(given: {
	label: string;
	sheet: SheetTime | undefined;
	fallback: DefaultKey;
	temperatureC: number;
	spreadK?: number | undefined;
	safe: 'later' | 'sooner' | 'exact';
}): RoomTime {
	const { label, sheet, fallback, temperatureC, spreadK = 0, safe } = given;
	const at = sheet ?? { timeS: DEFAULTS[fallback].value, atC: DEFAULTS.referenceC.value };
	const points = [at, ...(sheet?.second ? [sheet.second] : [])].map(({ timeS, atC }) => ({
		timeS,
		temperatureC: atC
	}));
	const rate = cureRateFrom(points);
	const first = { timeS: at.timeS, temperatureC: at.atC };
	const exactS = timeAtTemperatureS(first, temperatureC, rate);
	const isSpread = spreadK > 0 && safe !== 'exact';
	const stated: FigureInput[] = sheet
		? [
				fromSheet('t_1', label, at.timeS, 's'),
				fromSheet('T_1', 'at the data sheet’s temperature', at.atC, 'C')
			]
		: [defaultInput('t_1', fallback), defaultInput('T_1', 'referenceC')];
	return {
		timeS: safe === 'exact' ? exactS : safeS(first, { temperatureC, spreadK }, rate, safe),
		law: isSpread ? cureWindowLaw : rate.kind === 'arrhenius' ? arrheniusLaw : q10Law,
		inputs: [
			...stated,
			entered('T_2', 'room temperature', temperatureC, 'C'),
			...(isSpread ? [entered('ΔT', 'how far a place may differ from it', spreadK, 'K')] : [])
		],
		isDefault: !sheet,
		range: isSpread
			? {
					low: safeS(first, { temperatureC, spreadK }, rate, 'sooner'),
					high: safeS(first, { temperatureC, spreadK }, rate, 'later')
				}
			: null
	};
}

function safeS(
	{ timeS, temperatureC }: TimeAt,
	room: { temperatureC: number; spreadK: number },
	rate: CureRate,
	safe: 'later' | 'sooner'
): number {
	const window = cureWindowS({ openS: timeS, shutS: timeS, temperatureC }, room, rate);
	return safe === 'later' ? window.openS : Math.max(MINUTE_S, window.shutS ?? 0);
}
