import { buildupLaw, concentrationAfter, purgeLaw, timeToPpm, type Room } from '../laws/buildup';
import { eightHourPpm, exposureDoseLaw } from '../laws/exposure-dose';
import { SHIFT_S } from '../laws/shift-average';
import { SUBSTANCES } from '../laws/substances';
import type { AirRelease } from './air-releases';
import { releaseAt } from './air-pulse';
import { flowInput, mixingInput, volumeInput, type AirRoom } from './air-room';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { computed, inherited, traced, type Draft } from './trace';
import { withinLaw } from './within-law';

type AirStep = NonNullable<Plan['air']>['steps'][number];

const HALF_POINTS = 10;
const NOTHING = { peakPpm: null, shiftAveragePpm: null, curve: [], clearWaitS: null };

/** How the level in the room rises while the work goes on and falls after it. */
export function levelsIn(
	draft: Draft,
	room: AirRoom,
	{ use, substanceId, releaseGPerMin }: AirRelease,
	limit: AirStep['limit'],
	ceilingPpm: number | null,
	path: string
): Pick<AirStep, 'peakPpm' | 'shiftAveragePpm' | 'curve' | 'clearWaitS'> {
	const substance = SUBSTANCES[substanceId];
	const what = `${substance.name} from ${use.sheet.name}`;
	const untilS = use.overS * use.times;
	const inputs = [
		computed('ṁ', 'release', releaseGPerMin, 'g/min', `${path}.releaseGPerMin`),
		flowInput(room),
		mixingInput(draft, room),
		volumeInput(room),
		computed('t', 'all coats one after another', untilS, 's')
	];
	const nominal = [releaseGPerMin, room.flowM3PerH, room.mixingFactor, room.roomM3] as const;
	const releaseOf = releaseAt(draft, substanceId, untilS, ceilingPpm);
	// Above saturation nothing evaporates any more, whatever the mass balance says.
	const held = (ppm: number): number => Math.min(ppm, ceilingPpm ?? ppm);
	const risen = (afterS: number, ...given: number[]): number =>
		held(concentrationAfter({ ...releaseOf(...given), startPpm: 0, afterS }).ppm);
	return (
		withinLaw(draft, 'air', `Build-up, ${what}`, () => {
			const air = { ...releaseOf(...nominal), vaporM3PerH: 0 };
			const peakPpm = risen(untilS, ...nominal);
			const targetPpm = limit ? limit.ppm * DEFAULTS.clearShare.value : null;
			const clearFrom = (startPpm: number, endPpm: number, given: Room): number | null =>
				startPpm <= endPpm ? 0 : timeToPpm({ ...given, startPpm, targetPpm: endPpm }).timeS;
			const clearS =
				targetPpm === null || substance.sensitizer ? null : clearFrom(peakPpm, targetPpm, air);
			const fallS = clearS ?? (4 * 3600 * Math.LN2 * room.roomM3) / air.effectiveM3PerH;
			const at = (i: number) => i / HALF_POINTS;
			const up = Array.from({ length: HALF_POINTS + 1 }, (_, i) => ({
				atS: untilS * at(i),
				ppm: risen(untilS * at(i), ...nominal)
			}));
			const down = Array.from({ length: fallS > 0 ? HALF_POINTS : 0 }, (_, i) => ({
				atS: untilS + fallS * at(i + 1),
				ppm: concentrationAfter({
					...air,
					startPpm: peakPpm,
					afterS: fallS * at(i + 1)
				}).ppm
			}));
			traced(draft, `${path}.peakPpm`, {
				label: `${what}: level in the room when the work ends`,
				value: peakPpm,
				unit: 'ppm',
				law: buildupLaw,
				inputs,
				...inherited(draft, inputs, (...given) => risen(untilS, ...given)),
				note: 'Averaged over the room; where you breathe it is higher.'
			});
			if (clearS !== null && targetPpm !== null) {
				traced(draft, `${path}.clearWaitS`, {
					label: `${what}: wait after the last vapor`,
					value: clearS,
					unit: 's',
					law: purgeLaw,
					inputs: [...inputs, defaultInput('share of the limit', 'clearShare')],
					...inherited(
						draft,
						inputs,
						(...given) =>
							clearFrom(risen(untilS, ...given), targetPpm, {
								...releaseOf(...given),
								vaporM3PerH: 0
							}) ?? Number.NaN
					),
					note: 'Cups, rags and wet coats go on giving off vapor: take them out first. Never an all-clear.'
				});
			}
			// Of work longer than a shift the last eight hours are the worst that a shift can hold.
			const fromS = Math.max(0, untilS - SHIFT_S);
			const averageOf = (...given: number[]): number => eightHourPpm(releaseOf(...given), fromS);
			return {
				peakPpm,
				shiftAveragePpm: traced(draft, `${path}.shiftAveragePpm`, {
					label: `${what}: average over eight hours with this step alone, for one who stays throughout`,
					value: averageOf(...nominal),
					unit: 'ppm',
					law: exposureDoseLaw,
					inputs,
					...inherited(draft, inputs, averageOf),
					note: 'The work and what lingers in the air after it; other steps of the same shift add to it.'
				}),
				curve: [...up, ...down],
				clearWaitS: clearS
			};
		}) ?? NOTHING
	);
}
