import { COATING } from './fields/coating';
import { CUPS } from './fields/cups';
import { FINISHING } from './fields/finishing';
import { INTERRUPTING } from './fields/interrupting';
import { PREPARING } from './fields/preparing';
import { SHELLING } from './fields/shelling';
import { SUPERVISING } from './fields/supervising';
import type { FieldMakers } from './fields/field';

/** The fields each act asks for, from the present state. Acts that ask for nothing are left out. */
export const ACT_FIELDS: FieldMakers = {
	...PREPARING,
	...CUPS,
	...COATING,
	...SHELLING,
	...FINISHING,
	...SUPERVISING,
	...INTERRUPTING
};
