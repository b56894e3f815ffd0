import { releaseNeed, type PatternFace } from './release-need';
import { castingProblems, shellProblems } from './backing-problems';
import { problem, worstFirst, type ChosenSheets, type PairProblem } from './pair-problem';
import type { Sheet } from './sheet';

export type { ChosenSheets, PairProblem } from './pair-problem';

export { releaseNeed, shellReleaseNeed } from './release-need';

/** Every reason for which pattern, glove, shell and casting should not meet; worst first. */
export function pairProblems(pattern: PatternFace, materials: ChosenSheets): PairProblem[] {
	const gloves = materials.detail ? [materials.detail, materials.build] : [materials.build];
	const found = [
		...gloves.flatMap((glove) => [
			...patternProblems(pattern, glove),
			...releaseProblems(pattern, glove, materials)
		]),
		...betweenGloves(materials),
		...shellProblems(materials),
		...castingProblems(materials),
		...sealerProblems(pattern, materials)
	];
	const seen = new Set<string>();
	return found.filter(({ text }) => !seen.has(text) && seen.add(text)).sort(worstFirst);
}

/** Pattern materials known to stop a platinum cure; common practice, no source. */
const STOPS_PLATINUM: readonly PatternFace['material'][] = ['sulfur clay', 'photopolymer print'];

function patternProblems(pattern: PatternFace, glove: Sheet): PairProblem[] {
	const { material, porosity } = pattern;
	const named = glove.inhibitedBy.includes(material);
	const known = glove.family === 'platinum silicone' && STOPS_PLATINUM.includes(material);
	const found: PairProblem[] = [];
	if (named || known) {
		found.push(
			problem(
				'refuse',
				'inhibited',
				`${glove.name} does not cure on ${material}: it stays sticky at the face. Choose another glove material or another pattern material.`
			)
		);
	} else if (glove.family === 'tin silicone' && material === 'photopolymer print') {
		found.push(
			problem(
				'warn',
				'inhibited',
				`Some print resins slow ${glove.name}; post-cure the print and try a test patch first.`
			)
		);
	}
	if (glove.family === 'urethane' && material === 'wax') {
		found.push(
			problem(
				'warn',
				'soft-pattern',
				`${glove.name} warms as it cures; a wax pattern can soften under it.`
			)
		);
	}
	const holdsWater = material === 'plaster' || material === 'wood' || material === 'concrete';
	if (glove.family === 'urethane' && holdsWater && porosity !== 'dense') {
		found.push(
			problem(
				'warn',
				'damp-pattern',
				`A ${material} pattern holds water, and ${glove.name} foams on it: ${
					porosity === 'porous, sealed'
						? 'make sure it is dry through under its seal.'
						: 'dry it through before it is sealed.'
				}`
			)
		);
	}
	return found;
}

function releaseProblems(
	pattern: PatternFace,
	glove: Sheet,
	materials: ChosenSheets
): PairProblem[] {
	const need = releaseNeed(pattern, glove);
	if (!need.needed) return [];
	if (!materials.wax && !materials.film) {
		return [problem('refuse', 'release-missing', `No release is chosen. ${need.why}`)];
	}
	if (need.byBoth && !(materials.wax && materials.film)) {
		const missing = materials.wax ? 'a parting film' : 'wax';
		return [
			problem(
				'decide',
				'release-thin',
				`${glove.name} is released by wax and film together; ${missing} is not chosen. ${need.why}`
			)
		];
	}
	return [];
}

function betweenGloves({ detail, build }: ChosenSheets): PairProblem[] {
	if (!detail || detail.id === build.id) return [];
	if (build.inhibitedBy.includes(detail.family) || detail.inhibitedBy.includes(build.family)) {
		return [
			problem(
				'refuse',
				'inhibited',
				`${detail.name} (${detail.family}) and ${build.name} (${build.family}) stop each other's cure.`
			)
		];
	}
	return detail.family === build.family
		? []
		: [
				problem(
					'refuse',
					'no-bond',
					`${build.name} (${build.family}) does not bond to detail coats of ${detail.name} (${detail.family}); take both from one family.`
				)
			];
}

function sealerProblems(pattern: PatternFace, { sealer }: ChosenSheets): PairProblem[] {
	return pattern.porosity === 'porous' && !sealer
		? [
				problem(
					'refuse',
					'unsealed',
					`The ${pattern.material} pattern is porous and no sealer is chosen: the first coat would soak in and lock.`
				)
			]
		: [];
}
