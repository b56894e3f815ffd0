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
import { isOneNumber, type Range } from '../quantity/range';
import type { SheetTime } from '../materials/sheet';
import { DEFAULTS, defaultInput, type DefaultKey } from './defaults';
import { computed, entered, fromSheet } from './trace';

export interface RoomTime {
	/** The safe end of the range, the likely time for "exact". */
	timeS: number;
	law: Law;
	inputs: FigureInput[];
	isDefault: boolean;
	/** Between the warmest and the coldest place of the room, and between the ends of a Q10 that is a rule of thumb. */
	range: Range | null;
}

const MINUTE_S = 60;

/**
 * A data-sheet time at the room's temperature, in whole minutes; the default when the sheet gives none.
 * A wait takes the latest that is likely and a window the soonest, so that neither is told too early
 * or too late where room, thermometer or rule of thumb are off.
 *
 * @param spreadK - how far a place in the room may differ from it: a wait is then counted in the
 *   coldest, a window in the warmest
 * @param safe - "later" for a wait, "sooner" for a window that shuts; "exact" is the likely time, not rounded
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
	const { label, sheet, fallback, temperatureC, spreadK, safe } = given;
	const at = sheet ?? { timeS: DEFAULTS[fallback].value, atC: DEFAULTS.referenceC.value };
	const points = [at, ...(sheet?.second ? [sheet.second] : [])].map(({ timeS, atC }) => ({
		timeS,
		temperatureC: atC
	}));
	const rate = cureRateFrom(points);
	const first = { timeS: at.timeS, temperatureC: at.atC };
	const exactS = timeAtTemperatureS(first, temperatureC, rate);
	const offK = spreadK ?? DEFAULTS.thermometerK.value;
	const { low, high } = likelyEnds(first, { temperatureC, spreadK: offK }, rate, safe);
	const range = isOneNumber({ low, high }) ? null : { low, high };
	const stated: FigureInput[] = sheet
		? [
				fromSheet('t_1', label, at.timeS, 's'),
				fromSheet('T_1', 'at the data sheet’s temperature', at.atC, 'C')
			]
		: [defaultInput('t_1', fallback), defaultInput('T_1', 'referenceC')];
	return {
		timeS: safe === 'exact' ? exactS : safe === 'later' ? high : low,
		law: safe !== 'exact' ? cureWindowLaw : rate.kind === 'arrhenius' ? arrheniusLaw : q10Law,
		inputs: [
			...stated,
			entered('T_2', 'room temperature', temperatureC, 'C'),
			...(spreadK === undefined
				? [defaultInput('ΔT', 'thermometerK')]
				: [entered('ΔT', 'how far a place may differ from it', spreadK, 'K')]),
			rate.kind === 'arrhenius'
				? computed(
						'E_a',
						'from the two times of the data sheet',
						rate.activationEnergyKjPerMol,
						'kJ/mol'
					)
				: q10Input(range !== null)
		],
		isDefault: !sheet,
		range
	};
}

/** Between the warmest and the coldest place, at every rate that it may follow. */
function likelyEnds(
	first: TimeAt,
	place: { temperatureC: number; spreadK: number },
	rate: CureRate,
	safe: 'later' | 'sooner' | 'exact'
): Range {
	const at = (offK: number, each: CureRate) =>
		timeAtTemperatureS(first, place.temperatureC + offK, each);
	const times = likelyRates(rate).map((each) => ({
		soonest: safe === 'exact' ? at(place.spreadK, each) : safeS(first, place, each, 'sooner'),
		latest: safe === 'exact' ? at(-place.spreadK, each) : safeS(first, place, each, 'later')
	}));
	return {
		low: Math.min(...times.map(({ soonest }) => soonest)),
		high: Math.max(...times.map(({ latest }) => latest))
	};
}

/** The rule of thumb; at the data sheet's own temperature its range moves nothing and is not shown. */
function q10Input(moves: boolean): FigureInput {
	const input = defaultInput('Q10', 'q10');
	if (moves) return input;
	const { symbol, label, value, unit, origin } = input;
	return { symbol, label, value, unit, origin };
}

/** The rates that a time may follow: the one of two measured times, or a rule of thumb at its ends. */
export function likelyRates(rate: CureRate): CureRate[] {
	if (rate.kind === 'arrhenius') return [rate];
	const { low, high } = DEFAULTS.q10.range;
	return [low, rate.factor, high].map((factor) => ({ kind: 'q10', factor }));
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
