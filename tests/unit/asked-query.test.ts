import { expect, test } from 'vitest';
import { AskedQuery } from '$lib/screen/board/asked-query';

test('a page read anew puts back nothing that is being chosen', () => {
	const query = new AskedQuery('');
	expect(query.isNews('status=all')).toBe(true);
	expect(query.isNews('status=all')).toBe(false);
	query.ask('phase=cure');
	expect(query.isNews('status=all')).toBe(false);
	expect(query.isNews('phase=cure')).toBe(false);
});

test('a link and the way back are taken over, even back to what the form asked for', () => {
	const query = new AskedQuery('');
	query.ask('q=relief');
	expect(query.isNews('q=relief')).toBe(false);
	expect(query.isNews('')).toBe(true);
	expect(query.isNews('q=relief')).toBe(true);
});
