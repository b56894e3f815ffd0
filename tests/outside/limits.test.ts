import { DUST_LIMITS, type DustId } from '../../src/lib/core/laws/dust-limits';
import {
	EXPOSURE_LIMITS,
	type LimitKind,
	type LimitSet
} from '../../src/lib/core/laws/exposure-limits';
import type { SubstanceId } from '../../src/lib/core/laws/substances';
import { outsideCase } from './outside-case';

const IDLH = 'NIOSH, Documentation for Immediately Dangerous concentrations (May 1994)';
const LISTED: [SubstanceId, LimitSet, LimitKind, value: number, source: string][] = [
	['mdi', 'OSHA PEL', 'ceiling', 0.02, `${IDLH}, 101-68-8`],
	['mdi', 'NIOSH REL', 'average', 0.005, `${IDLH}, 101-68-8`],
	['isopropanol', 'OSHA PEL', 'average', 400, `${IDLH}, 67-63-0`],
	['isopropanol', 'NIOSH REL', 'short', 500, `${IDLH}, 67-63-0`],
	['ethanol', 'OSHA PEL', 'average', 1000, `${IDLH}, 64-17-5`],
	['methanol', 'OSHA PEL', 'average', 200, `${IDLH}, 67-56-1`],
	['styrene', 'NIOSH REL', 'average', 50, `${IDLH}, 100-42-5`],
	['styrene', 'NIOSH REL', 'short', 100, `${IDLH}, 100-42-5`],
	['heptane', 'NIOSH REL', 'average', 85, `${IDLH}, 142-82-5`],
	['heptane', 'OSHA PEL', 'average', 500, `${IDLH}, 142-82-5`],
	['xylene', 'NIOSH REL', 'average', 100, `${IDLH}, 95-47-6`]
];
for (const [substance, set, kind, value, source] of LISTED) {
	outsideCase({
		what: `${set} of ${substance}, ${kind}`,
		source,
		unit: 'ppm',
		expected: value,
		got: () =>
			EXPOSURE_LIMITS.find(
				(limit) => limit.substance === substance && limit.set === set && limit.kind === kind
			)?.value ?? NaN,
		tolerance: 0
	});
}

const DUSTS: [DustId, LimitSet, value: number, source: string][] = [
	['crystalline silica', 'OSHA PEL', 0.05, '29 CFR 1910.1053(c)'],
	['crystalline silica', 'UK WEL', 0.1, 'HSE, addendum of July 2006 to EH40/2005']
];
for (const [dust, set, value, source] of DUSTS) {
	outsideCase({
		what: `${set} of respirable ${dust}`,
		source,
		unit: 'mg/m3',
		expected: value,
		got: () =>
			DUST_LIMITS.find(
				(limit) => limit.dust === dust && limit.set === set && limit.fraction === 'respirable'
			)?.mgPerM3 ?? NaN,
		tolerance: 0
	});
}
