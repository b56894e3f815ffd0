import type { Law } from '../quantity/figure';
import {
	EXPOSURE_LIMITS,
	type ExposureLimit,
	type LimitKind,
	type LimitSet
} from './exposure-limits';
import { LIST_MOLAR_VOLUME_L, ppmFromMgPerM3 } from './ppm';
import { SUBSTANCES, type SubstanceId } from './substances';

/** g/mol of an isocyanate group: 12.011 + 14.007 + 15.999 (IUPAC standard atomic weights). */
export const NCO_G_PER_MOL = 42.017;
/** Both isocyanates here are diisocyanates. */
const NCO_GROUPS = 2;

export const strictestLimitLaw: Law = {
	id: 'strictest-limit',
	name: 'The stricter of the chosen lists',
	formula: 'L = min L_i in ppm; mg/m³ turned by the list’s own molar volume',
	source: 'Comparison of the lists; NCO by mole, two groups a molecule',
	validity: 'Limits of one kind (average, short, ceiling) are compared with each other only.'
};

/** A limit in ppm, turned from mg/m³ or from NCO by its own list's molar volume. */
export function limitPpm({ substance, set, value, unit }: ExposureLimit): number {
	if (unit === 'ppm') return value;
	const molarMassGPerMol = SUBSTANCES[substance].molarMassGPerMol.value;
	const molarVolumeL = set === 'UK WEL' ? LIST_MOLAR_VOLUME_L.UK : LIST_MOLAR_VOLUME_L.US;
	const mgPerM3 =
		unit === 'mg/m3' ? value : (value * molarMassGPerMol) / (NCO_GROUPS * NCO_G_PER_MOL);
	return ppmFromMgPerM3(mgPerM3, { molarMassGPerMol, molarVolumeL });
}

/**
 * The strictest limit of a kind among the chosen lists, with its list and source; null when none of
 * them has one, which is not a sign that the substance is harmless.
 */
export function strictestLimit({
	substance,
	sets,
	kind
}: {
	substance: SubstanceId;
	sets: readonly LimitSet[];
	kind: LimitKind;
}): (ExposureLimit & { limitPpm: number }) | null {
	const found = EXPOSURE_LIMITS.filter(
		(limit) => limit.substance === substance && limit.kind === kind && sets.includes(limit.set)
	).map((limit) => ({ ...limit, limitPpm: limitPpm(limit) }));
	return found.sort((a, b) => a.limitPpm - b.limitPpm)[0] ?? null;
}
