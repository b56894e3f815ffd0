import { ENGLISH } from '../language/words';
import type { ProcessContext } from './context';
import type { ProcessEvent } from './events';
import { rule } from './rules';

/** Why nobody can sign the hold point that is asked for, whoever they are; null when somebody can. */
export function unfitToSign(c: ProcessContext): string | null {
	if (c.hold === null) return null;
	const probe: ProcessEvent = { type: 'hold.signed', at: c.lastAt, by: '', hold: c.hold };
	const { holds, says } = rule('fitToAccept');
	return holds(c, probe) ? null : says(c, probe, ENGLISH);
}

/** Why nobody can end the trouble that stops the work, whoever they are; null when somebody can. */
export function unfitToEnd(c: ProcessContext): string | null {
	if (c.trouble === null) return null;
	const probe: ProcessEvent = {
		type: 'trouble.decided',
		at: c.lastAt,
		by: '',
		how: '',
		wayBack: 'resume'
	};
	const fails = (['testedGood', 'smokingCupAside'] as const)
		.map((name) => rule(name))
		.find(({ holds }) => !holds(c, probe));
	return fails ? fails.says(c, probe, ENGLISH) : null;
}
