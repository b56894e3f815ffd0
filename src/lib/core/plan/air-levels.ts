import { buildupLaw, concentrationAfter, purgeLaw, timeToPpm } from '../laws/buildup';
import { vaporFlowM3PerH } from '../laws/ppm';
import { shiftAverage, shiftAverageLaw } from '../laws/shift-average';
import { SUBSTANCES } from '../laws/substances';
import type { AirRelease } from './air-releases';
import { flowInput, mixingInput, type AirRoom } from './air-room';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { computed, traced, type Draft } from './trace';
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
	const effectiveM3PerH = room.flowM3PerH / room.mixingFactor;
	const air = { effectiveM3PerH, roomM3: room.roomM3, sensitizer: substance.sensitizer };
	const untilS = use.overS * use.times;
	const inputs = [
		computed('ṁ', 'release', releaseGPerMin, 'g/min', `${path}.releaseGPerMin`),
		flowInput(room),
		mixingInput(draft, room),
		computed('V', 'volume of the room', room.roomM3, 'm3', 'air.roomM3'),
		computed('t', 'all coats one after another', untilS, 's')
	];
	return (
		withinLaw(draft, 'air', `Build-up, ${what}`, () => {
			const vaporM3PerH = vaporFlowM3PerH({
				releaseGPerMin,
				molarMassGPerMol: substance.molarMassGPerMol.value,
				temperatureC: draft.temperatureC
			});
			// Above saturation nothing evaporates any more, whatever the mass balance says.
			const held = (ppm: number) => Math.min(ppm, ceilingPpm ?? ppm);
			const rising = (afterS: number) =>
				held(concentrationAfter({ ...air, vaporM3PerH, startPpm: 0, afterS }).ppm);
			const peakPpm = rising(untilS);
			const targetPpm = limit ? limit.ppm * DEFAULTS.clearShare.value : null;
			const clearS =
				targetPpm === null || substance.sensitizer
					? null
					: peakPpm <= targetPpm
						? 0
						: timeToPpm({ ...air, vaporM3PerH: 0, startPpm: peakPpm, targetPpm }).timeS;
			const fallS = clearS ?? (4 * 3600 * Math.LN2 * room.roomM3) / effectiveM3PerH;
			const at = (i: number) => i / HALF_POINTS;
			const up = Array.from({ length: HALF_POINTS + 1 }, (_, i) => ({
				atS: untilS * at(i),
				ppm: rising(untilS * at(i))
			}));
			const down = Array.from({ length: fallS > 0 ? HALF_POINTS : 0 }, (_, i) => ({
				atS: untilS + fallS * at(i + 1),
				ppm: concentrationAfter({
					...air,
					vaporM3PerH: 0,
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
				note: 'Averaged over the room; where you breathe it is higher.'
			});
			if (clearS !== null) {
				traced(draft, `${path}.clearWaitS`, {
					label: `${what}: wait after the last vapor`,
					value: clearS,
					unit: 's',
					law: purgeLaw,
					inputs: [...inputs, defaultInput('share of the limit', 'clearShare')],
					note: 'Cups, rags and wet coats go on giving off vapor: take them out first. Never an all-clear.'
				});
			}
			const periods = up.slice(1).map(({ atS, ppm }, i) => ({
				concentration: (ppm + (up[i]?.ppm ?? 0)) / 2,
				timeS: atS - (up[i]?.atS ?? 0)
			}));
			return {
				peakPpm,
				shiftAveragePpm: withinLaw(draft, 'air', `Average over a shift, ${what}`, () =>
					traced(draft, `${path}.shiftAveragePpm`, {
						label: `${what}: average over eight hours, for one who stays throughout`,
						value: shiftAverage(periods),
						unit: 'ppm',
						law: shiftAverageLaw,
						inputs: [computed('C', 'level when the work ends', peakPpm, 'ppm', `${path}.peakPpm`)]
					})
				),
				curve: [...up, ...down],
				clearWaitS: clearS
			};
		}) ?? NOTHING
	);
}
