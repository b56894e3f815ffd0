import { expect, test } from 'vitest';
import { errorWords } from '../../src/lib/screen/design/error-words';

test.each(['supervisor', 'owner'])(
	'an error page does not send a %s to their supervisor',
	(role) => {
		for (const status of [null, 500, 503]) {
			expect(errorWords(status, role).advice).not.toContain('supervisor');
		}
	}
);

test('an apprentice is told whom to tell, and what', () => {
	expect(errorWords(500, 'apprentice').advice).toContain('tell your supervisor the request');
	expect(errorWords(null, 'apprentice').advice).toContain('tell your supervisor the address');
});

test.each([
	[401, 'Sign in first'],
	[403, 'This sheet is not yours to open'],
	[404, 'There is no such sheet'],
	[418, 'This cannot be done'],
	[500, 'Something broke on our side']
])('%d is said in words', (status, title) => expect(errorWords(status).title).toBe(title));
