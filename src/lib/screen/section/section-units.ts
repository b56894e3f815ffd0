import { getContext, setContext } from 'svelte';
import { MM_PER_FT, MM_PER_IN } from '$lib/core/quantity/customary';
import type { UnitSystem } from '$lib/core/quantity/display';

const KEY = Symbol('units of drawings');

/** Lets every drawing below this component speak the shop's units. */
export function shareUnits(units: () => UnitSystem): void {
	setContext(KEY, units);
}

/** The units in which drawings are read here; SI where nobody has said. */
export function sharedUnits(): UnitSystem {
	return getContext<(() => UnitSystem) | undefined>(KEY)?.() ?? 'SI';
}

const ROUND_MM = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
const ROUND_IN = [1, 2, 4, 8, 16, 32, 64].map((parts) => [parts / 16, parts] as const);
const FEET = [1, 2, 4, 8, 16];

const MM_BARS = ROUND_MM.map((mm) => ({ mm, text: `${mm} mm` }));
const US_BARS = [
	...ROUND_IN.map(([inches, parts]) => ({
		mm: inches * MM_PER_IN,
		text: `${parts < 16 ? `1/${16 / parts}` : inches} in`
	})),
	...FEET.map((feet) => ({ mm: feet * MM_PER_FT, text: `${feet} ft` }))
];

/** The longest round length that fits, and what it is called: "50 mm", "1/4 in", "2 ft". */
export function scaleBar(mostMm: number, system: UnitSystem): { mm: number; text: string } {
	const bars = system === 'US' ? US_BARS : MM_BARS;
	return bars.findLast(({ mm }) => mm <= mostMm) ?? bars[0] ?? { mm: 1, text: '1 mm' };
}
