import type { ProcessContext } from '../context';
import { sealerCoatsOf } from '../sealing';
import { holdRows } from './hold-rows';
import { row, type StepRow } from './row';

const sealerTitle = (c: ProcessContext) =>
	`Seal the pattern, coat ${c.sealerCoats + 1} of ${Math.max(sealerCoatsOf(c), c.sealerCoats + 1)}`;

/** From the briefing to the first hold point. */
export const PREPARING: Readonly<Record<string, StepRow>> = {
	brief: row(
		'brief',
		'Briefing',
		'Read what can hurt you here, read the room, set out your PPE.',
		'brief.finished',
		'room.read',
		'briefing.read'
	),
	'sealing.brushing': row(
		'seal',
		sealerTitle,
		'Clean, dry, mended? Brush on one thin coat of sealer. Keep flames and sparks away.',
		'sealer.applied'
	),
	'sealing.drying': row(
		'seal',
		sealerTitle,
		'Let it dry with air moving; do not touch it wet.',
		'sealer.dried'
	),
	pattern: row(
		'pattern',
		'Pattern',
		(c) =>
			sealerCoatsOf(c) > 0 || c.plan.inputs.pattern.porosity === 'porous, sealed'
				? 'A drop of water must stand on the seal; where it soaks in, seal again. Fix the pattern to the board.'
				: 'Look the pattern over and fix it to the board.',
		'pattern.prepared',
		'sealer.applied'
	),
	'release.waxing': row(
		'wax',
		(c) => `Wax, coat ${c.waxCoats + 1} of ${c.plan.release.waxCoats}`,
		'Wipe a thin coat of wax over pattern, board and flange.',
		'wax.applied'
	),
	'release.hazing': row(
		'wax',
		(c) => `Wax, coat ${c.waxCoats + 1} of ${c.plan.release.waxCoats}`,
		'Let it haze, then buff with a clean cloth.',
		'wax.buffed'
	),
	'release.filming': row(
		'film',
		(c) => `Parting film, pass ${c.filmPasses + 1} of ${c.plan.release.filmPasses}`,
		'Lay one thin, unbroken pass of film. Keep flames and sparks away.',
		'film.applied'
	),
	'release.drying': row(
		'film',
		(c) => `Parting film, pass ${c.filmPasses + 1} of ${c.plan.release.filmPasses}`,
		'Let it dry with air moving; do not touch it wet.',
		'film.dried'
	),
	frame: row(
		'frame',
		'Frame',
		(c) =>
			`Set the frame ${Math.round(c.plan.frame.gapMm)} mm clear of the pattern, all round, screwed from below.`,
		'frame.fitted'
	),
	...holdRows('readyToCoat')
};
