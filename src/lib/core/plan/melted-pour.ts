import { solidAfterS, solidificationLaw } from '../laws/solidification';
import type { Sheet } from '../materials/sheet';
import { roundUpTo } from '../quantity/rounding';
import { defaultInput } from './defaults';
import { roomInput } from './heat-ranges';
import { isMelted } from './is-melted';
import { warnOfMelt } from './melt-warnings';
import type { Plan } from './plan';
import { computed, fromSheet, inherited, traced, tradeLaw, type Draft } from './trace';
import { withinLaw } from './within-law';

export type Melt = NonNullable<Plan['pour']['melt']>;

const meltingLaw = tradeLaw(
	'melting-time',
	'Melting a casting material',
	't = m · (c · (T_pour − T_room) + L) / P',
	'heat taken up over the heat that arrives in the wax, in a water bath or a melter with a thermostat'
);

/** What only molten castings ask for: melting them, and waiting till they are solid through; undefined for others. */
export function meltedPour(
	draft: Draft,
	pour: Omit<Plan['pour'], 'melt'>,
	wallMm: number
): Melt | undefined {
	const { casting } = draft.inputs.materials;
	if (!isMelted(casting)) return undefined;
	const found = withinLaw(draft, 'pour', `Melting and setting of ${casting.name}`, () => ({
		meltS: meltS(draft, pour.massG),
		solidS: solidS(draft, wallMm)
	}));
	warnOfMelt(draft, pour, found?.solidS);
	return found ?? undefined;
}

function temperatures({ meltsAtC, poursAtC }: Sheet) {
	const melts =
		meltsAtC === undefined
			? defaultInput('T_m', 'waxMeltsC')
			: fromSheet('T_m', 'melts at', meltsAtC, 'C');
	const pours =
		poursAtC === undefined
			? defaultInput('T_pour', 'waxPoursC')
			: fromSheet('T_pour', 'poured at', poursAtC, 'C');
	return { melts, pours };
}

function meltS(draft: Draft, massG: number): number {
	const { pours } = temperatures(draft.inputs.materials.casting);
	const inputs = [
		computed('m', 'first pour', massG, 'g', 'pour.massG'),
		defaultInput('c', 'waxHeat'),
		pours,
		roomInput(draft),
		defaultInput('L', 'waxLatent'),
		defaultInput('P', 'meltW')
	];
	const takes = (g = 0, heat = 0, toC = 0, fromC = 0, latent = 0, watts = 1): number =>
		roundUpTo((g * (heat * Math.max(0, toC - fromC) + latent)) / watts, 60);
	const likely = inherited(draft, inputs, takes);
	return traced(draft, 'pour.melt.meltS', {
		label: 'Melting the casting material',
		value: takes(...inputs.map(({ value }) => Number(value))),
		unit: 's',
		law: meltingLaw,
		inputs,
		...likely,
		note: 'Somebody stays with it. What does not fit into the melter at once takes further meltings.'
	});
}

/** The latest that is likely: a liquid core that runs out burns whoever opens the mold. */
function solidS(draft: Draft, wallMm: number): number {
	const { lengthMm, widthMm, heightMm } = draft.surface;
	const { casting } = draft.inputs.materials;
	const { melts, pours } = temperatures(casting);
	const inputs = [
		fromSheet('ρ', 'density', casting.mixedDensityGPerMl, 'g/mL'),
		defaultInput('L', 'waxLatent'),
		defaultInput('c', 'waxHeat'),
		defaultInput('k', 'waxConductivity'),
		pours,
		melts,
		roomInput(draft),
		defaultInput('R_air', 'airResistance'),
		defaultInput('k_wall', 'wallConductivity'),
		computed('t_wall', 'glove and shell', wallMm, 'mm'),
		computed('a_1', 'length of the pattern', lengthMm, 'mm'),
		computed('a_2', 'width', widthMm, 'mm'),
		computed('a_3', 'height', heightMm, 'mm')
	];
	const after = (...values: number[]): number => {
		const [rho = 0, latent = 0, heat = 0, k = 0, toC = 0, meltC = 0, roomC = 0] = values;
		const [air = 0, kWall = 1, wall = 0, length = 0, width = 0, height = 0] = values.slice(7);
		return solidAfterS({
			lengthsMm: [length, width, height],
			densityGPerMl: rho,
			latentJPerG: latent,
			specificHeatJPerGK: heat,
			conductivityWPerMK: k,
			resistanceM2KPerW: air + wall / 1000 / kWall,
			poursAtC: Math.max(toC, meltC),
			meltsAtC: meltC,
			roomC
		});
	};
	const middleS = after(...inputs.map(({ value }) => Number(value)));
	const { low = middleS, high = middleS } = inherited(draft, inputs, after);
	return traced(draft, 'pour.melt.solidS', {
		label: 'First part: solid through at the latest',
		value: roundUpTo(high, 60),
		unit: 's',
		law: solidificationLaw,
		inputs,
		low,
		high: roundUpTo(high, 60),
		note: 'The latest that is likely, for the box that the part fits into: a thin or hollow part sets sooner. The test decides: cold to the hand all over.'
	});
}
