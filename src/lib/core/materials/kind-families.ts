import type { MaterialFamily, MaterialKind, Sheet } from './sheet';

const MIXED: readonly MaterialFamily[] = [
	'urethane',
	'tin silicone',
	'platinum silicone',
	'latex',
	'epoxy',
	'polyester',
	'acrylic',
	'plaster',
	'concrete'
];

/** Families that a material of a kind can be of; common practice, no source. */
const FAMILIES: Readonly<Record<MaterialKind, readonly MaterialFamily[]>> = {
	glove: ['urethane', 'tin silicone', 'platinum silicone', 'latex'],
	shell: ['urethane', 'epoxy', 'polyester', 'acrylic', 'plaster', 'concrete'],
	casting: [...MIXED, 'casting wax'],
	wax: ['paste wax'],
	film: ['polyvinyl alcohol'],
	sealer: [
		'shellac',
		'acrylic',
		'urethane',
		'epoxy',
		'polyester',
		'latex',
		'polyvinyl alcohol',
		'paste wax'
	],
	reinforcement: ['glass fiber', 'plant fiber']
};

/** Bodies that a kind comes in where there is but one; the others are for the data sheet to say. */
const ONLY_BODY: Partial<Record<MaterialKind, Sheet['body']>> = {
	wax: 'paste',
	film: 'liquid',
	sealer: 'liquid',
	reinforcement: 'sheet'
};

/** The families that a material used so can be of, the likeliest first. */
export function familiesOf(kind: MaterialKind): readonly MaterialFamily[] {
	return FAMILIES[kind];
}

/** The body of everything used so, or null when its data sheet must say. */
export function onlyBodyOf(kind: MaterialKind): Sheet['body'] | null {
	return ONLY_BODY[kind] ?? null;
}

/** What is wrong with a family for that use, and what would be accepted; null when nothing is. */
export function familyProblem({ kind, family }: Pick<Sheet, 'kind' | 'family'>): string | null {
	const accepted = familiesOf(kind);
	if (accepted.includes(family)) return null;
	const article = /^[aeiou]/.test(kind) ? 'an' : 'a';
	return `Nothing of the family ${family} is used as ${article} ${kind}; accepted: ${accepted.join(', ')}.`;
}
