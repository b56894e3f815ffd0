import { plural } from '../plural';

/** What a pattern's mesh has to say at a step of the work. */
export const places = {
	title: 'By the pattern’s mesh',
	air: 'Air stays here unless the brush goes in:',
	brushTwice: ', brush twice',
	more: (n: number) =>
		plural('en', n, {
			one: 'One more place is in the plan',
			other: `${n} more places are in the plan`
		}),
	moreEnd: ', none of them to brush twice.',
	unlisted: (n: number) =>
		plural('en', n, {
			one: 'One shallower place is on no list: brush thin material into every recess.',
			other: `${n} shallower places are on no list: brush thin material into every recess.`
		}),
	foot: 'Before any coat, fill the foot and strike it off clean; a coat would stand off it here:',
	startPeeling: 'Start peeling',
	pieces: (n: number) => `Make the shell in ${n} pieces:`,
	piecesWhy: 'in one it locks. The pattern’s page draws the parting.',
	keys: 'Keys in the flange:',
	kinds: { foot: 'foot', groove: 'groove', pit: 'pit', 'inner corner': 'inner corner' },
	/** What it is, how wide and how deep. */
	place: (kind: string, wide: string, deep: string) => `${kind}, ${wide} wide, ${deep} deep`,
	right: (by: string) => `${by} right`,
	left: (by: string) => `${by} left`,
	back: (by: string) => `${by} back`,
	front: (by: string) => `${by} front`,
	ofMiddle: (away: string) => `${away} of the middle`,
	inMiddle: 'in the middle',
	atBoard: (spot: string) => `${spot}, at the board`,
	up: (spot: string, by: string) => `${spot}, ${by} up`
};
export type PlaceWords = typeof places;
