import { PHASE_IDS } from '../content/vocabulary';
import { lowestSurfaceC, dewPointC, surfaceMargin, type Air } from '../laws/dew-point';
import { moistureWarning } from '../laws/humidity';
import type { Sheet } from '../materials/sheet';
import type { ProcessContext } from './context';
import type { Said } from './deviation-words';
import type { EventOf } from './events';

export type RoomReading = Air & Pick<EventOf<'room.read'>, 'surfaceC'>;

/** Up to here the times of a plan are taken to hold in another room than planned; common practice, no source. */
const OFF_C = 3;
const OFF_HUMIDITY_PCT = 20;
const MOIST = ['fit', 'caution', 'stop'];

const tenth = (value: number) => Math.round(value * 10) / 10;
const isBefore = ({ phase }: ProcessContext, last: (typeof PHASE_IDS)[number]) =>
	PHASE_IDS.indexOf(phase) <= PHASE_IDS.indexOf(last);
/** Nothing is on the pattern yet. */
const isPatternBare = (c: ProcessContext) =>
	isBefore(c, 'build') && c.coatIndex === 0 && c.laidG === 0;

/**
 * What a reading of the room says against the plan and the data sheets in use, and of the pattern's surface
 * against the dew point: each in words that say what to do. Empty once shell and glove are made.
 */
export function roomFaults(c: ProcessContext, reading: RoomReading): Said[] {
	if (!isBefore(c, 'shell')) return [];
	const sheets = sheetsToCome(c);
	const moist = ofMoisture(c, reading, sheets);
	return [
		...ofSurface(c, reading),
		...moist,
		...ofRange(reading, sheets),
		...(moist.length === 0 ? ofPlan(c, reading) : [])
	];
}

/** What is still to be mixed, each once. */
function sheetsToCome(c: ProcessContext): Sheet[] {
	const { materials } = c.plan.inputs;
	const used = [...c.coats.slice(c.coatIndex), ...c.rounds.slice(c.roundIndex)];
	const ids = used.map(({ materialId }) => materialId);
	const sheets = [materials.detail, materials.build, materials.shell];
	return [...new Set(sheets)].flatMap((sheet) => (sheet && ids.includes(sheet.id) ? [sheet] : []));
}

/** How far the bare pattern lies above the dew point, when that is too little. */
export function ofSurface(c: ProcessContext, { surfaceC, ...air }: RoomReading): Said[] {
	if (surfaceC === undefined || !isPatternBare(c)) return [];
	const { marginK, isEnough } = surfaceMargin(air, surfaceC);
	if (isEnough) return [];
	const given = { surfaceC: tenth(surfaceC), dewC: tenth(dewPointC(air)), marginK: tenth(marginK) };
	return [{ key: 'surfaceDew', given }];
}

function ofMoisture(c: ProcessContext, air: Air, sheets: readonly Sheet[]): Said[] {
	const { roomTemperatureC: temperatureC, roomHumidityPct: plannedPct } = c.plan;
	const planned = moistureWarning({ temperatureC, humidityPct: plannedPct });
	const found = moistureWarning(air);
	if (!sheets.some(({ family }) => family === 'urethane')) return [];
	if (MOIST.indexOf(found) <= MOIST.indexOf(planned)) return [];
	const given = {
		humidityPct: tenth(air.humidityPct),
		roomC: tenth(air.temperatureC),
		plannedPct,
		leastC: Math.ceil(lowestSurfaceC(air) * 10) / 10
	};
	return [{ key: 'roomMoist', given }];
}

function ofRange({ temperatureC }: Air, sheets: readonly Sheet[]): Said[] {
	return sheets.flatMap(({ name, useTemperature: range }): Said[] =>
		range && (temperatureC < range.minC || temperatureC > range.maxC)
			? [{ key: 'roomRange', given: { name, roomC: tenth(temperatureC), ...range } }]
			: []
	);
}

function ofPlan({ plan }: ProcessContext, { temperatureC, humidityPct }: Air): Said[] {
	const isOff =
		Math.abs(temperatureC - plan.roomTemperatureC) > OFF_C ||
		Math.abs(humidityPct - plan.roomHumidityPct) > OFF_HUMIDITY_PCT;
	if (!isOff) return [];
	const given = {
		roomC: tenth(temperatureC),
		humidityPct: tenth(humidityPct),
		plannedC: plan.roomTemperatureC,
		plannedPct: plan.roomHumidityPct
	};
	return [{ key: 'roomOff', given }];
}
