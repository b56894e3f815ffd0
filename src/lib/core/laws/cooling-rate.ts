import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_TIME_S } from '../quantity/limits';

export const cupCoolingLaw: Law = {
	id: 'cup-cooling',
	name: 'How fast a cup loses its heat',
	formula: 'λ = h · (6/d) / (ρ · c), d the width of a cup as wide as high',
	source:
		'lumped capacitance (Incropera et al., ch. 5); h = 8 W/(m²·K), low in the range 2 to 25 for free convection of gases (Çengel), so it errs hot',
	validity: 'thin plastic or paper cup standing free in still air, 1 g to 100 kg'
};

export const filmCoolingLaw: Law = {
	id: 'film-cooling',
	name: 'How fast a coat loses its heat',
	formula: 'λ = (h + e / √(π·t)) / (ρ · c · d), e of the backing, t the time in contact',
	source:
		'lumped capacitance and semi-infinite solid at constant surface temperature (Incropera et al., ch. 5); e of rubber 574 J/(m²·K·√s) from k 0.2, ρ 1100, c 1500 (typical values, no source)',
	validity: 'coat of 0.05 to 100 mm, one face to still air, thick rubber, wood or plaster behind it'
};

/** Still air, W/(m²·K); Çengel gives 2 to 25 for free convection of gases. */
export const STILL_AIR_W_PER_M2K = 8;
/** √(k·ρ·c) of rubber or dry wood in J/(m²·K·√s); plaster takes up more, so this errs hot. */
const BACKING_EFFUSIVITY = Math.sqrt(0.2 * 1100 * 1500);

export type Body =
	| { kind: 'cup'; massG: number }
	/** `contactS` is how long heat has flowed into the backing; without it nothing flows there. */
	| { kind: 'film'; thicknessMm: number; contactS?: number };

function lossWPerM3K(body: Body, densityGPerMl: number): number {
	if (body.kind === 'cup') {
		assertWithin(body.massG, 1, 100_000, 'massG');
		const diameterM = Math.cbrt((4 * body.massG) / densityGPerMl / Math.PI) / 100;
		return (STILL_AIR_W_PER_M2K * 6) / diameterM;
	}
	assertWithin(body.thicknessMm, 0.05, 100, 'thicknessMm');
	if (body.contactS === undefined) return (STILL_AIR_W_PER_M2K * 1000) / body.thicknessMm;
	assertWithin(body.contactS, 1, MAX_TIME_S, 'contactS');
	const backing = BACKING_EFFUSIVITY / Math.sqrt(Math.PI * body.contactS);
	return ((STILL_AIR_W_PER_M2K + backing) * 1000) / body.thicknessMm;
}

/**
 * Share of its excess temperature that a body loses a second, in 1/s.
 *
 * @throws RangeError for a mass, thickness, density (0.05 to 20 g/mL) or heat capacity out of range
 */
export function coolingPerS(
	body: Body,
	material: { densityGPerMl: number; specificHeatJPerGK: number }
): number {
	const { densityGPerMl, specificHeatJPerGK } = material;
	assertWithin(densityGPerMl, 0.05, 20, 'densityGPerMl');
	assertWithin(specificHeatJPerGK, 0.5, 5, 'specificHeatJPerGK');
	return lossWPerM3K(body, densityGPerMl) / (densityGPerMl * specificHeatJPerGK * 1e6);
}
