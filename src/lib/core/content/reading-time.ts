import type { BriefingSlug } from './vocabulary';

/**
 * Minutes that each briefing takes to read with care, for a plan, which reads no texts.
 * Each text says it itself; a test holds the two together.
 */
const READ_MIN: Readonly<Record<BriefingSlug, number>> = {
	isocyanates: 5,
	'amines-and-catalysts': 4,
	'styrene-and-peroxides': 5,
	'solvents-and-vapor': 4,
	'dust-and-fiber': 4,
	'cuts-and-lifting': 4,
	'exotherm-and-waste': 4,
	'first-aid-and-spill': 5
};

/** Seconds that reading these briefings takes, one after another; 0 or more. */
export const readingS = (slugs: readonly BriefingSlug[]): number =>
	slugs.reduce((sum, slug) => sum + READ_MIN[slug] * 60, 0);
