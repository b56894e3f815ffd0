import { lowestSurfaceC } from '../laws/dew-point';
import { moistureWarning } from '../laws/humidity';
import { neverAllClear } from '../laws/never-all-clear';
import { HAZARDS, type HazardId } from '../content/vocabulary';
import type { Sheet } from '../materials/sheet';
import { warn, type Draft } from './trace';

/** What the room and its air say against the materials. */
export function warnOfRoom(
	draft: Draft,
	used: readonly Sheet[],
	hazards: readonly HazardId[]
): void {
	const { temperatureC, humidityPct } = draft;
	for (const sheet of used) {
		const range = sheet.useTemperature;
		if (!range || (temperatureC >= range.minC && temperatureC <= range.maxC)) continue;
		const text = `The room is at ${temperatureC} °C; ${sheet.name} is made for ${range.minC} to ${range.maxC} °C. Bring the room, the parts and the pattern into that range.`;
		warn(draft, 'warn', 'room-temperature', 'room', text);
	}
	if (used.some(({ family }) => family === 'urethane'))
		warnOfMoisture(draft, temperatureC, humidityPct);
	warnOfAir(draft, hazards);
}

function warnOfMoisture(draft: Draft, temperatureC: number, humidityPct: number): void {
	const air = { temperatureC, humidityPct };
	const state = moistureWarning(air);
	if (state === 'fit') return;
	const text = `At ${temperatureC} °C and ${humidityPct}% the air can make a urethane foam: dry the room, keep part A shut, and keep the pattern above ${lowestSurfaceC(air).toFixed(1)} °C (dew point and a margin).`;
	warn(draft, state === 'stop' ? 'refuse' : 'warn', 'moisture', 'room', text);
}

const IN_THE_AIR: readonly HazardId[] = ['isocyanate', 'styrene', 'solvent', 'peroxide', 'amine'];

function warnOfAir(draft: Draft, hazards: readonly HazardId[]): void {
	const found = hazards.filter((id) => IN_THE_AIR.includes(id));
	if (found.length === 0) return;
	const { cautions } = neverAllClear([{ sensitizer: found.includes('isocyanate') }]);
	const named = found.map((id) => HAZARDS[id].label.toLowerCase());
	const text = `In the air of this work: ${named.join(', ')}. No number in this plan says that the air is safe to breathe. ${cautions.join(' ')}`;
	warn(draft, 'warn', 'vapor', 'people', text);
}
