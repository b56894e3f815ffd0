import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import type { SubstanceId } from './substances';

export const vaporPressureLaw: Law = {
	id: 'vapor-pressure',
	name: 'Vapor pressure of a pure liquid',
	formula: 'log₁₀(P / Pa) = A − B / (T + C), T in K',
	source:
		'Antoine equation; constants of Poling, Prausnitz & O’Connell 2001, 5th ed., app. A, as stored in the Python library chemicals 1.5.2',
	validity: 'Inside the temperature range of each fit; pure liquid. About 1 to 5%.'
};

interface Antoine {
	a: number;
	b: number;
	c: number;
	minC: number;
	maxC: number;
	source: string;
}

const POLING = 'Poling et al. 2001, 5th ed., via the Python library chemicals 1.5.2';

const ANTOINE: Partial<Readonly<Record<SubstanceId, Antoine>>> = {
	acetone: { a: 9.2184, b: 1197.01, c: -45.09, minC: -20, maxC: 60, source: POLING },
	ethanol: { a: 10.33675, b: 1648.22, c: -42.232, minC: 4, maxC: 60, source: POLING },
	isopropanol: { a: 10.24268, b: 1580.92, c: -53.54, minC: 9, maxC: 60, source: POLING },
	methanol: { a: 10.20277, b: 1580.08, c: -33.65, minC: -10, maxC: 60, source: POLING },
	toluene: { a: 9.05043, b: 1327.62, c: -55.525, minC: 14, maxC: 60, source: POLING },
	heptane: { a: 9.02023, b: 1263.909, c: -56.718, minC: 5, maxC: 60, source: POLING },
	mek: {
		a: 9.1386,
		b: 1232.63,
		c: -54.46,
		minC: 15,
		maxC: 60,
		source: `${POLING}; range not stated there, kept to room temperature`
	},
	styrene: {
		a: 9.0593,
		b: 1459.909,
		c: -59.551,
		minC: 15,
		maxC: 60,
		source:
			'NIST Chemistry WebBook, fit from 32 °C; below it is extrapolated and overstates by about 7%, the safe side'
	}
};

/**
 * Vapor pressure, pascals, with the source of its constants; null for a substance without a fit.
 *
 * @throws RangeError outside the fit's temperature range
 */
export function vaporPressurePa(
	substance: SubstanceId,
	temperatureC: number
): { pressurePa: number; source: string } | null {
	const fit = ANTOINE[substance];
	if (!fit) return null;
	assertWithin(temperatureC, fit.minC, fit.maxC, `temperatureC of ${substance}`);
	const pressurePa = 10 ** (fit.a - fit.b / (temperatureC + 273.15 + fit.c));
	return { pressurePa, source: fit.source };
}
