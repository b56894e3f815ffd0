import type { OutsideRow } from './outside-case';

/** What a row may rest on, the best first. */
export const MARKS = [
	'published',
	'a second library',
	'exact geometry',
	'worked by hand',
	'from memory',
	'common practice'
] as const;
export type Mark = (typeof MARKS)[number];

const GEOMETRY = /geometry|mensuration|parallel bodies|two spheres|slabs, quarter/i;
const BY_HAND = /by hand|step by step|worked separately|worked with|any text|statics|closed form/i;

/** What a row rests on, by how its source is marked. */
export function markOf({ source }: Pick<OutsideRow, 'source'>): Mark {
	if (/common practice/i.test(source)) return 'common practice';
	if (/from memory/i.test(source)) return 'from memory';
	if (/librar|psychrolib|R package/i.test(source)) return 'a second library';
	if (GEOMETRY.test(source)) return 'exact geometry';
	return BY_HAND.test(source) ? 'worked by hand' : 'published';
}

/** Marks of what nobody here wrote, recalled or worked out. */
const FROM_OUTSIDE: readonly Mark[] = ['published', 'a second library', 'exact geometry'];

/** Whether a row comes from outside: published, of a second library, or exact geometry. */
export const isFromOutside = (row: Pick<OutsideRow, 'source'>): boolean =>
	FROM_OUTSIDE.includes(markOf(row));
