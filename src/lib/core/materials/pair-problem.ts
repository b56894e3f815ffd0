import type { Sheet } from './sheet';

/** The sheets chosen for one mold; the same shape as the plan's choice of materials. */
export interface ChosenSheets {
	detail?: Sheet | undefined;
	build: Sheet;
	shell: Sheet;
	reinforcement?: Sheet | undefined;
	wax?: Sheet | undefined;
	film?: Sheet | undefined;
	sealer?: Sheet | undefined;
	casting: Sheet;
}

/**
 * How much stands against a plan, worst first: "refuse" means that the mold would be lost, "decide" that only
 * a supervisor may let it be built so, with a reason.
 */
export const SEVERITIES = ['refuse', 'decide', 'warn', 'note'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** For sorting: worst first. */
export const worstFirst = (a: { severity: Severity }, b: { severity: Severity }): number =>
	SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity);

/** What stands against a pair of materials. */
export interface PairProblem {
	code: string;
	severity: Severity;
	where: 'materials';
	text: string;
}

export const problem = (
	severity: PairProblem['severity'],
	code: string,
	text: string
): PairProblem => ({
	code,
	severity,
	where: 'materials',
	text
});
