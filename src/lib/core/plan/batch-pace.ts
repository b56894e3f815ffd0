import { cupPace, cupPaceLaw } from '../laws/cup-pace';
import type { Wanted } from './batch-plan';
import type { Cup } from './plan';
import { computed, entered, traced, warn, type Draft } from './trace';

/**
 * From the first mixing of a coat or round to its last empty cup, in seconds. Alone, a person mixes and
 * lays in turn; of a crew one mixes the next cup while the others lay, as the bench lets them.
 */
export function batchPace(
	draft: Draft,
	{ path, place, title, rateGPerMin, bondWindowS }: Wanted,
	{ cups, mixS, workingS }: { cups: readonly Cup[]; mixS: number; workingS: number }
): number {
	const { people } = draft.inputs;
	const layersCount = Math.max(1, people - 1);
	const pace = cupPace({
		cupsG: cups.map((cup) => cup.massG),
		people: layersCount,
		hasMixer: people > 1,
		mixingTimeS: mixS,
		workingTimeS: workingS + mixS,
		layingRateGPerMin: rateGPerMin,
		bondWindowS
	});
	for (const text of pace.warnings) warn(draft, 'warn', 'pace', place, `${title}: ${text}`);
	const cupG = cups[0]?.massG ?? 0;
	const who = people > 1 ? 'of them lay, one mixes ahead' : 'of them mixes and lays in turn';
	return traced(draft, `${path}.paceS`, {
		label: `${title}: from the first mixing to the last empty cup`,
		value: pace.totalS,
		unit: 's',
		law: cupPaceLaw,
		inputs: [
			computed('n', 'cups', cups.length, 'count'),
			computed('M', 'each cup', cupG, 'g', `${path}.cups.0.massG`),
			computed('t_mix', 'to mix a cup', mixS, 's'),
			computed('t_lay', 'to lay a cup', (60 * cupG) / rateGPerMin, 's'),
			entered('q', 'one person lays', rateGPerMin, 'g/min'),
			entered('n_people', 'at work', people, 'count'),
			computed('n_lay', who, layersCount, 'count'),
			computed('gap', 'between two cups', pace.gapS, 's')
		]
	});
}
