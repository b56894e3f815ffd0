import {
	drainageLaw,
	drainedFilmMm,
	meanDrainedFilmMm,
	puddleDepthMm,
	puddleLaw
} from '../laws/drainage';
import { neededYieldStressPa, sagLaw, splitCoatsMm } from '../laws/sag';
import { sagFlowLaw, sagSpeedMmPerS } from '../laws/sag-flow';
import { around } from '../quantity/range';
import { DEFAULTS } from './defaults';
import { holdingLimitMm, type GloveBuild } from './glove-build';
import { thickestCoatLaw } from './mixed-uses';
import type { Coat, Plan } from './plan';
import { computed, entered, fromSheet, inherited, traced, tradeLaw, type Draft } from './trace';
import { withinLaw } from './within-law';

type WallsSection = NonNullable<Plan['walls']>;

const slopeLaw = tradeLaw(
	'coated-slope',
	'Slope of the steepest wall',
	'θ from 1° to 90°; a wall that leans out counts as upright',
	'a coat under an overhang hangs and may fall off: look at it'
);

/** What stays on the walls: build coats against their yield stress, detail coats while they drain. */
export function wallsSection(
	draft: Draft,
	build: GloveBuild,
	coats: readonly Coat[]
): WallsSection {
	const { build: sheet } = draft.inputs.materials;
	const slopeDeg = Math.min(90, Math.max(1, draft.surface.steepestWallDeg));
	const densityGPerMl = sheet.mixedDensityGPerMl;
	const thickestCoatMm = Math.max(...build.buildMm);
	traced(draft, 'walls.slopeDeg', {
		label: 'Steepest wall, as coats see it',
		value: slopeDeg,
		unit: 'deg',
		law: slopeLaw,
		inputs: [computed('θ', 'steepest wall of the pattern', draft.surface.steepestWallDeg, 'deg')]
	});
	traced(draft, 'walls.thickestCoatMm', {
		label: 'Thickest build coat',
		value: thickestCoatMm,
		unit: 'mm',
		law: thickestCoatLaw,
		inputs: coats.flatMap(({ kind, title, thicknessMm }, i) =>
			kind === 'build'
				? computed(`h_${i + 1}`, title, thicknessMm, 'mm', `coats.${i}.thicknessMm`)
				: []
		),
		...around(thickestCoatMm, 2 * DEFAULTS.spreadFraction.value)
	});
	const wall = [
		fromSheet('ρ', 'density of the mix', densityGPerMl, 'g/mL'),
		computed('θ', 'steepest wall', slopeDeg, 'deg', 'walls.slopeDeg')
	];
	const coat = computed('h', 'thickest coat', thickestCoatMm, 'mm', 'walls.thickestCoatMm');
	const { yieldStressPa, mixedViscosityPaS } = sheet;
	const limitMm = yieldStressPa === undefined ? null : holdingLimitMm(draft);
	if (limitMm !== null) {
		traced(draft, 'walls.holdingLimitMm', {
			label: 'Thickest coat that stays on the wall',
			value: limitMm,
			unit: 'mm',
			law: sagLaw,
			inputs: [fromSheet('τ_y', 'yield stress', yieldStressPa ?? 0, 'Pa'), ...wall]
		});
	}
	const runs = limitMm !== null && thickestCoatMm > limitMm;
	const neededPa = neededYieldStressPa({ thicknessMm: thickestCoatMm, densityGPerMl, slopeDeg });
	return {
		slopeDeg,
		holdingLimitMm: limitMm,
		thickestCoatMm,
		neededYieldStressPa: traced(draft, 'walls.neededYieldStressPa', {
			label: 'Yield stress that the thickest coat needs',
			value: neededPa,
			unit: 'Pa',
			law: sagLaw,
			inputs: [coat, ...wall],
			// In proportion to the thickness.
			...around(neededPa, 2 * DEFAULTS.spreadFraction.value)
		}),
		sagSpeedMmPerS:
			limitMm === null || (runs && mixedViscosityPaS === undefined)
				? null
				: withinLaw(draft, 'coats', 'How fast the thickest coat runs', () =>
						traced(draft, 'walls.sagSpeedMmPerS', {
							label: 'How fast the thickest coat runs',
							value: runs
								? sagSpeedMmPerS({
										thicknessMm: thickestCoatMm,
										yieldStressPa: yieldStressPa ?? 0,
										consistencyPaSn: mixedViscosityPaS ?? 0,
										flowIndex: 1,
										densityGPerMl,
										slopeDeg
									})
								: 0,
							unit: 'mm/s',
							law: sagFlowLaw,
							inputs: [
								coat,
								computed('h_0', 'what stays', limitMm, 'mm', 'walls.holdingLimitMm'),
								...wall
							]
						})
					),
		holdingCoatsMm:
			runs && limitMm !== null
				? withinLaw(draft, 'coats', 'Coats that all stay on the wall', () =>
						splitCoatsMm({ thicknessesMm: build.buildMm, limitMm })
					)
				: null,
		detail: detailFilm(draft, coats)
	};
}

