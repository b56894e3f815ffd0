import { buildupLaw, concentrationAfter, purgeLaw, timeToPpm } from '../laws/buildup';
import { vaporFlowM3PerH } from '../laws/ppm';
import { shiftAverage, shiftAverageLaw } from '../laws/shift-average';
import { SUBSTANCES } from '../laws/substances';
import type { AirRelease } from './air-releases';
import { flowInput, mixingInput, type AirRoom } from './air-room';
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
			const vaporM3PerH = (rate: number) =>
				vaporFlowM3PerH({
					releaseGPerMin: rate,
					molarMassGPerMol: substance.molarMassGPerMol.value,
					temperatureC: draft.temperatureC
				});
			// Above saturation nothing evaporates any more, whatever the mass balance says.
			const held = (ppm: number) => Math.min(ppm, ceilingPpm ?? ppm);
			const rising = (afterS: number, rate = releaseGPerMin) =>
				held(
					concentrationAfter({ ...air, vaporM3PerH: vaporM3PerH(rate), startPpm: 0, afterS }).ppm
				);
			const peakPpm = rising(untilS);
			const targetPpm = limit ? limit.ppm * DEFAULTS.clearShare.value : null;
			const clearFrom = (startPpm: number, endPpm: number): number | null =>
				startPpm <= endPpm
					? 0
					: timeToPpm({ ...air, vaporM3PerH: 0, startPpm, targetPpm: endPpm }).timeS;
			const clearS =
				targetPpm === null || substance.sensitizer ? null : clearFrom(peakPpm, targetPpm);
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
				...inherited(draft, inputs, (rate = 0) => rising(untilS, rate)),
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
						(rate = 0) => clearFrom(rising(untilS, rate), targetPpm) ?? Number.NaN
					),
					note: 'Cups, rags and wet coats go on giving off vapor: take them out first. Never an all-clear.'
				});
			}
			const periods = up.slice(1).map(({ atS, ppm }, i) => ({
				concentration: (ppm + (up[i]?.ppm ?? 0)) / 2,
				timeS: atS - (up[i]?.atS ?? 0)
			}));
			const highest = computed('C', 'level when the work ends', peakPpm, 'ppm', `${path}.peakPpm`);
			// The whole curve rises and falls with its end, held or not.
			const averageAt = (endPpm: number): number =>
				peakPpm > 0 ? (shiftAverage(periods) * endPpm) / peakPpm : 0;
			return {
				peakPpm,
				shiftAveragePpm: withinLaw(draft, 'air', `Average over a shift, ${what}`, () =>
					traced(draft, `${path}.shiftAveragePpm`, {
						label: `${what}: average over eight hours, for one who stays throughout`,
						value: shiftAverage(periods),
						unit: 'ppm',
						law: shiftAverageLaw,
						inputs: [highest],
						...inherited(draft, [highest], (endPpm = 0) => averageAt(endPpm))
					})
				),
				curve: [...up, ...down],
				clearWaitS: clearS
			};
		}) ?? NOTHING
	);
}
