import type { Plan } from '$lib/core/plan/plan';
import type { SectionLayer, SectionModel } from '../section/section-model';

/** The mold as planned, for the section: everything from the board to the shell, nothing made yet. */
export function sectionOfPlan(plan: Plan): SectionModel {
	const { surface, frame, release, coats, shellRelease, shell, inputs } = plan;
	const boardMm = frame.boards.find(({ name }) => /board/i.test(name))?.thicknessMm ?? 18;
	const layer = (kind: SectionLayer['kind'], label: string, thicknessMm: number): SectionLayer => ({
		kind,
		label,
		thicknessMm,
		state: 'done'
	});
	return {
		layers: [
			layer('board', 'Mold board', boardMm),
			layer('pattern', `Pattern, ${inputs.pattern.material}`, 0),
			...(release.waxCoats + release.filmPasses > 0
				? [layer('release', releaseLabel(release), 0)]
				: []),
			layer('frame', 'Frame', frame.boards[0]?.thicknessMm ?? 18),
			...coats.map(({ kind, title, thicknessMm }) => layer(kind, title, thicknessMm)),
			...(shellRelease.waxCoats > 0 ? [layer('release', 'Wax on the glove', 0)] : []),
			layer('shell', `Backup shell, ${shell.rounds.length} rounds`, shell.thicknessMm)
		],
		pattern: {
			widthMm: surface.lengthMm,
			heightMm: surface.heightMm,
			profile: surface.profile
		},
		gapMm: frame.gapMm,
		frameHeightMm: frame.heightMm,
		flangeMm: frame.flangeMm
	};
}

function releaseLabel({ waxCoats, filmPasses }: Plan['release']): string {
	if (filmPasses === 0) return 'Wax';
	return waxCoats === 0 ? 'Parting film' : 'Wax and parting film';
}
