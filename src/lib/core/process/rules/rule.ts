import type { ProcessContext } from '../context';
import type { RuleWords } from '../../language/en/rules';
import type { Words } from '../../language/words';
import type { EventOf, EventType, ProcessEvent } from '../events';
import { addSeconds, secondsBetween } from '../instant';

/** One condition of an act: whether it holds, and what to say to the person when it does not. */
export interface Rule {
	holds: (context: ProcessContext, event: ProcessEvent) => boolean;
	says: (context: ProcessContext, event: ProcessEvent, words: Words) => string;
	/** For a wait: the instant from which the rule holds, when it depends on the clock alone. */
	fromAt?: (context: ProcessContext) => string | null;
}

/** Rules by name; the names are kept, so that a guard can only ask for a rule that there is. */
export const rules = <Name extends string>(all: Record<Name, Rule>): Record<Name, Rule> => all;

export const is = <T extends EventType>(event: ProcessEvent, type: T): event is EventOf<T> =>
	event.type === type;

/** A rule that holds once `seconds` have passed since `since`. */
export function after(
	since: (c: ProcessContext) => string | null,
	seconds: (c: ProcessContext) => number,
	what: (words: RuleWords) => string
): Rule {
	const fromAt = (c: ProcessContext) => {
		const at = since(c);
		return at === null ? null : addSeconds(at, seconds(c));
	};
	return {
		holds: (c, e) => {
			const at = fromAt(c);
			return at === null || secondsBetween(at, e.at) >= 0;
		},
		says: (c, _e, { rules: said }) => said.notBefore({ what: what(said), at: fromAt(c) ?? '' }),
		fromAt
	};
}
