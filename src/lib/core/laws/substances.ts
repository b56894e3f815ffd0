import type { Law } from '../quantity/figure';
import { PA_PER_MMHG } from './evaporation';

export const substancesLaw: Law = {
	id: 'substances',
	name: 'Physical data of common volatile and sensitizing substances',
	formula: 'table',
	source:
		'NIOSH Pocket Guide to Chemical Hazards, 2005-151; NFPA 497 (2008); IEC 60079-20-1 (2010); the source stands beside each number',
	validity: 'Pure substances near 20 °C. The SDS of the product at hand comes first.'
};

/** A number with its source and edition; "(from memory)" until a stored text confirms it. */
export interface Sourced {
	value: number;
	source: string;
}

export const SUBSTANCE_IDS = [
	'mdi',
	'tdi',
	'acetone',
	'ethanol',
	'isopropanol',
	'methanol',
	'styrene',
	'xylene',
	'toluene',
	'heptane',
	'mek',
	'cyclohexane',
	'mek peroxide',
	'stoddard solvent'
] as const;
export type SubstanceId = (typeof SUBSTANCE_IDS)[number];

export interface Substance {
	name: string;
	cas: string;
	isocyanate: boolean;
	/** Skin or airway sensitizer. */
	sensitizer: boolean;
	molarMassGPerMol: Sourced;
	densityGPerMl?: Sourced;
	/** At the temperature in the source, 20 °C unless it says otherwise. */
	vaporPressurePa?: Sourced;
	/** Closed cup. */
	flashC?: Sourced;
	/** The lowest of the lists, percent by volume. */
	lelPct?: Sourced;
	uelPct?: Sourced;
	/** Immediately dangerous to life or health: a filter respirator is no way to work there. */
	idlhPpm?: Sourced;
}

const IUPAC = 'IUPAC standard atomic weights';
const NPG = 'NIOSH Pocket Guide 2005-151';
const NPG_M = `${NPG} (from memory)`;
const NFPA = 'NIOSH Pocket Guide 2005-151 and NFPA 497 (2008) agree';
const IEC = 'IEC 60079-20-1 (2010), lower than NFPA 497';
const IDLH = 'NIOSH IDLH documentation, May 1994';
const IDLH_M = `${IDLH} (from memory)`;

const of = (value: number, source: string): Sourced => ({ value, source });
const mmHg = (value: number, source: string): Sourced => of(value * PA_PER_MMHG, source);

