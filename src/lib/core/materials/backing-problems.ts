import { problem, type ChosenSheets, type PairProblem } from './pair-problem';
import { isSilicone } from './release-need';
import { takenHazards } from './usual-hazards';

/** What stands against the shell on this glove. */
export function shellProblems({ build, shell, reinforcement, wax }: ChosenSheets): PairProblem[] {
	const found: PairProblem[] = [];
	if (build.inhibitedBy.includes(shell.family)) {
		found.push(
			problem(
				'refuse',
				'inhibited',
				`${shell.name} (${shell.family}) stops the cure of ${build.name}.`
			)
		);
	}
	if (!wax) {
		found.push(
			problem(
				'refuse',
				'shell-release-missing',
				`No wax is chosen for the back of the glove: ${shell.name} would lock onto it.`
			)
		);
	}
	const styrene = shell.family === 'polyester' || takenHazards(shell).includes('styrene');
	if (styrene && !isSilicone(build)) {
		found.push(
			problem(
				'warn',
				'styrene-on-glove',
				`Styrene in ${shell.name} swells a ${build.family} glove: wax the whole back well, or lay a barrier of film first.`
			)
		);
	}
	if (shell.body === 'liquid' && !reinforcement && shell.family !== 'plaster') {
		found.push(
			problem(
				'warn',
				'shell-unreinforced',
				`${shell.name} is a laminating resin; without cloth or strand it cracks at the first wedge.`
			)
		);
	}
	return found;
}

/** What stands against the casting in this glove. */
export function castingProblems({ detail, build, casting }: ChosenSheets): PairProblem[] {
	const face = detail ?? build;
	const found: PairProblem[] = [];
	if (isSilicone(face) && isSilicone(casting)) {
		found.push(
			problem(
				'refuse',
				'casting-bonds',
				`${casting.name} bonds to a silicone glove: the first part would never come out.`
			)
		);
	}
	if (casting.inhibitedBy.includes(face.family)) {
		found.push(
			problem(
				'refuse',
				'casting-inhibited',
				`${casting.name} does not cure against a ${face.family} glove.`
			)
		);
	}
	if (face.family === 'urethane' && casting.family === 'polyester') {
		found.push(
			problem(
				'warn',
				'casting-attacks',
				`Styrene in ${casting.name} swells a urethane glove, which shortens its life; a silicone glove stands it better.`
			)
		);
	}
	if (!isSilicone(face) && casting.needsRelease) {
		found.push(
			problem(
				'warn',
				'casting-release',
				`${casting.name} sticks to a ${face.family} glove: release it before every pour.`
			)
		);
	}
	return found;
}
