import { holdRows } from './hold-rows';
import { row, type StepRow } from './row';

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
	pattern: row(
		'pattern',
		'Pattern',
		'Look the pattern over and fix it to the board.',
		'pattern.prepared'
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
