import { expect, test } from 'vitest';
import { wallKey } from '$lib/screen/board/wall-key';

const bare = { altKey: false, ctrlKey: false, metaKey: false, shiftKey: false };

test.each([
	['ArrowRight', 'next'],
	['ArrowLeft', 'previous'],
	[' ', 'hold'],
	['Escape', 'leave'],
	['Enter', null],
	['Tab', null],
	['constructor', null]
] as const)('the key "%s" alone: %s', (key, does) => {
	expect(wallKey({ ...bare, key })).toBe(does);
});

test.each(['altKey', 'ctrlKey', 'metaKey', 'shiftKey'] as const)(
	'with %s held every key is left to the browser',
	(modifier) => {
		for (const key of ['ArrowRight', 'ArrowLeft', ' ', 'Escape']) {
			expect(wallKey({ ...bare, key, [modifier]: true }), key).toBeNull();
		}
	}
);