export const SUBSTANCES: Readonly<Record<SubstanceId, Substance>> = {
	mdi: {
		name: 'MDI, methylene bisphenyl isocyanate',
		cas: '101-68-8',
		isocyanate: true,
		sensitizer: true,
		molarMassGPerMol: of(250.25, IUPAC),
		densityGPerMl: of(1.19, `${NPG}, liquid at 50 °C (from memory)`),
		vaporPressurePa: mmHg(5e-6, `${NPG}, at 25 °C (from memory)`),
		flashC: of(199, NPG_M)
	},
	tdi: {
		name: 'TDI, toluene diisocyanate',
		cas: '584-84-9',
		isocyanate: true,
		sensitizer: true,
		molarMassGPerMol: of(174.16, IUPAC),
		densityGPerMl: of(1.22, NPG_M),
		vaporPressurePa: mmHg(0.01, `${NPG}, at 25 °C (from memory)`),
		flashC: of(127, NPG_M),
		lelPct: of(0.9, IDLH),
		uelPct: of(9.5, NPG_M),
		idlhPpm: of(2.5, IDLH_M)
	},
	acetone: {
		name: 'Acetone',
		cas: '67-64-1',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(58.08, IUPAC),
		densityGPerMl: of(0.79, NPG_M),
		vaporPressurePa: mmHg(180, 'National Toxicology Program, Chemical Repository (1991)'),
		flashC: of(-20, 'NFPA 497 (2008) and IEC 60079-20-1 (2010) agree'),
		lelPct: of(2.5, NFPA),
		uelPct: of(14.3, 'IEC 60079-20-1 (2010), higher than NFPA 497'),
		idlhPpm: of(2500, IDLH)
	},
	ethanol: {
		name: 'Ethanol',
		cas: '64-17-5',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(46.07, IUPAC),
		densityGPerMl: of(0.79, NPG),
		vaporPressurePa: mmHg(44, NPG),
		flashC: of(12, 'IEC 60079-20-1 (2010)'),
		lelPct: of(3.1, IEC),
		uelPct: of(19, NFPA),
		idlhPpm: of(3300, IDLH_M)
	},
	isopropanol: {
		name: 'Isopropyl alcohol',
		cas: '67-63-0',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(60.1, IUPAC),
		densityGPerMl: of(0.79, NPG_M),
		vaporPressurePa: mmHg(33, NPG_M),
		flashC: of(12, NFPA),
		lelPct: of(2, NFPA),
		uelPct: of(12.7, NFPA),
		idlhPpm: of(2000, IDLH_M)
	},
	methanol: {
		name: 'Methanol',
		cas: '67-56-1',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(32.04, IUPAC),
		densityGPerMl: of(0.79, NPG_M),
		vaporPressurePa: mmHg(96, NPG),
		flashC: of(9, 'IEC 60079-20-1 (2010)'),
		lelPct: of(6, NFPA),
		uelPct: of(36, NFPA),
		idlhPpm: of(6000, IDLH_M)
	},
	styrene: {
		name: 'Styrene',
		cas: '100-42-5',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(104.15, IUPAC),
		densityGPerMl: of(0.91, NPG),
		vaporPressurePa: mmHg(5, NPG),
		flashC: of(30, 'IEC 60079-20-1 (2010)'),
		lelPct: of(0.9, NFPA),
		uelPct: of(8, 'IEC 60079-20-1 (2010), higher than NFPA 497'),
		idlhPpm: of(700, IDLH)
	},
	xylene: {
		name: 'Xylene, mixed isomers',
		cas: '1330-20-7',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(106.17, IUPAC),
		densityGPerMl: of(0.86, NPG_M),
		vaporPressurePa: mmHg(9, NPG_M),
		flashC: of(25, 'NFPA 497 (2008), mixed isomers'),
		lelPct: of(0.9, NFPA),
		uelPct: of(7.6, 'IEC 60079-20-1 (2010), higher than NFPA 497'),
		idlhPpm: of(900, IDLH)
	},
	toluene: {
		name: 'Toluene',
		cas: '108-88-3',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(92.14, IUPAC),
		densityGPerMl: of(0.87, NPG_M),
		vaporPressurePa: mmHg(21, NPG_M),
		flashC: of(4, NFPA),
		lelPct: of(1, IEC),
		uelPct: of(7.8, 'IEC 60079-20-1 (2010), higher than NFPA 497'),
		idlhPpm: of(500, IDLH)
	},
	heptane: {
		name: 'n-Heptane',
		cas: '142-82-5',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(100.2, IUPAC),
		densityGPerMl: of(0.68, NPG_M),
		vaporPressurePa: mmHg(40, `${NPG}, at 22 °C (from memory)`),
		flashC: of(-7, 'IEC 60079-20-1 (2010)'),
		lelPct: of(0.85, IEC),
		uelPct: of(6.7, NFPA),
		idlhPpm: of(750, IDLH_M)
	},
	mek: {
		name: 'Methyl ethyl ketone',
		cas: '78-93-3',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(72.11, IUPAC),
		densityGPerMl: of(0.81, NPG_M),
		vaporPressurePa: mmHg(78, NPG_M),
		flashC: of(-10, 'IEC 60079-20-1 (2010)'),
		lelPct: of(1.4, NFPA),
		uelPct: of(13.4, 'IEC 60079-20-1 (2010), higher than NFPA 497'),
		idlhPpm: of(3000, IDLH_M)
	},
	cyclohexane: {
		name: 'Cyclohexane',
		cas: '110-82-7',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(84.16, IUPAC),
		densityGPerMl: of(0.78, NPG_M),
		vaporPressurePa: mmHg(78, NPG_M),
		flashC: of(-18, NPG_M),
		lelPct: of(1, IEC),
		uelPct: of(8, NFPA),
		idlhPpm: of(1300, IDLH_M)
	},
	'mek peroxide': {
		name: 'Methyl ethyl ketone peroxide, initiator',
		cas: '1338-23-4',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(176.2, IUPAC),
		densityGPerMl: of(1.12, `${NPG}, 60% solution (from memory)`),
		flashC: of(52, `${NPG}, lowest of 52 to 93 (from memory)`)
	},
	'stoddard solvent': {
		name: 'Stoddard solvent, white spirit',
		cas: '8052-41-3',
		isocyanate: false,
		sensitizer: false,
		molarMassGPerMol: of(144, 'NIOSH comments on PEL project, 1988, assumed mean'),
		densityGPerMl: of(0.78, NPG_M),
		flashC: of(39, 'NIOSH comments on PEL project, 1988')
	}
};
