import type { Law } from '../quantity/figure';
import type { LimitSet } from './exposure-limits';

export const dustLimitsLaw: Law = {
	id: 'dust-limits',
	name: 'Workplace limits for dust',
	formula: 'table',
	source:
		'29 CFR 1910.1000 and 1910.1053; NIOSH RELs; ACGIH TLVs; EH40/2005; the source stands beside each number',
	validity:
		'Shift averages in mg/m³. No flow is computed for dust: it is caught at the tool, wet work first.'
};

export type DustId =
	| 'crystalline silica'
	| 'plaster'
	| 'calcium carbonate'
	| 'talc'
	| 'other dust'
	| 'organic tin, as Sn';
/** Size fraction that is sampled. */
export type DustFraction = 'respirable' | 'inhalable' | 'total';

export interface DustLimit {
	dust: DustId;
	set: LimitSet;
	fraction: DustFraction;
	mgPerM3: number;
	source: string;
}

const PNOR = '29 CFR 1910.1000 Table Z-1 (from memory)';
const REL = 'NIOSH Pocket Guide 2005-151 (from memory)';
const WEL = 'EH40/2005 4th ed. 2020 (from memory)';
const COSHH = 'COSHH general dust values, EH40/2005 4th ed. 2020 (from memory)';
const TLV = 'ACGIH TLV (from memory)';

const list = (
	dust: DustId,
	rows: [LimitSet, DustFraction, number, string][]
): readonly DustLimit[] =>
	rows.map(([set, fraction, mgPerM3, source]) => ({ dust, set, fraction, mgPerM3, source }));

export const DUST_LIMITS: readonly DustLimit[] = [
	...list('crystalline silica', [
		['OSHA PEL', 'respirable', 0.05, '29 CFR 1910.1053, action level 0.025'],
		['NIOSH REL', 'respirable', 0.05, REL],
		['ACGIH TLV', 'respirable', 0.025, TLV],
		['UK WEL', 'respirable', 0.1, 'EH40 addendum 2006']
	]),
	...list('plaster', [
		['OSHA PEL', 'total', 15, PNOR],
		['OSHA PEL', 'respirable', 5, PNOR],
		['NIOSH REL', 'total', 10, REL],
		['NIOSH REL', 'respirable', 5, REL],
		['ACGIH TLV', 'inhalable', 10, TLV],
		['UK WEL', 'inhalable', 10, WEL],
		['UK WEL', 'respirable', 4, WEL]
	]),
	...list('calcium carbonate', [
		['OSHA PEL', 'total', 15, PNOR],
		['OSHA PEL', 'respirable', 5, PNOR],
		['NIOSH REL', 'total', 10, REL],
		['NIOSH REL', 'respirable', 5, REL],
		['UK WEL', 'inhalable', 10, WEL],
		['UK WEL', 'respirable', 4, WEL]
	]),
	...list('talc', [
		['NIOSH REL', 'respirable', 2, REL],
		['ACGIH TLV', 'respirable', 2, TLV],
		['UK WEL', 'respirable', 1, WEL]
	]),
	...list('other dust', [
		['OSHA PEL', 'total', 15, PNOR],
		['OSHA PEL', 'respirable', 5, PNOR],
		['ACGIH TLV', 'inhalable', 10, `${TLV}, guideline`],
		['ACGIH TLV', 'respirable', 3, `${TLV}, guideline`],
		['UK WEL', 'inhalable', 10, COSHH],
		['UK WEL', 'respirable', 4, COSHH]
	]),
	...list('organic tin, as Sn', [
		['OSHA PEL', 'total', 0.1, PNOR],
		['NIOSH REL', 'total', 0.1, REL],
		['ACGIH TLV', 'total', 0.1, TLV],
		['UK WEL', 'total', 0.1, WEL]
	])
];

/**
 * The strictest limit for a size fraction of a dust among the chosen lists; null when none of them
 * has one, which is not a sign that the dust is harmless.
 */
export function strictestDustLimit({
	dust,
	fraction,
	sets
}: {
	dust: DustId;
	fraction: DustFraction;
	sets: readonly LimitSet[];
}): DustLimit | null {
	const found = DUST_LIMITS.filter(
		(limit) => limit.dust === dust && limit.fraction === fraction && sets.includes(limit.set)
	);
	return [...found].sort((a, b) => a.mgPerM3 - b.mgPerM3)[0] ?? null;
}
