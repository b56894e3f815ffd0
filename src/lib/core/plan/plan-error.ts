export interface PlanProblem {
	/** Field of the inputs, dotted, for example "pattern.body.solids.2.on"; empty for the whole. */
	path: string;
	message: string;
}

/** Inputs from which no plan can be computed; every reason at once. */
export class PlanError extends Error {
	readonly problems: readonly PlanProblem[];

	constructor(problems: readonly PlanProblem[], options?: ErrorOptions) {
		super(
			problems.map(({ path, message }) => (path ? `${path}: ${message}` : message)).join('\n'),
			options
		);
		this.name = 'PlanError';
		this.problems = problems;
	}
}
