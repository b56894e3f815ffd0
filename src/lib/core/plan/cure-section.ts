import { CALM_SEARCHED_G, calmCupLaw, largestCalmCupG } from '../laws/calm-cup';
import type { CureMoment } from '../laws/exotherm';
import { exothermLaw } from '../laws/exotherm';
import {
	bodyCurve,
	calibratedKPerS,
	massEffectLaw,
	peakMoment,
	workableS,
	type CuringMaterial
} from '../laws/mass-effect';
import type { FigureInput } from '../quantity/figure';
import type { Sheet } from '../materials/sheet';
import { curingMaterial, roughHeatNote } from './curing-material';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { warnOfHeat } from './heat-warnings';
import { remembered } from './remembered';
import { computed, entered, traced, type Draft } from './trace';
import { withinLaw } from './within-law';

type CureSection = NonNullable<Plan['cure']>;
type CureMaterial = CureSection['materials'][number];

/** Points of a curve that is drawn; choice of the plan. */
const POINTS = 24;
/** Curves end after this many times the workable time; a choice of what to show. */
const SHOWN_TIMES = 4;
const CAUTION =
	'The heat balance takes one temperature for the whole cup: its middle runs hotter. Never cover a warming cup or set it among things that burn; set it down in extraction, on stone or metal, away from people.';
const ROUGH =
	'Where a data sheet gives no heat of reaction, a typical one is taken and the peaks are rough: ask the maker, and try a small cup first.';

export interface MixedUse {
	sheet: Sheet;
	largestCupG: number;
	thickestMm: number;
}

/** Cup against coat for each material that heats itself, and how heavy a forgotten cup may be. */
export function cureSection(
	draft: Draft,
	uses: readonly MixedUse[],
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
	return { materials, night, caution: isRough ? `${CAUTION} ${ROUGH}` : CAUTION };
}

const materialIndex = (uses: readonly MixedUse[], use: MixedUse): number =>
	uses.filter(({ sheet }) => curingMaterial(sheet)).indexOf(use);

const heatsItself = remembered(
	(material: CuringMaterial, massG: number, thicknessMm: number, temperatureC: number) => {
		const kPerS = calibratedKPerS(material);
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
	massG: largestCalmCupG(material, temperatureC, { peakC, searchUpToG: CALM_SEARCHED_G })
}));

function cureMaterial(
	draft: Draft,
	{ sheet, largestCupG, thickestMm }: MixedUse,
	{ material, inputs }: { material: CuringMaterial; inputs: FigureInput[] },
	index: number
): CureMaterial {
	const { temperatureC } = draft;
	const calmPeakC = DEFAULTS.calmPeakC.value;
	const heat = heatsItself(material, largestCupG, thickestMm, temperatureC);
	const path = `cure.materials.${index}`;
	const rough = roughHeatNote(sheet);
	const noted = (text: string): string => (rough ? `${text} ${rough}` : text);
	const room = entered('T_room', 'room temperature', temperatureC, 'C');
	const cupInputs = [...inputs, room, computed('m', 'largest cup of the plan', largestCupG, 'g')];
	const calmG = calmCup(material, temperatureC, Math.max(calmPeakC, temperatureC)).massG;
	if (calmG !== null) {
		traced(draft, `${path}.largestCalmG`, {
			label: `${sheet.name}: a forgotten cup stays calm up to`,
			value: calmG,
			unit: 'g',
			law: calmCupLaw,
			inputs: [...inputs, room, defaultInput('T_limit', 'calmPeakC')],
			note: noted(
				calmG >= CALM_SEARCHED_G
					? 'No cup up to 20 kg passes the limit.'
					: 'A heavier cup is laid at once, or not mixed.'
			)
		});
	}
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
				inputs: cupInputs
			}),
			peakC: traced(draft, `${path}.cup.peakC`, {
				label: `${sheet.name}: hottest, if the largest cup is forgotten`,
				value: heat.cupPeak.temperatureC,
				unit: 'C',
				law: exothermLaw,
				inputs: cupInputs,
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
				inputs: [...inputs, room, computed('d', 'thickest coat', thickestMm, 'mm')],
				note: noted('Errs hot: cold backing takes up more heat than the law says.')
			}),
			curve: heat.filmCurve
		},
		largestCalmG: calmG,
		calmPeakC
	};
	warnOfHeat(draft, sheet, found);
	return found;
}

/** So many points of a curve, its hottest among them, rounded for a drawing. */
function thinned(curve: readonly CureMoment[]): CureMoment[] {
	const last = curve.length - 1;
	const hottest = curve.reduce(
		(best, { temperatureC }, i) => (temperatureC > (curve[best]?.temperatureC ?? 0) ? i : best),
		0
	);
	const kept = new Set([hottest, last]);
	for (let i = 0; i < POINTS - 1; i += 1) kept.add(Math.round((i * last) / (POINTS - 1)));
	return [...kept]
		.sort((a, b) => a - b)
		.flatMap((i) => {
			const moment = curve[i];
			if (!moment) return [];
			return {
				atS: Math.round(moment.atS),
				temperatureC: Math.round(moment.temperatureC * 10) / 10,
				conversion: Math.round(moment.conversion * 1000) / 1000
			};
		});
}
