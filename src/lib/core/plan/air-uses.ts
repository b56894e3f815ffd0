import type { Sheet } from '../materials/sheet';
import type { AirUse } from './air-releases';
import type { CoatsPlan } from './coats-plan';
import { DEFAULTS } from './defaults';
import type { Plan } from './plan';
import type { ShellPlan } from './shell-plan';
import { lowEnd, type Draft } from './trace';

const numbered = (task: string, times: number): string[] =>
	Array.from({ length: times }, (_, i) => `${task}-${i + 1}`);

interface UseFacts {
	coats: CoatsPlan;
	shell: ShellPlan;
	release: Plan['release'];
	shellRelease: Plan['shellRelease'];
	sealerDryS: number;
	castingSoonestS: number;
	pour: Plan['pour'];
}

/**
 * What is laid in the room, step by step, as far as it can give off vapor. Over the shortest time that is likely: what
 * dries sooner gives off more in a minute.
 */
export function airUses(draft: Draft, facts: UseFacts): AirUse[] {
	const { materials } = draft.inputs;
	const { exposedAreaCm2, footprintCm2 } = draft.surface;
	const { coats, shell, release, shellRelease, pour } = facts;
	const coatedCm2 = exposedAreaCm2 + (draft.figures['surface.flangeAreaCm2']?.value ?? 0);
	const dryS = (path: string, value: number) => lowEnd(draft, `release.${path}`, value);
	const thin = (
		phase: string,
		title: string,
		sheet: Sheet | undefined,
		of: { totalG: number; times: number; overS: number; task: string }
	): AirUse[] =>
		sheet && of.totalG > 0 && of.times > 0
			? [
					{
						phase,
						title,
						sheet,
						massG: of.totalG / of.times,
						areaCm2: coatedCm2,
						overS: of.overS,
						times: of.times,
						taskIds: numbered(of.task, of.times)
					}
				]
			: [];
	const coated = (kind: 'detail' | 'build', sheet: Sheet | undefined): AirUse[] => {
		const mine = coats.coats.flatMap((coat, i) =>
			coat.kind === kind ? { coat, paceS: coats.paceS[i] ?? 0, taskId: `coat-${i + 1}` } : []
		);
		if (!sheet || mine.length === 0) return [];
		const massG = Math.max(...mine.map(({ coat }) => coat.massG));
		const overS = Math.max(
			...mine.map(({ coat, paceS }) => paceS + (coat.tackSoonestS ?? coat.tackTestS))
		);
		const title = kind === 'detail' ? 'Detail coats' : 'Build coats';
		const taskIds = mine.map(({ taskId }) => taskId);
		const times = mine.length;
		return [{ phase: kind, title, sheet, massG, areaCm2: coatedCm2, overS, times, taskIds }];
	};
	const roundG = Math.max(...shell.rounds.map(({ massG }) => massG));
	const roundS = Math.max(
		...shell.rounds.map(({ workingS }, i) => (shell.paceS[i] ?? 0) + workingS)
	);
	return [
		...thin('pattern', 'Seal the pattern', materials.sealer, {
			totalG: release.sealerG,
			times: release.sealerCoats ?? DEFAULTS.sealerCoats.value,
			overS: dryS('sealerDryS', facts.sealerDryS),
			task: 'seal'
		}),
		...thin('release', 'Wax', materials.wax, {
			totalG: release.waxG,
			times: release.waxCoats,
			overS: dryS('waxHazeS', release.waxHazeS),
			task: 'wax'
		}),
		...thin('release', 'Parting film', materials.film, {
			totalG: release.filmG,
			times: release.filmPasses,
			overS: dryS('filmDryS', release.filmDryS),
			task: 'film'
		}),
		...coated('detail', materials.detail),
		...coated('build', materials.build),
		...thin('shellRelease', 'Wax the back of the glove', materials.wax, {
			totalG: shellRelease.waxG,
			times: shellRelease.waxCoats,
			overS: Math.max(dryS('waxHazeS', release.waxHazeS), 600),
			task: 'back-wax'
		}),
		{
			phase: 'shell',
			title: 'Shell',
			sheet: materials.shell,
			massG: roundG,
			areaCm2: coatedCm2,
			overS: roundS,
			times: shell.rounds.length,
			taskIds: numbered('round', shell.rounds.length)
		},
		{
			phase: 'pour',
			title: 'First pour',
			sheet: materials.casting,
			massG: pour.massG,
			areaCm2: Math.max(1, footprintCm2),
			overS: facts.castingSoonestS,
			times: 1,
			taskIds: ['pour']
		}
	];
}
