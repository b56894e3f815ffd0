import type { Figure, FigureInput } from '../quantity/figure';
import type { Plan } from './plan';

export interface ExplainedInput extends FigureInput {
	/** How this input came about, when it is itself a number of the plan. */
	from?: Explanation;
}

/** A number of the plan with everything it stands on. */
export interface Explanation extends Omit<Figure, 'inputs'> {
	path: string;
	inputs: ExplainedInput[];
}

/**
 * The whole trace of a number as a tree: formula, inputs with their origin, unit, range, validity and
 * source, each computed input opened in turn.
 *
 * @param path - of the number in the plan, for example "coats.0.massG"
 * @returns null when the number has no trace
 */
export function explain(plan: Pick<Plan, 'figures'>, path: string): Explanation | null {
	return opened(plan.figures, path, []);
}

function opened(
	figures: Plan['figures'],
	path: string,
	above: readonly string[]
): Explanation | null {
	const figure = Object.hasOwn(figures, path) ? figures[path] : undefined;
	// A number that stands on itself would have no end.
	if (!figure || above.includes(path)) return null;
	const { inputs, low, high, note, ...rest } = figure;
	return {
		...rest,
		...(low === undefined ? {} : { low }),
		...(high === undefined ? {} : { high }),
		...(note === undefined ? {} : { note }),
		path,
		inputs: inputs.map(({ figure: key, ...input }): ExplainedInput => {
			const base = key === undefined ? input : { ...input, figure: key };
			const from = key === undefined ? null : opened(figures, key, [...above, path]);
			return from ? { ...base, from } : base;
		})
	};
}
