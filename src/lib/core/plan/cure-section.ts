import { CALM_SEARCHED_G, calmCupLaw, largestCalmCupG } from '../laws/calm-cup';
import { exothermLaw } from '../laws/exotherm';
import {
	bodyCurve,
	massEffectLaw,
	peakMoment,
	workableS,
	type CuringMaterial
} from '../laws/mass-effect';
import { displayQuantity } from '../quantity/display';
import type { FigureInput } from '../quantity/figure';
import { around } from '../quantity/range';
import { calmSpread } from './calm-spread';
import { smallerCup } from './smaller-cup';
import { castingHeat } from './casting-heat';
import { curingMaterial, roughHeatNote } from './curing-material';
import { thinned } from './thinned-curve';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { calibrated, heatRanges, rangeOfInput, roomInput, spreadRange } from './heat-ranges';
import { warnOfHeat } from './heat-warnings';
import { traceMixedUse, type MixedUse } from './mixed-uses';
import { remembered } from './remembered';
import { computed, traced, type Draft } from './trace';
import { withinLaw } from './within-law';

type CureSection = NonNullable<Plan['cure']>;
type CureMaterial = CureSection['materials'][number];

/** Curves end after this many times the workable time; a choice of what to show. */
const SHOWN_TIMES = 4;
const CAUTION =
	'The heat balance takes one temperature for the whole cup: its middle runs hotter. Never cover a warming cup or set it among things that burn; set it down in extraction, on stone or metal, away from people.';
const ROUGH =
	'Where a data sheet gives no heat of reaction, a typical one is taken and the peaks are rough: ask the maker, and try a small cup first.';

/** Cup against coat for each material that heats itself, and how heavy a forgotten cup may be. */
export function cureSection(
	draft: Draft,
	uses: readonly MixedUse[],
	pour: Plan['pour'],
	night: CureSection['night']
): CureSection {
	const materials = uses.flatMap((use) => {
		const curing = curingMaterial(use.sheet);
		if (!curing) return [];
		return (
			withinLaw(draft, 'cure', `Temperature of a cup of ${use.sheet.name}`, () =>
				cureMaterial(draft, use, curing, materialIndex(uses, use))
			) ?? []
		);
	});
	const isRough = uses.some(({ sheet }) => curingMaterial(sheet) && roughHeatNote(sheet));
	const casting = castingHeat(draft, pour);
	return {
		materials,
		...(casting && { casting }),
		night,
		caution: isRough ? `${CAUTION} ${ROUGH}` : CAUTION
	};
}

const materialIndex = (uses: readonly MixedUse[], use: MixedUse): number =>
	uses.filter(({ sheet }) => curingMaterial(sheet)).indexOf(use);

const heatsItself = remembered(
	(material: CuringMaterial, massG: number, thicknessMm: number, temperatureC: number) => {
		const kPerS = calibrated(material);
		const cup = { kind: 'cup', massG } as const;
		const film = { kind: 'film', thicknessMm } as const;
		const workable = workableS(material, cup, temperatureC, kPerS);
		const untilS = SHOWN_TIMES * workable;
		return {
			workable,
			cupPeak: peakMoment(material, cup, temperatureC, kPerS),
			filmPeak: peakMoment(material, film, temperatureC, kPerS),
			cupCurve: thinned(bodyCurve(material, cup, temperatureC, untilS, kPerS)),
			filmCurve: thinned(bodyCurve(material, film, temperatureC, untilS, kPerS))
		};
	}
);

const calmCup = remembered((material: CuringMaterial, temperatureC: number, peakC: number) => ({
	massG: largestCalmCupG(
		material,
		temperatureC,
		{ peakC, searchUpToG: CALM_SEARCHED_G },
		calibrated(material)
	)
}));

