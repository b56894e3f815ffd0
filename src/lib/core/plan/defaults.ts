import { DEFAULT_Q10 } from '../laws/cure-rate';
import type { FigureInput } from '../quantity/figure';
import type { Range } from '../quantity/range';
import type { Unit } from '../quantity/unit';

interface Default {
	label: string;
	value: number;
	unit: Unit;
	/** Likely least and greatest, where the value is only a middle one. */
	range?: Range;
}

const entry = (label: string, value: number, unit: Unit): Default => ({ label, value, unit });
const between = (
	label: string,
	[low, value, high]: readonly [number, number, number],
	unit: Unit
): Default & { range: Range } => ({ label, value, unit, range: { low, high } });

/** What a plan takes when neither sheet, shop nor person says; common practice, no source. */
export const DEFAULTS = {
	detailCoats: entry('detail coats', 2, 'count'),
	detailCoatMm: entry('thickness of a detail coat', 0.5, 'mm'),
	leastShare: entry('thinnest reading that passes, share of the build', 0.8, 'fraction'),
	mixS: entry('time to mix a cup', 120, 's'),
	tackFreeS: entry('almost tack-free at room temperature', 2700, 's'),
	recoatTimes: entry('recoat window shuts, times the opening', 4, 'count'),
	roundTimes: entry('a shell round takes the next, times the pot life', 4, 'count'),
	demoldS: entry('cure before demolding', 57_600, 's'),
	waxMeltsC: between('a casting wax melts', [52, 57, 62], 'C'),
	waxPoursC: between('a casting wax is poured', [62, 70, 80], 'C'),
	waxLatent: between('heat of melting of a wax', [170, 190, 210], 'J/g'),
	waxHeat: between('heat capacity of a wax', [2.1, 2.3, 2.9], 'J/(g·K)'),
	waxConductivity: between('conductivity of a wax, W/(m·K)', [0.2, 0.22, 0.25], 'count'),
	wallConductivity: between('conductivity of glove and shell, W/(m·K)', [0.15, 0.2, 0.4], 'count'),
	airResistance: between(
		'resistance of still air at a surface, m²·K/W',
		[0.1, 0.13, 0.17],
		'count'
	),
	meltW: between('heat that a melter brings into the wax', [600, 1000, 2000], 'W'),
	castingS: entry('a casting before it is taken out', 7200, 's'),
	brushBackS: entry('a free-flowing coat holds on a wall', 1200, 's'),
	referenceC: entry('temperature of a time without one', 23, 'C'),
	waxSpread: entry('wax a coat', 25, 'g'),
	filmSpread: entry('parting film a pass', 70, 'g'),
	sealerSpread: entry('sealer a coat', 120, 'g'),
	hazeS: entry('wax hazes', 720, 's'),
	filmDryS: entry('parting film dries', 1800, 's'),
	sealerCoats: entry('coats of sealer', 2, 'count'),
	shellWaxCoats: entry('coats of wax on the back of the glove', 2, 'count'),
	boardMm: entry('thickness of the boards', 18, 'mm'),
	boardGPerMl: between('density of plywood', [0.5, 0.65, 0.75], 'g/mL'),
	ledgeMm: entry('mold board beyond the frame', 50, 'mm'),
	shellModulusMPa: between('stiffness of the shell, MPa', [500, 800, 1500], 'count'),
	deflectionShare: entry('allowed bulge of a shell wall, share of its span', 1 / 500, 'fraction'),
	spreadFraction: entry('uncertainty of a brushed thickness', 0.1, 'fraction'),
	areaSpread: entry('uncertainty of a measured area', 0.02, 'fraction'),
	pourSpread: entry('uncertainty of a poured volume', 0.02, 'fraction'),
	pourGPerMin: between(
		'what one person pours in a thin, steady stream',
		[1000, 1500, 2500],
		'g/min'
	),
	pourSpare: entry('share of a pot life that a pour leaves to spare', 0.1, 'fraction'),
	pourBucketG: entry('most that one person mixes, lifts and pours at a time', 15_000, 'g'),
	pourLoss: entry('casting left in cups and spills', 0.05, 'fraction'),
	moldLifePours: between('pours before a glove is worn out', [25, 50, 100], 'count'),
	pourLaborS: between('hands on a pour and its release', [1800, 2700, 3600], 's'),
	laborSpread: entry('uncertainty of the time that hands are on a job', 0.2, 'fraction'),
	filmWater: entry('water in the parting film', 0.6, 'fraction'),
	filmSolids: entry('solids in the parting film', 0.08, 'fraction'),
	roomM3: entry('volume of the room', 60, 'm3'),
	airChanges: between('air changes of a room with its doors shut and no fan', [0.2, 0.5, 1], '1/h'),
	mixingFactor: between('mixing factor, 1 ideal to 10 poor', [3, 5, 10], 'count'),
	clearShare: entry('share of the limit at which waiting ends', 0.1, 'fraction'),
	poolAirMPerS: entry('air speed over wet material, the least of the law', 0.5, 'm/s'),
	calmPeakC: entry('hottest that a forgotten cup may get before it softens and fumes', 80, 'C'),
	hotPeakC: entry(
		'hottest that a forgotten cup may get without a supervisor’s word: polyethylene cups melt',
		120,
		'C'
	),
	heatCapacity: between('heat capacity of the mix', [1.4, 1.7, 2.1], 'J/(g·K)'),
	thermometerK: entry('how far the thermometer may be off', 1, 'K'),
	hygrometerPct: entry('how far the hygrometer may be off', 3, '%'),
	q10: between('speed of the cure over ten kelvin', [1.5, DEFAULT_Q10, 3], 'count'),
	heatSpread: entry('uncertainty of a typical heat of reaction', 0.4, 'fraction'),
	nightRampS: entry('the room cools or warms up within', 7200, 's'),
	riserMm: entry('height of the riser over the lid', 50, 'mm'),
	straps: entry('straps round the mold', 2, 'count'),
	boardModulusMPa: between('stiffness of plywood, MPa', [4000, 6000, 9000], 'count'),
	shrinkSpread: entry('spread of a shrinkage, share of it', 0.5, 'fraction'),
	trimShare: entry('share of the glove that is trimmed off', 0.05, 'fraction'),
	benchMm: entry('height of the bench', 900, 'mm'),
	palletMm: entry('height of the hands over a pallet', 150, 'mm')
} as const satisfies Record<string, Default>;

export type DefaultKey = keyof typeof DEFAULTS;

/** A default as an input of a figure: marked as such, with where it comes from. */
export function defaultInput(symbol: string, key: DefaultKey): FigureInput {
	const { label, value, unit, range }: Default = DEFAULTS[key];
	const said = `${label} (common practice, no source)`;
	return { symbol, label: said, value, unit, origin: 'default', ...range };
}
