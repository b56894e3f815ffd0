import type { Law } from '../quantity/figure';
import type { SubstanceId } from './substances';

export const exposureLimitsLaw: Law = {
	id: 'exposure-limits',
	name: 'Workplace exposure limits',
	formula: 'table',
	source:
		'29 CFR 1910.1000; NIOSH Recommended Exposure Limits; ACGIH TLV; EH40/2005 4th ed. 2020; the source and edition stand beside each number',
	validity:
		'Lists change: check the edition in force where you work. A limit is the most allowed, not a safe level.'
};

export const LIMIT_SETS = ['OSHA PEL', 'NIOSH REL', 'ACGIH TLV', 'UK WEL'] as const;
export type LimitSet = (typeof LIMIT_SETS)[number];
/** `average`: over the shift (NIOSH up to 10 h); `short`: over 15 minutes; `ceiling`: never above. */
export type LimitKind = 'average' | 'short' | 'ceiling';

export interface ExposureLimit {
	substance: SubstanceId;
	set: LimitSet;
	kind: LimitKind;
	value: number;
	/** `mg/m3 as NCO` counts only the isocyanate groups. */
	unit: 'ppm' | 'mg/m3' | 'mg/m3 as NCO';
	/** Absorbed through the skin as well. */
	skin?: true;
	source: string;
}

const OSHA = '29 CFR 1910.1000 Table Z-1';
const OSHA_Z2 = '29 CFR 1910.1000 Table Z-2';
const REL = 'NIOSH IDLH documentation, May 1994';
const REL_M = 'NIOSH Pocket Guide 2005-151 (from memory)';
const TLV_M = (year: string): string => `ACGIH TLV ${year} (from memory)`;
const WEL_M = 'EH40/2005 4th ed. 2020 (from memory)';

type Row = [LimitSet, LimitKind, number, string, ExposureLimit['unit']?];

const rows = (substance: SubstanceId, list: Row[], skin?: true): ExposureLimit[] =>
	list.map(([set, kind, value, source, unit = 'ppm']) => ({
		substance,
		set,
		kind,
		value,
		unit,
		source,
		...(skin && { skin })
	}));

const NCO: Row[] = [
	['UK WEL', 'average', 0.02, 'EH40/2005 Table 1, isocyanates as NCO, Sen', 'mg/m3 as NCO'],
	['UK WEL', 'short', 0.07, 'EH40/2005 Table 1, isocyanates as NCO, Sen', 'mg/m3 as NCO']
];