function cureMaterial(
	draft: Draft,
	use: MixedUse,
	{ material, inputs }: { material: CuringMaterial; inputs: FigureInput[] },
	index: number
): CureMaterial {
	const { temperatureC } = draft;
	const { sheet, largestCupG, thickestMm } = use;
	const calmPeakC = DEFAULTS.calmPeakC.value;
	const heat = heatsItself(material, largestCupG, thickestMm, temperatureC);
	const path = `cure.materials.${index}`;
	traceMixedUse(draft, use, path);
	const rough = roughHeatNote(sheet);
	const noted = (text: string): string => (rough ? `${text} ${rough}` : text);
	const room = roomInput(draft);
	const thickness: FigureInput = {
		...computed('d', 'thickest coat', thickestMm, 'mm', `${path}.film.thicknessMm`),
		...around(thickestMm, 2 * DEFAULTS.spreadFraction.value)
	};
	const cupInputs = [
		...inputs,
		room,
		computed('m', 'largest cup of the plan', largestCupG, 'g', `${path}.cup.massG`)
	];
	const ranges = heatRanges(material, {
		massG: largestCupG,
		calmPeakC,
		heatJPerG: rangeOfInput(inputs, 'ΔH'),
		specificHeatJPerGK: rangeOfInput(inputs, 'c'),
		roomC: rangeOfInput([room], 'T_room'),
		thicknessMm: rangeOfInput([thickness], 'd')
	});
	const calmG = calmCup(material, temperatureC, Math.max(calmPeakC, temperatureC)).massG;
	if (calmG !== null) {
		traced(draft, `${path}.largestCalmG`, {
			label: `${sheet.name}: a forgotten cup stays calm up to`,
			value: calmG,
			unit: 'g',
			law: calmCupLaw,
			inputs: [...inputs, room, defaultInput('T_limit', 'calmPeakC')],
			...spreadRange(ranges.calmG, calmG),
			note: noted(
				calmG >= CALM_SEARCHED_G
					? `No cup up to ${displayQuantity(CALM_SEARCHED_G, 'g', draft.inputs.shop.units)} passes the limit.`
					: 'A heavier cup is laid at once, or not mixed.'
			)
		});
	}
	const law = { material, inputs: [...inputs, room], path };
	const smallerCupG = smallerCup(draft, use, law, heat.cupPeak.temperatureC);
	const calmSpreadMm = calmG === null ? calmSpread(draft, use.sheet, law) : null;
	const found: CureMaterial = {
		materialId: sheet.id,
		materialName: sheet.name,
		cup: {
			massG: largestCupG,
			workableS: traced(draft, `${path}.cup.workableS`, {
				label: `${sheet.name}: the largest cup stays workable`,
				value: heat.workable,
				unit: 's',
				law: massEffectLaw,
				inputs: cupInputs,
				...spreadRange(ranges.workableS, heat.workable)
			}),
			peakC: traced(draft, `${path}.cup.peakC`, {
				label: `${sheet.name}: hottest, if the largest cup is forgotten`,
				value: heat.cupPeak.temperatureC,
				unit: 'C',
				law: exothermLaw,
				inputs: cupInputs,
				...spreadRange(ranges.cupPeakC, heat.cupPeak.temperatureC),
				note: noted('The middle runs hotter than this.')
			}),
			peakAtS: heat.cupPeak.atS,
			curve: heat.cupCurve
		},
		film: {
			thicknessMm: thickestMm,
			peakC: traced(draft, `${path}.film.peakC`, {
				label: `${sheet.name}: hottest in the thickest coat`,
				value: heat.filmPeak.temperatureC,
				unit: 'C',
				law: exothermLaw,
				inputs: [...inputs, room, thickness],
				...spreadRange(ranges.filmPeakC, heat.filmPeak.temperatureC),
				note: noted('Errs hot: cold backing takes up more heat than the law says.')
			}),
			curve: heat.filmCurve
		},
		largestCalmG: calmG,
		...(smallerCupG !== null && { smallerCupG }),
		...(calmSpreadMm !== null && { calmSpreadMm }),
		calmPeakC
	};
	warnOfHeat(draft, sheet, found);
	return found;
}
