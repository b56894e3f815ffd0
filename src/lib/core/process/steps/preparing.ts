import type { Words } from '../../language/words';
import type { ProcessContext } from '../context';
import { sealerCoatsOf } from '../sealing';
import { holdRows } from './hold-rows';
import { row, type StepRow } from './row';

const sealerTitle = ({ steps }: Words, c: ProcessContext) => {
	const n = c.sealerCoats + 1;
	return steps.seal.title({ n, of: Math.max(sealerCoatsOf(c), n) });
};
const waxTitle = ({ steps }: Words, c: ProcessContext) =>
	steps.wax.title({ n: c.waxCoats + 1, of: c.plan.release.waxCoats });
const filmTitle = ({ steps }: Words, c: ProcessContext) =>
	steps.film.title({ n: c.filmPasses + 1, of: c.plan.release.filmPasses });

/** From the briefing to the first hold point. */
export const PREPARING: Readonly<Record<string, StepRow>> = {
	brief: row('brief', ({ steps }) => steps.brief, 'brief.finished', 'room.read', 'briefing.read'),
	'sealing.brushing': row(
		'seal',
		(w, c) => ({ title: sealerTitle(w, c), what: w.steps.seal.brush }),
		'sealer.applied'
	),
	'sealing.drying': row(
		'seal',
		(w, c) => ({ title: sealerTitle(w, c), what: w.steps.seal.dry }),
		'sealer.dried'
	),
	pattern: row(
		'pattern',
		({ steps: { pattern } }, c) => ({
			title: pattern.title,
			what:
				sealerCoatsOf(c) > 0 || c.plan.inputs.pattern.porosity === 'porous, sealed'
					? pattern.sealed
					: pattern.dense
		}),
		'pattern.prepared',
		'sealer.applied'
	),
	'release.waxing': row(
		'wax',
		(w, c) => ({ title: waxTitle(w, c), what: w.steps.wax.apply }),
		'wax.applied'
	),
	'release.hazing': row(
		'wax',
		(w, c) => ({ title: waxTitle(w, c), what: w.steps.wax.buff }),
		'wax.buffed'
	),
	'release.filming': row(
		'film',
		(w, c) => ({ title: filmTitle(w, c), what: w.steps.film.apply }),
		'film.applied'
	),
	'release.drying': row(
		'film',
		(w, c) => ({ title: filmTitle(w, c), what: w.steps.film.dry }),
		'film.dried'
	),
	frame: row(
		'frame',
		({ steps: { frame } }, c) => ({
			title: frame.title,
			what: frame.what(Math.round(c.plan.frame.gapMm))
		}),
		'frame.fitted'
	),
	...holdRows('readyToCoat')
};
