import {
	airChangesLaw,
	airChangesPerH,
	measuredFlowLaw,
	measuredFlowM3PerH
} from '../laws/air-changes';
import { halfLifeS, buildupLaw } from '../laws/buildup';
import { LIMIT_SETS } from '../laws/exposure-limits';
import { mixtureIndex, mixtureLaw } from '../laws/mixture';
import { neverAllClear } from '../laws/never-all-clear';
import type { Sheet } from '../materials/sheet';
import { takenHazards } from '../materials/usual-hazards';
import { mixturesOf } from './air-mixtures';
import { dustOf, unknowns, warnOfLevels } from './air-cautions';
import { releasesOf, type AirUse } from './air-releases';
import { flowInput, mixingInput, volumeInput, type AirRoom } from './air-room';
import { airShifts } from './air-shifts';
import { airStep } from './air-step';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { computed, entered, enteredOr, inherited, traced, type Draft } from './trace';
import { withinLaw } from './within-law';

type AirSection = NonNullable<Plan['air']>;

/** Vapor of every step against the chosen limits, with the room's flow; never an all-clear. */
export function airSection(
	draft: Draft,
	uses: readonly AirUse[],
	used: readonly Sheet[],
	calendar: Plan['calendar']
): AirSection {
	const { shop } = draft.inputs;
	const { flowM3PerH, flowFrom } = flowOf(draft);
	const room: AirRoom = {
		roomM3: traced(draft, 'air.roomM3', {
			label: 'Volume of the room',
			value: shop.roomVolumeM3 ?? DEFAULTS.roomM3.value,
			unit: 'm3',
			law: airChangesLaw,
			inputs: [enteredOr(shop.roomVolumeM3, DEFAULTS.roomM3.value, 'V', 'volume of the room', 'm3')]
		}),
		flowM3PerH,
		mixingFactor: shop.mixingFactor ?? DEFAULTS.mixingFactor.value,
		limitSets: shop.limitSets ?? LIMIT_SETS
	};
	const releases = uses.flatMap((use) => releasesOf(draft, use));
	const steps = releases.map((release, i) => airStep(draft, room, release, `air.steps.${i}`));
	const hasSensitizer = steps.some(({ isSensitizer }) => isSensitizer) || used.some(sensitizes);
	const shifts = airShifts(draft, room, releases, steps, calendar);
	warnOfLevels(draft, steps, shifts, flowFrom);
	const flow = flowInput(room);
	const mixing = mixingInput(draft, room);
	const volume = volumeInput(room);
	return {
		...room,
		limitSets: [...room.limitSets],
		flowFrom,
		airChangesPerH: traced(draft, 'air.airChangesPerH', {
			label: 'Air changes',
			value: airChangesPerH({ flowM3PerH, roomM3: room.roomM3 }),
			unit: '1/h',
			law: airChangesLaw,
			inputs: [flow, volume],
			...inherited(draft, [flow, volume], (flowOf = 0, volumeM3 = 0) =>
				airChangesPerH({ flowM3PerH: flowOf, roomM3: volumeM3 })
			)
		}),
		halfLifeS: traced(draft, 'air.halfLifeS', {
			label: 'A level halves within',
			value: halfLifeS({ effectiveM3PerH: flowM3PerH / room.mixingFactor, roomM3: room.roomM3 }),
			unit: 's',
			law: buildupLaw,
			inputs: [flow, mixing, volume],
			...inherited(draft, [flow, mixing, volume], (flowOf = 0, factor = 1, volumeM3 = 0) =>
				halfLifeS({ effectiveM3PerH: flowOf / factor, roomM3: volumeM3 })
			)
		}),
		steps,
		shifts,
		mixtures: mixturesOf(draft, room, releases),
		mixtureIndex: worstIndex(draft, steps),
		dust: dustOf(room, used),
		allClear: false,
		cautions: [
			...neverAllClear([{ sensitizer: hasSensitizer }]).cautions,
			...unknowns(used, steps),
			...(shop.ventilationNote ? [shop.ventilationNote] : [])
		]
	};
}

