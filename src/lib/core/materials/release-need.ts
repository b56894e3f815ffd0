import type { Sheet } from './sheet';

/** What a glove material meets: the pattern's material and whether it soaks anything up. */
export interface PatternFace {
	material: string;
	porosity: 'dense' | 'porous' | 'porous, sealed';
}

export interface ReleaseNeed {
	needed: boolean;
	why: string;
	/** Wax alone, or film alone, is not enough. */
	byBoth?: boolean;
}

export const isSilicone = ({ family }: Pick<Sheet, 'family'>): boolean =>
	family === 'tin silicone' || family === 'platinum silicone';

/** Families that glue themselves to nearly anything, whatever their sheet says. */
const STICKS: readonly Sheet['family'][] = ['urethane', 'epoxy', 'polyester', 'acrylic'];

/**
 * Whether wax and film are needed between a pattern and the glove material that touches it first.
 * Common practice, no source: a silicone on a sealed pattern needs none, except on silicone; a
 * urethane always does.
 */
export function releaseNeed(
	pattern: Pick<PatternFace, 'material'>,
	glove: Pick<Sheet, 'name' | 'family' | 'needsRelease'>
): ReleaseNeed {
	if (STICKS.includes(glove.family)) {
		return {
			needed: true,
			byBoth: true,
			why: `${glove.name} is a ${glove.family}: it bonds to ${pattern.material} unless wax and film keep it off.`
		};
	}
	if (isSilicone(glove) && pattern.material === 'cured silicone') {
		return { needed: true, why: 'Silicone bonds to silicone; only a release keeps them apart.' };
	}
	if (glove.needsRelease) {
		return { needed: true, why: `The data sheet of ${glove.name} asks for a release.` };
	}
	return {
		needed: false,
		why: `${glove.name} (${glove.family}) does not bond to a sealed pattern of ${pattern.material}; its data sheet asks for no release.`
	};
}

/** Whether the shell must be kept off the glove's back, and why. */
export function shellReleaseNeed(glove: Pick<Sheet, 'name' | 'family'>, shell: Sheet): ReleaseNeed {
	const bonds = STICKS.includes(shell.family) && !isSilicone(glove);
	return {
		needed: true,
		why: bonds
			? `${shell.name} (${shell.family}) bonds to a ${glove.family} glove; wax the whole back, or the mold is lost.`
			: `${shell.name} hardly bonds to a ${glove.family} glove, but it grips every brush mark; wax the whole back so that it lets go.`
	};
}
