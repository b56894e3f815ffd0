import type { Air } from '../laws/dew-point';
import type { FigureInput } from '../quantity/figure';
import { DEFAULTS } from './defaults';
import { entered, enteredOr, type Draft } from './trace';

/** A temperature as a thermometer of the shop shows it, give or take. */
const read = (input: FigureInput, valueC: number): FigureInput => ({
	...input,
	low: valueC - DEFAULTS.thermometerK.value,
	high: valueC + DEFAULTS.thermometerK.value
});

/** Temperature and humidity of the room, each as far off as its instrument may be. */
export function measuredAir({ temperatureC, humidityPct }: Draft): FigureInput[] {
	const offPct = DEFAULTS.hygrometerPct.value;
	return [
		read(entered('t', 'room temperature', temperatureC, 'C'), temperatureC),
		{
			...entered('RH', 'relative humidity', humidityPct, '%'),
			// No air is drier or damper than the law takes.
			low: Math.max(1, humidityPct - offPct),
			high: Math.min(100, humidityPct + offPct)
		}
	];
}

/** The coldest place of the pattern; as the room where nobody measured it. */
export function measuredSurface({ inputs, temperatureC }: Draft): FigureInput {
	const { surfaceTemperatureC } = inputs;
	const label = 'coldest place of the pattern, as the room unless measured';
	const input = enteredOr(surfaceTemperatureC, temperatureC, 'T_surface', label, 'C');
	return read(input, surfaceTemperatureC ?? temperatureC);
}

/** A law of air as a function of the two inputs of `measuredAir`. */
export const ofAir =
	(law: (air: Air) => number) =>
	(temperatureC = Number.NaN, humidityPct = Number.NaN): number =>
		law({ temperatureC, humidityPct });
