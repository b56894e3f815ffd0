import { expect, test } from 'vitest';
import { fit } from '../../src/lib/server/api';
import { newActId } from '../../src/lib/server/act-id';
import { newEventSchema, newSessionSchema } from '../../src/lib/server/api-schemas';
import { ApiProblem } from '../../src/lib/server/problem';

function problemOf(act: () => unknown) {
	try {
		act();
	} catch (error) {
		if (error instanceof ApiProblem) return error.problem;
		throw error;
	}
	throw new Error('it was taken');
}
const act = { id: newActId(), seq: 2, event: { type: 'room.read' } };

test('a body that does not fit is told field by field what it is and what would be accepted', () => {
	const told = (value: unknown) => problemOf(() => fit(newEventSchema, value)).detail;
	expect(told({ ...act, seq: 1.5 })).toBe('seq is 1.5; accepted: a whole number.');
	expect(told({ ...act, seq: 1 })).toBe('seq is 1; accepted: 2 or more.');
	expect(told({ ...act, id: 'x' })).toBe('id is “x”; accepted: a UUID of version 7 (RFC 9562).');
	expect(told({ ...act, event: {} })).toBe('type is missing; accepted: a text.');
	expect(told(null)).toBe('The whole is “null”; accepted: an object with its fields.');
	expect(told({})).toMatch(/^id is missing; .* And 2 more\.$/);
});

test('a PIN that cannot be taken is not told back', () => {
	const sent = { personId: 'ada', pin: '98765432109876543210987', newPin: '12x456' };
	const { detail, errors } = problemOf(() => fit(newSessionSchema, sent));
	expect(JSON.stringify({ detail, errors })).not.toMatch(/98765|12x456/);
	expect(errors?.[1]).toEqual({
		path: 'newPin',
		message: 'newPin cannot be taken; accepted: a PIN of 4 to 8 digits.'
	});
});
