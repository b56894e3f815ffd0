import type { Sheet } from '../materials/sheet';
import type { FigureInput } from '../quantity/figure';
import { around } from '../quantity/range';
import { DEFAULTS, defaultInput } from './defaults';
import type { SectionFacts } from './plan-sections';
import { computed, traced, tradeLaw, type Draft } from './trace';

/** A material that is mixed for the mold: its largest cup and its thickest coat, and what they are taken from. */
export interface MixedUse {
	sheet: Sheet;
	largestCupG: number;
	thickestMm: number;
	cups: FigureInput[];
	thicknesses: FigureInput[];
}

const largestCupLaw = tradeLaw(
	'largest-planned-cup',
	'The largest cup of the plan',
	'm = max m_i',
	'the cups as they are planned; one that is mixed larger gets hotter'
);
export const thickestCoatLaw = tradeLaw(
	'thickest-planned-coat',
	'The thickest coat of the plan',
	'd = max d_i; of a shell t / n',
	'coats as they are planned, rounds of a shell taken as even; a puddle is thicker'
);
const calmPeakLaw = tradeLaw(
	'calm-peak',
	'How hot a forgotten cup may get',
	'T_limit = 80 °C',
	'a choice on the safe side of cups that soften and resins that fume'
);

/** The largest cup and the thickest coat of each material that is mixed for the mold. */
export function mixedUses(
	{ inputs }: Draft,
	{ coats, shell, shellThickness }: Pick<SectionFacts, 'coats' | 'shell' | 'shellThickness'>
): MixedUse[] {
	const { detail, build, shell: backing } = inputs.materials;
	const largest = (all: readonly FigureInput[]): number =>
		Math.max(...all.map(({ value }) => Number(value)));
	const cupsOf = (
		all: readonly { title: string; cups: readonly { massG: number }[]; path: string }[]
	): FigureInput[] =>
		all.map(({ title, cups, path }, i) => {
			const massG = Math.max(...cups.map((cup) => cup.massG));
			const isFirst = cups[0]?.massG === massG;
			return computed(
				`m_${i + 1}`,
				title,
				massG,
				'g',
				isFirst ? `${path}.cups.0.massG` : undefined
			);
		});
	const of = (sheet: Sheet, kind: 'detail' | 'build'): MixedUse[] => {
		const mine = coats.coats
			.map((coat, i) => ({ ...coat, path: `coats.${i}` }))
			.filter((coat) => coat.kind === kind);
		if (mine.length === 0) return [];
		const cups = cupsOf(mine);
		const thicknesses = mine.map(({ title, thicknessMm, path }, i) =>
			computed(`d_${i + 1}`, title, thicknessMm, 'mm', `${path}.thicknessMm`)
		);
		return [
			{ sheet, largestCupG: largest(cups), thickestMm: largest(thicknesses), cups, thicknesses }
		];
	};
	const rounds = cupsOf(shell.rounds.map((round, i) => ({ ...round, path: `shell.rounds.${i}` })));
	const { thicknessMm } = shellThickness;
	return [
		...(detail ? of(detail, 'detail') : []),
		...of(build, 'build'),
		{
			sheet: backing,
			largestCupG: largest(rounds),
			thickestMm: thicknessMm / shell.rounds.length,
			cups: rounds,
			thicknesses: [
				computed('t', 'shell', thicknessMm, 'mm', 'shell.thicknessMm'),
				computed('n', 'rounds', shell.rounds.length, 'count')
			]
		}
	];
}

/** Leaves the trace of cup, coat and temperature that a material's heat is computed for. */
export function traceMixedUse(draft: Draft, use: MixedUse, path: string): void {
	traced(draft, `${path}.cup.massG`, {
		label: `${use.sheet.name}: the largest cup`,
		value: use.largestCupG,
		unit: 'g',
		law: largestCupLaw,
		inputs: use.cups
	});
	traced(draft, `${path}.film.thicknessMm`, {
		label: `${use.sheet.name}: the thickest coat`,
		value: use.thickestMm,
		unit: 'mm',
		law: thickestCoatLaw,
		inputs: use.thicknesses,
		...around(use.thickestMm, 2 * DEFAULTS.spreadFraction.value)
	});
	traced(draft, `${path}.calmPeakC`, {
		label: `${use.sheet.name}: hottest that a forgotten cup may get`,
		value: DEFAULTS.calmPeakC.value,
		unit: 'C',
		law: calmPeakLaw,
		inputs: [defaultInput('T_limit', 'calmPeakC')]
	});
}
