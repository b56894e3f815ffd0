import type { Plan } from '$lib/core/plan/plan';
import type { Unit } from '$lib/core/quantity/unit';

export interface ForceRow {
	label: string;
	/** What it asks of the maker. */
	why: string;
	numbers: { label: string; path: string; value: number | null; unit: Unit }[];
	/** What a warning would be about when a law's limit left it out. */
	about: string;
	none: string;
}

type Forces = NonNullable<Plan['forces']>;

const number = (label: string, path: string, value: number | undefined, unit: Unit) => ({
	label,
	path: `forces.${path}`,
	value: value ?? null,
	unit
});

/** What liquids do to frame, shell, lid and pattern, one row for each that this mold has. */
export function forceRows({ frameBoard, shellWall, roundWall, lid, pattern }: Forces): ForceRow[] {
	const round: ForceRow = {
		label: 'Round wall of the shell, full',
		why: 'A closed ring grows instead of bending.',
		numbers: [
			number('grows by', 'roundWall.growthMm', roundWall?.growthMm, 'mm'),
			number('hoop stress', 'roundWall.stressPa', roundWall?.stressPa, 'Pa')
		],
		about: 'Growth of the round shell',
		none: 'not computed'
	};
	return [
		{
			label: 'Longest frame board, with wet shell against it',
			why: 'A board that bulges leaks at its corners: brace it.',
			numbers: [
				number('bulges', 'frameBoard.deflectionMm', frameBoard?.deflectionMm, 'mm'),
				number('bending stress', 'frameBoard.stressPa', frameBoard?.stressPa, 'Pa')
			],
			about: 'Bulge of the frame',
			none: 'not computed'
		},
		{
			label: 'Flattest wall of the shell, full',
			why: 'What the shell gives, the part gains.',
			numbers: [
				number('bulges', 'shellWall.deflectionMm', shellWall?.deflectionMm, 'mm'),
				number('bending stress', 'shellWall.stressPa', shellWall?.stressPa, 'Pa')
			],
			about: 'Bulge of the shell',
			none: 'not computed'
		},
		...(roundWall ? [round] : []),
		{
			label: `Board laid back on as a lid${lid ? `, ${lid.straps} straps` : ''}`,
			why: 'Filled through a riser, the liquid lifts the lid.',
			numbers: [
				number('lifts', 'lid.upliftN', lid?.upliftN, 'N'),
				number('each strap holds', 'lid.strapN', lid?.strapN, 'N')
			],
			about: 'Uplift on the mold board as a lid',
			none: 'not computed'
		},
		{
			label: 'Pattern, if rubber flows under it',
			why: 'Screw it down: its own weight is not counted on.',
			numbers: [number('floats up with', 'pattern.upliftN', pattern?.upliftN, 'N')],
			about: 'Uplift of the pattern',
			none: 'not computed'
		}
	];
}
