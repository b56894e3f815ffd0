import type { StepSlug } from '../content/vocabulary';
import { coatAtWork, type ProcessContext } from './context';
import { COATING } from './steps/coating';
import { FINISHING } from './steps/finishing';
import { PREPARING } from './steps/preparing';
import { RESTING } from './steps/resting';
import { SHELLING } from './steps/shelling';
import type { StepRow } from './steps/row';

const coatSlug = (c: ProcessContext): StepSlug =>
	coatAtWork(c)?.kind === 'detail' ? 'detail-coat' : 'build-coat';

/** One row for each state in which the machine can rest; a test holds the two together. */
export const STEP_TABLE: Readonly<Record<string, StepRow>> = {
	...PREPARING,
	...COATING,
	...SHELLING,
	...FINISHING,
	...RESTING
};

/** The step text that fits: laying a coat has one text for thin, another for build coats. */
export function slugFor(path: string, c: ProcessContext): StepSlug {
	return path === 'coating.mixed' ? coatSlug(c) : (STEP_TABLE[path]?.slug ?? 'brief');
}
