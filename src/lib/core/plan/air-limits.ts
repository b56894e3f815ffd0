import type { LimitKind, LimitSet } from '../laws/exposure-limits';
import { strictestLimit, strictestLimitLaw } from '../laws/strictest-limit';
import type { SubstanceId } from '../laws/substances';
import type { Plan } from './plan';
import { constant, traced, type Draft } from './trace';

type AirLimit = NonNullable<NonNullable<Plan['air']>['steps'][number]['limit']>;

/** The strictest limit of one kind among lists; null when none of them has one. */
export function limitOf(
	id: SubstanceId,
	sets: readonly LimitSet[],
	kind: LimitKind
): AirLimit | null {
	const found = strictestLimit({ substance: id, sets, kind });
	return found && { ppm: found.limitPpm, kind, set: found.set, edition: found.source };
}

/** Leaves the trace of the strictest limit among those that the chosen lists have. */
export function traceLimit(
	draft: Draft,
	path: string,
	substance: string,
	limit: AirLimit,
	limits: readonly AirLimit[]
): void {
	traced(draft, path, {
		label: `${substance}: the strictest of the chosen lists (${limit.kind})`,
		value: limit.ppm,
		unit: 'ppm',
		law: strictestLimitLaw,
		inputs: limits.map(({ ppm, set, kind, edition }, i) =>
			constant(`L_${i + 1}`, `${set}, ${kind}, ${edition}`, ppm, 'ppm')
		),
		note: 'The most allowed, not a safe level; lists change.'
	});
}
