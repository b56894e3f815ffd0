import { CUPS } from './rules/cups';
import { FINISHING_RULES } from './rules/finishing';
import { HOLD_RULES } from './rules/holds';
import { LAID } from './rules/laid';
import { PEOPLE } from './rules/people';
import { RELEASE } from './rules/release';
import { ROOM } from './rules/room';
import type { Rule } from './rules/rule';
import { SURFACE } from './rules/surface';
import { TROUBLE_RULES } from './rules/troubles';

/** Every condition of every act, by name. */
export const RULES = {
	...PEOPLE,
	...ROOM,
	...RELEASE,
	...HOLD_RULES,
	...CUPS,
	...SURFACE,
	...LAID,
	...FINISHING_RULES,
	...TROUBLE_RULES
};

export type RuleName = keyof typeof RULES;

/** The rule by name, with its optional members visible. */
export function rule(name: RuleName): Rule {
	return RULES[name];
}
