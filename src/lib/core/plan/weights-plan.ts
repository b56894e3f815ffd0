import { castingMassG, castingMassLaw, fullMassG, fullMassLaw } from '../laws/casting';
import { around } from '../quantity/range';
import type { Plan } from './plan';
import { DEFAULTS } from './defaults';
import { computed, fromSheet, inherited, traced, type Draft } from './trace';

/** What glove, shell and frame weigh, and the mold with a part in it. */
export function weightsPlan(
	draft: Draft,
	{ gloveG, shellG, frameG }: { gloveG: number; shellG: number; frameG: number }
): Plan['weights'] {
	const { build, casting } = draft.inputs.materials;
	traced(draft, 'weights.gloveG', {
		label: 'Glove',
		value: gloveG,
		unit: 'g',
		law: castingMassLaw,
		inputs: [
			computed('V', 'all coats', gloveG / build.mixedDensityGPerMl, 'mL'),
			fromSheet('ρ', 'density of the build material', build.mixedDensityGPerMl, 'g/mL')
		],
		...around(gloveG, 2 * DEFAULTS.spreadFraction.value),
		note: 'As laid, before the edge is trimmed.'
	});
	const castingG = castingMassG({
		volumeMl: draft.surface.volumeMl,
		densityGPerMl: casting.mixedDensityGPerMl
	});
	const parts = [
		computed('m_1', 'glove', gloveG, 'g', 'weights.gloveG'),
		computed('m_2', 'shell', shellG, 'g', 'weights.shellG'),
		computed('m_3', 'frame', frameG, 'g', 'weights.frameG'),
		{
			...computed('m_4', 'casting', castingG, 'g'),
			...around(castingG, 2 * DEFAULTS.pourSpread.value)
		}
	];
	const filledG = traced(draft, 'weights.filledG', {
		label: 'Mold with a part in it',
		value: fullMassG({ glove: gloveG, shell: shellG, frame: frameG, casting: castingG }),
		unit: 'g',
		law: fullMassLaw,
		inputs: parts,
		...inherited(draft, parts, (glove = 0, shell = 0, frame = 0, casting = 0) =>
			fullMassG({ glove, shell, frame, casting })
		)
	});
	const worn = parts.slice(0, 2);
	const gloveAndShellG = traced(draft, 'weights.gloveAndShellG', {
		label: 'Glove with its shell',
		value: gloveG + shellG,
		unit: 'g',
		law: fullMassLaw,
		inputs: worn,
		...inherited(draft, worn, (glove = 0, shell = 0) => glove + shell)
	});
	return { gloveG, shellG, gloveAndShellG, frameG, filledG };
}

/** How the glove is washed. */
export function washing(hasFilm: boolean): string {
	return hasFilm
		? 'Rinse the parting film off with lukewarm water and a soft brush until nothing feels slippery, then dry the glove in its shell. No solvent.'
		: 'Wipe the glove with water and a drop of mild soap, rinse, and dry it in its shell. No solvent.';
}