const sensitizes = (sheet: Sheet): boolean =>
	takenHazards(sheet).some((id) => id === 'isocyanate' || id === 'sensitizer');

/** Outdoor air: as measured, from the grille's air speed, or what leaks in by itself. */
function flowOf(draft: Draft): { flowM3PerH: number; flowFrom: AirSection['flowFrom'] } {
	const { measuredFanM3PerH, fanGrille, roomVolumeM3 } = draft.inputs.shop;
	const label = 'Outdoor air of the room';
	if (measuredFanM3PerH !== undefined) {
		const flowM3PerH = traced(draft, 'air.flowM3PerH', {
			label,
			value: measuredFanM3PerH,
			unit: 'm3/h',
			law: measuredFlowLaw,
			inputs: [entered('Q', 'as measured', measuredFanM3PerH, 'm3/h')]
		});
		return { flowM3PerH, flowFrom: 'measured' };
	}
	const byGrille =
		fanGrille && withinLaw(draft, 'air', 'Flow of the fan', () => measuredFlowM3PerH(fanGrille));
	if (fanGrille && byGrille) {
		const flowM3PerH = traced(draft, 'air.flowM3PerH', {
			label,
			value: byGrille,
			unit: 'm3/h',
			law: measuredFlowLaw,
			inputs: [
				entered('v', 'mean air speed at the grille', fanGrille.meanMPerS, 'm/s'),
				entered('A', 'opening', fanGrille.areaCm2, 'cm2'),
				entered('k', 'free share', fanGrille.freeFraction, 'fraction')
			]
		});
		return { flowM3PerH, flowFrom: 'grille' };
	}
	const roomM3 = roomVolumeM3 ?? DEFAULTS.roomM3.value;
	const leaks = [
		defaultInput('n', 'airChanges'),
		enteredOr(roomVolumeM3, DEFAULTS.roomM3.value, 'V', 'volume of the room', 'm3')
	];
	const flowM3PerH = traced(draft, 'air.flowM3PerH', {
		label: `${label}, assumed`,
		value: DEFAULTS.airChanges.value * roomM3,
		unit: 'm3/h',
		law: airChangesLaw,
		inputs: leaks,
		...inherited(draft, leaks, (changesPerH = 0, volumeM3 = 0) => changesPerH * volumeM3),
		note: 'No fan was measured, so this is a room with its doors shut.'
	});
	return { flowM3PerH, flowFrom: 'assumed' };
}

function worstIndex(draft: Draft, steps: AirSection['steps']): AirSection['mixtureIndex'] {
	let worst: AirSection['mixtureIndex'] = null;
	for (const phase of new Set(steps.map((step) => step.phase))) {
		const exposures = steps.flatMap(({ phase: of, limit, peakPpm, isSensitizer }) =>
			of === phase && limit && peakPpm !== null
				? [{ concentration: peakPpm, limit: limit.ppm, sensitizer: isSensitizer }]
				: []
		);
		if (exposures.length === 0) continue;
		const { index, exceeded } = mixtureIndex(exposures);
		if (index > (worst?.index ?? -1)) worst = { phase, index, exceeded };
	}
	if (!worst) return null;
	const { phase } = worst;
	const shares = steps.flatMap((step, i) =>
		step.phase === phase && step.limit && step.peakPpm !== null
			? [
					computed(`C_${i + 1}`, step.substance, step.peakPpm, 'ppm', `air.steps.${i}.peakPpm`),
					computed(`L_${i + 1}`, step.limit.set, step.limit.ppm, 'ppm', `air.steps.${i}.limit.ppm`)
				]
			: []
	);
	traced(draft, 'air.mixtureIndex.index', {
		label: `Shares of the limits together, ${phase}`,
		value: worst.index,
		unit: 'count',
		law: mixtureLaw,
		inputs: shares,
		...inherited(draft, shares, (...given) =>
			given.reduce((sum, ppm, i) => (i % 2 === 0 ? sum + ppm / (given[i + 1] ?? 1) : sum), 0)
		),
		note: 'Above 1 is too much; 1 or less is still no all-clear.'
	});
	return worst;
}
