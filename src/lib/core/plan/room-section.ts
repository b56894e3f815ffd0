import {
	lowestSurfaceC,
	dewPointC,
	dewPointLaw,
	SURFACE_MARGIN_K,
	surfaceMargin,
	surfaceMarginLaw
} from '../laws/dew-point';
import {
	filmDryingLaw,
	filmDryingS,
	STILL_AIR_M_PER_S,
	waterEvaporationGPerM2H,
	waterEvaporationLaw
} from '../laws/drying';
import { absoluteHumidityGPerM3, absoluteHumidityLaw, moistureWarning } from '../laws/humidity';
import type { Sheet } from '../materials/sheet';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { measuredAir, measuredSurface, ofAir } from './measured-air';
import {
	computed,
	entered,
	enteredOr,
	fromSheet,
	inherited,
	traced,
	warn,
	type Draft
} from './trace';
import { withinLaw } from './within-law';

type RoomSection = NonNullable<Plan['room']>;

/** Dew point, surface margin, water in the air and the drying of the film. */
export function roomSection(draft: Draft, used: readonly Sheet[]): RoomSection {
	const { temperatureC, humidityPct, inputs } = draft;
	const air = { temperatureC, humidityPct };
	const airInputs = measuredAir(draft);
	const dewC = traced(draft, 'room.dewPointC', {
		label: 'Dew point',
		value: dewPointC(air),
		unit: 'C',
		law: dewPointLaw,
		inputs: airInputs,
		...inherited(draft, airInputs, ofAir(dewPointC))
	});
	const surfaceC = inputs.surfaceTemperatureC ?? temperatureC;
	const margin = surfaceMargin(air, surfaceC);
	const dew = computed('T_d', 'dew point', dewC, 'C', 'room.dewPointC');
	const marginInputs = [measuredSurface(draft), dew];
	traced(draft, 'room.surfaceMarginK', {
		label: 'Pattern above the dew point',
		value: margin.marginK,
		unit: 'K',
		law: surfaceMarginLaw,
		inputs: marginInputs,
		...inherited(draft, marginInputs, (surface = 0, dewPoint = 0) => surface - dewPoint),
		note: 'Measure the coldest place: a pattern from a cold store stays cold for hours.'
	});
	traced(draft, 'room.lowestSurfaceC', {
		label: 'Pattern no colder than',
		value: lowestSurfaceC(air),
		unit: 'C',
		law: surfaceMarginLaw,
		inputs: [dew],
		...inherited(draft, [dew], (dewPoint = 0) => dewPoint + SURFACE_MARGIN_K)
	});
	const losing = [...airInputs, airSpeedInput(draft)];
	const isMoistureSensitive = used.some(({ family }) => family === 'urethane');
	if (!margin.isEnough) warnOfDew(draft, surfaceC, dewC, isMoistureSensitive);
	return {
		dewPointC: dewC,
		lowestSurfaceC: lowestSurfaceC(air),
		surfaceC,
		surfaceMarginK: margin.marginK,
		isSurfaceFit: margin.isEnough,
		absoluteHumidityGPerM3: traced(draft, 'room.absoluteHumidityGPerM3', {
			label: 'Water in the air',
			value: absoluteHumidityGPerM3(air),
			unit: 'g/m3',
			law: absoluteHumidityLaw,
			inputs: airInputs,
			...inherited(draft, airInputs, ofAir(absoluteHumidityGPerM3))
		}),
		moisture: moistureWarning(air),
		isMoistureSensitive,
		evaporationGPerM2H: traced(draft, 'room.evaporationGPerM2H', {
			label: 'What a wet surface loses',
			value: waterEvaporationGPerM2H(air, airSpeed(draft)),
			unit: 'g/(m2·h)',
			law: waterEvaporationLaw,
			inputs: losing,
			...inherited(draft, losing, (t = 0, rh = 0, v = 0) =>
				waterEvaporationGPerM2H({ temperatureC: t, humidityPct: rh }, v)
			)
		}),
		filmDrying: filmDryingBand(draft)
	};
}

function warnOfDew(draft: Draft, surfaceC: number, dewC: number, isSensitive: boolean): void {
	const marginK = surfaceC - dewC;
	const text = `The pattern at ${surfaceC} °C lies ${marginK.toFixed(1)} °C (${(1.8 * marginK).toFixed(1)} °F) above the dew point of ${dewC.toFixed(1)} °C; 3 °C (5.4 °F) are asked for (ISO 8502-4). Below that, water can settle on it unseen. Warm the pattern, or dry the room.`;
	warn(draft, isSensitive ? 'refuse' : 'warn', 'dew-margin', 'room', text);
}

const airSpeed = ({ inputs }: Draft): number => inputs.shop.airSpeedMPerS ?? STILL_AIR_M_PER_S;
const airSpeedInput = ({ inputs }: Draft) =>
	enteredOr(inputs.shop.airSpeedMPerS, STILL_AIR_M_PER_S, 'v', 'air speed over the film', 'm/s');

/** Earliest and latest drying of one pass of the film; null without film or in air that dries nothing. */
export function filmDryingBand(draft: Draft): RoomSection['filmDrying'] {
	const { film } = draft.inputs.materials;
	if (!film) return null;
	const spread = film.spreadGPerM2 ?? DEFAULTS.filmSpread.value;
	const wetMm = spread / 1000 / film.mixedDensityGPerMl;
	const alcohol = (film.volatiles ?? []).reduce((sum, { fraction }) => sum + fraction, 0);
	const waterFraction = film.volatiles
		? Math.max(0, 1 - alcohol - DEFAULTS.filmSolids.value)
		: DEFAULTS.filmWater.value;
	const air = { temperatureC: draft.temperatureC, humidityPct: draft.humidityPct };
	const band = withinLaw(draft, 'release', 'Drying time of the parting film', () =>
		filmDryingS({ wetMm, waterFraction }, air, airSpeed(draft))
	);
	if (!band) return null;
	const inputs = [
		film.spreadGPerM2
			? fromSheet('s', 'film for a square meter, grams', spread, 'g')
			: defaultInput('s', 'filmSpread'),
		computed('d', 'wet thickness', wetMm, 'mm'),
		film.volatiles
			? computed('f_w', 'water in the film', waterFraction, 'fraction')
			: defaultInput('f_w', 'filmWater'),
		entered('t', 'room temperature', draft.temperatureC, 'C'),
		entered('RH', 'relative humidity', draft.humidityPct, '%'),
		airSpeedInput(draft)
	];
	for (const [key, value] of [
		['lowS', band.lowS],
		['highS', band.highS]
	] as const) {
		traced(draft, `room.filmDrying.${key}`, {
			label: key === 'lowS' ? 'A pass of film dries no sooner than' : 'A pass of film is dry by',
			value,
			unit: 's',
			law: filmDryingLaw,
			inputs,
			low: band.lowS,
			high: band.highS,
			note: 'A band, not a time: touch decides.'
		});
	}
	return band;
}