function detailFilm(draft: Draft, coats: readonly Coat[]): WallsSection['detail'] {
	const sheet = draft.inputs.materials.detail;
	const first = coats[0];
	if (!sheet?.mixedViscosityPaS || first?.kind !== 'detail' || first.brushBackS === null)
		return null;
	const { heightMm } = draft.surface;
	const { narrowestRecessMm, deepestRecessMm } = draft.inputs.pattern.detail;
	const film = {
		initialMm: first.thicknessMm,
		viscosityPaS: sheet.mixedViscosityPaS,
		densityGPerMl: sheet.mixedDensityGPerMl,
		timeS: first.brushBackS
	};
	const inputs = [
		computed('h_0', 'as laid', first.thicknessMm, 'mm', 'coats.0.thicknessMm'),
		fromSheet('μ', 'viscosity of the mix', sheet.mixedViscosityPaS, 'Pa·s'),
		fromSheet('ρ', 'density of the mix', sheet.mixedDensityGPerMl, 'g/mL'),
		computed('t', 'until it is brushed back', first.brushBackS, 's', 'coats.0.brushBackS'),
		computed('H', 'height of the wall', heightMm, 'mm', 'surface.heightMm')
	];
	const recess = {
		wallHeightMm: deepestRecessMm ?? 0,
		recessWidthMm: narrowestRecessMm ?? 0,
		walls: 2
	} as const;
	const likely = (of: (laid: typeof film) => number) =>
		inherited(draft, inputs, (initialMm = 0, viscosityPaS = 0, densityGPerMl = 0, timeS = 0) =>
			of({ initialMm, viscosityPaS, densityGPerMl, timeS })
		);
	return withinLaw(draft, 'coats', 'What drains off a detail coat', () => ({
		laidMm: first.thicknessMm,
		drainedMm: traced(draft, 'walls.detail.drainedMm', {
			label: 'Left at half height before brushing back',
			value: drainedFilmMm({ ...film, belowTopMm: heightMm / 2 }),
			unit: 'mm',
			law: drainageLaw,
			inputs,
			...likely((laid) => drainedFilmMm({ ...laid, belowTopMm: heightMm / 2 }))
		}),
		meanMm: traced(draft, 'walls.detail.meanMm', {
			label: 'Left on the wall on average before brushing back',
			value: meanDrainedFilmMm({ ...film, wallHeightMm: heightMm }),
			unit: 'mm',
			law: drainageLaw,
			inputs,
			...likely((laid) => meanDrainedFilmMm({ ...laid, wallHeightMm: heightMm }))
		}),
		puddleMm:
			narrowestRecessMm === undefined || deepestRecessMm === undefined
				? null
				: traced(draft, 'walls.detail.puddleMm', {
						label: 'Puddle in the narrowest recess',
						value: puddleDepthMm({ ...film, ...recess }),
						...likely((laid) => puddleDepthMm({ ...laid, ...recess })),
						unit: 'mm',
						law: puddleLaw,
						inputs: [
							...inputs,
							entered('w', 'narrowest recess', narrowestRecessMm, 'mm'),
							entered('H_r', 'deepest recess', deepestRecessMm, 'mm')
						],
						note: 'Puddles keep air out of the recess: leave them, brush the walls.'
					})
	}));
}