export const EXPOSURE_LIMITS: readonly ExposureLimit[] = [
	...rows('mdi', [
		['OSHA PEL', 'ceiling', 0.02, `${OSHA} (polymeric MDI has none)`],
		['NIOSH REL', 'average', 0.005, REL],
		['NIOSH REL', 'ceiling', 0.02, `${REL}, 10 min`],
		['ACGIH TLV', 'average', 0.005, TLV_M('2020')],
		...NCO
	]),
	...rows(
		'tdi',
		[
			['OSHA PEL', 'ceiling', 0.02, OSHA],
			['ACGIH TLV', 'average', 0.001, 'ACGIH TLV 2016, inhalable fraction and vapor'],
			['ACGIH TLV', 'short', 0.005, 'ACGIH TLV 2016, inhalable fraction and vapor'],
			...NCO
		],
		true
	),
	...rows('acetone', [
		['OSHA PEL', 'average', 1000, OSHA],
		['NIOSH REL', 'average', 250, 'OSHA chemical sampling information, acetone'],
		['ACGIH TLV', 'average', 250, TLV_M('2015')],
		['ACGIH TLV', 'short', 500, TLV_M('2015')],
		['UK WEL', 'average', 500, WEL_M],
		['UK WEL', 'short', 1500, WEL_M]
	]),
	...rows('ethanol', [
		['OSHA PEL', 'average', 1000, OSHA],
		['NIOSH REL', 'average', 1000, REL],
		['ACGIH TLV', 'short', 1000, TLV_M('2009')],
		['UK WEL', 'average', 1000, WEL_M]
	]),
	...rows('isopropanol', [
		['OSHA PEL', 'average', 400, OSHA],
		['NIOSH REL', 'average', 400, REL],
		['NIOSH REL', 'short', 500, REL],
		['ACGIH TLV', 'average', 200, TLV_M('2001')],
		['ACGIH TLV', 'short', 400, TLV_M('2001')],
		['UK WEL', 'average', 400, WEL_M],
		['UK WEL', 'short', 500, WEL_M]
	]),
	...rows(
		'methanol',
		[
			['OSHA PEL', 'average', 200, OSHA],
			['NIOSH REL', 'average', 200, REL],
			['NIOSH REL', 'short', 250, REL],
			['ACGIH TLV', 'average', 200, TLV_M('2009')],
			['ACGIH TLV', 'short', 250, TLV_M('2009')],
			['UK WEL', 'average', 200, WEL_M],
			['UK WEL', 'short', 250, WEL_M]
		],
		true
	),
	...rows('styrene', [
		['OSHA PEL', 'average', 100, OSHA_Z2],
		['OSHA PEL', 'ceiling', 200, OSHA_Z2],
		['NIOSH REL', 'average', 50, REL],
		['NIOSH REL', 'short', 100, REL],
		['ACGIH TLV', 'average', 10, TLV_M('2020')],
		['ACGIH TLV', 'short', 20, TLV_M('2020')],
		['UK WEL', 'average', 100, WEL_M],
		['UK WEL', 'short', 250, WEL_M]
	]),
	...rows(
		'xylene',
		[
			['OSHA PEL', 'average', 100, OSHA],
			['NIOSH REL', 'average', 100, REL],
			['NIOSH REL', 'short', 150, REL],
			['ACGIH TLV', 'average', 20, TLV_M('2021')],
			['UK WEL', 'average', 50, WEL_M],
			['UK WEL', 'short', 100, WEL_M]
		],
		true
	),
	...rows(
		'toluene',
		[
			['OSHA PEL', 'average', 200, OSHA_Z2],
			['OSHA PEL', 'ceiling', 300, `${OSHA_Z2} (from memory)`],
			['NIOSH REL', 'average', 100, 'NIOSH Pocket Guide 2005-151'],
			['NIOSH REL', 'short', 150, REL_M],
			['ACGIH TLV', 'average', 20, TLV_M('2007')],
			['UK WEL', 'average', 50, 'EH40/2005 4th ed. 2020'],
			['UK WEL', 'short', 100, 'EH40/2005 4th ed. 2020']
		],
		true
	),
	...rows('heptane', [
		['OSHA PEL', 'average', 500, OSHA],
		['NIOSH REL', 'average', 85, REL],
		['NIOSH REL', 'ceiling', 440, `${REL}, 15 min`],
		['ACGIH TLV', 'average', 400, REL],
		['ACGIH TLV', 'short', 500, REL],
		['UK WEL', 'average', 500, WEL_M]
	]),
	...rows(
		'mek',
		[
			['OSHA PEL', 'average', 200, `${OSHA} (from memory)`],
			['NIOSH REL', 'average', 200, REL_M],
			['NIOSH REL', 'short', 300, REL_M],
			['ACGIH TLV', 'average', 200, `${TLV_M('2001')}; may be lower since 2022`],
			['ACGIH TLV', 'short', 300, `${TLV_M('2001')}; may be lower since 2022`],
			['UK WEL', 'average', 200, WEL_M],
			['UK WEL', 'short', 300, WEL_M]
		],
		true
	),
	...rows('cyclohexane', [
		['OSHA PEL', 'average', 300, `${OSHA} (from memory)`],
		['NIOSH REL', 'average', 300, REL_M],
		['ACGIH TLV', 'average', 100, TLV_M('2002')],
		['UK WEL', 'average', 100, WEL_M],
		['UK WEL', 'short', 300, WEL_M]
	]),
	...rows('mek peroxide', [
		['NIOSH REL', 'ceiling', 0.2, REL_M],
		['ACGIH TLV', 'ceiling', 0.2, TLV_M('2009')],
		['UK WEL', 'short', 0.2, WEL_M]
	]),
	...rows('stoddard solvent', [
		['OSHA PEL', 'average', 500, OSHA],
		['NIOSH REL', 'average', 350, REL, 'mg/m3'],
		['NIOSH REL', 'ceiling', 1800, `${REL}, 15 min`, 'mg/m3'],
		['ACGIH TLV', 'average', 100, REL]
	])
];
