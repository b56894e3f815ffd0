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

/** What stands against a pair of materials; "refuse" means that the mold would be lost. */
export interface PairProblem {
	code: string;
	severity: 'refuse' | 'warn' | 'note';
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
