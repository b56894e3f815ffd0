import {
	filmReleaseGPerMin,
	filmReleaseLaw,
	poolReleaseGPerMin,
	POOL_RELEASE_FACTOR,
	poolReleaseLaw
} from '../laws/evaporation';
import { SUBSTANCES, type SubstanceId } from '../laws/substances';
import { vaporPressurePa } from '../laws/vapor-pressure';
import type { FigureInput, Law } from '../quantity/figure';
import { around } from '../quantity/range';
import type { Sheet } from '../materials/sheet';
import { takenHazards } from '../materials/usual-hazards';
import { DEFAULTS, defaultInput } from './defaults';
import { assumed, computed, constant, fromSheet, type Draft } from './trace';

/** One use of a material in the room: what is laid, how often, and how long each gives off vapor. */
export interface AirUse {
	phase: string;
	title: string;
	sheet: Sheet;
	/** Laid each time. */
	massG: number;
	areaCm2: number;
	overS: number;
	times: number;
	/** Tasks of the calendar with which each of these times begins. */
	taskIds: readonly string[];
}

export interface AirRelease {
	use: AirUse;
	substanceId: SubstanceId;
	isAssumed: boolean;
	fraction: number | null;
	releaseGPerMin: number;
	law: Law;
	inputs: FigureInput[];
	/** The release again, from the values of its inputs in their order. */
	of: (...values: number[]) => number;
}

interface Volatile {
	substance: SubstanceId;
	fraction: number;
}

/**
 * What evaporates when the data sheet does not say: typical make-up of such products, from memory.
 * Styrene: the share of a polyester that leaves during hand lay-up, not all that is in it.
 */
export const TYPICAL_VOLATILES: Partial<Record<Sheet['family'], Volatile & { hazard: string }>> = {
	'paste wax': { substance: 'stoddard solvent', fraction: 0.65, hazard: 'solvent' },
	'polyvinyl alcohol': { substance: 'ethanol', fraction: 0.3, hazard: 'solvent' },
	shellac: { substance: 'ethanol', fraction: 0.7, hazard: 'solvent' },
	polyester: { substance: 'styrene', fraction: 0.06, hazard: 'styrene' }
};

/** Substances that a use releases, each with its rate. */
export function releasesOf(draft: Draft, use: AirUse): AirRelease[] {
	const { sheet } = use;
	const hazards = takenHazards(sheet);
	const typical = TYPICAL_VOLATILES[sheet.family];
	const isTypical = typical !== undefined && hazards.includes(typical.hazard);
	const volatiles: readonly Volatile[] = sheet.volatiles ?? (isTypical ? [typical] : []);
	const dried = volatiles.map(({ substance, fraction }): AirRelease => ({
		use,
		of: (massG = 0, volatileFraction = 0, overS = 0) =>
			filmReleaseGPerMin({ appliedG: massG, volatileFraction, overS: Math.max(1, overS) }),
		substanceId: substance,
		isAssumed: !sheet.volatiles,
		fraction,
		releaseGPerMin: filmReleaseGPerMin({
			appliedG: use.massG,
			volatileFraction: fraction,
			overS: Math.max(1, use.overS)
		}),
		law: filmReleaseLaw,
		inputs: [
			{
				...computed('m', 'laid each time', use.massG, 'g'),
				...around(use.massG, 2 * DEFAULTS.spreadFraction.value)
			},
			sheet.volatiles
				? fromSheet('f', 'share that evaporates', fraction, 'fraction')
				: assumed('f', 'share that evaporates (typical, from memory)', fraction, 'fraction'),
			computed('t', 'dries or cures within', use.overS, 's')
		]
	}));
	const saysIsocyanate = volatiles.some(({ substance }) => SUBSTANCES[substance].isocyanate);
	return hazards.includes('isocyanate') && !saysIsocyanate
		? [...dried, isocyanateRelease(draft, use)]
		: dried;
}

/** MDI from the wet surface, as if all of it were pure MDI: the upper end. */
function isocyanateRelease(draft: Draft, use: AirUse): AirRelease {
	const pressure = substancePressurePa('mdi', draft.temperatureC) ?? 0;
	const molarMass = SUBSTANCES.mdi.molarMassGPerMol.value;
	const releaseOf = (
		areaCm2 = 0,
		airMPerS = 0,
		vaporPressurePa = 0,
		molarMassGPerMol = 0,
		trueShare = 1
	) =>
		trueShare *
		poolReleaseGPerMin({
			areaCm2,
			airMPerS,
			vaporPressurePa,
			molarMassGPerMol,
			temperatureC: draft.temperatureC
		});
	return {
		use,
		of: releaseOf,
		substanceId: 'mdi',
		isAssumed: true,
		fraction: null,
		releaseGPerMin: releaseOf(use.areaCm2, DEFAULTS.poolAirMPerS.value, pressure, molarMass),
		law: poolReleaseLaw,
		inputs: [
			{
				...computed('A', 'wet surface', use.areaCm2, 'cm2'),
				...around(use.areaCm2, 2 * DEFAULTS.areaSpread.value)
			},
			defaultInput('u', 'poolAirMPerS'),
			constant('P', SUBSTANCES.mdi.vaporPressurePa?.source ?? 'MDI', pressure, 'Pa'),
			constant('M', 'molar mass of MDI, g/mol (IUPAC)', molarMass, 'count'),
			{
				...constant('x', 'true over computed: the law holds within a factor of two', 1, 'count'),
				low: 1 / POOL_RELEASE_FACTOR,
				high: POOL_RELEASE_FACTOR
			}
		]
	};
}

/** Vapor pressure at the room's temperature: the fit where it holds, else the table's value; null without either. */
export function substancePressurePa(id: SubstanceId, temperatureC: number): number | null {
	try {
		const fit = vaporPressurePa(id, temperatureC);
		if (fit) return fit.pressurePa;
	} catch (error) {
		if (!(error instanceof RangeError)) throw error;
	}
	return SUBSTANCES[id].vaporPressurePa?.value ?? null;
}
