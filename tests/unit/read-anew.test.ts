import { expect, test, vi } from 'vitest';
import { readAnew } from '../../src/lib/device/read-anew';

const kit = vi.hoisted(() => ({
	invalidate: vi.fn((_key: string) => Promise.resolve()),
	navigating: { complete: null as Promise<void> | null }
}));
vi.mock('$app/navigation', () => ({ invalidate: kit.invalidate }));
vi.mock('$app/state', () => ({ navigating: kit.navigating }));

test('a way to another page that has begun ends first, also when it fails', async () => {
	for (const isGood of [true, false]) {
		kit.invalidate.mockClear();
		let end = () => {};
		kit.navigating.complete = new Promise((resolve, reject) => {
			end = isGood ? resolve : () => reject(new Error('called off'));
		});
		const read = readAnew('gw:job');
		await new Promise((resolve) => setTimeout(resolve, 0));
		expect(kit.invalidate).not.toHaveBeenCalled();
		end();
		await read;
		expect(kit.invalidate).toHaveBeenCalledExactlyOnceWith('gw:job');
	}
});

test('with nothing under way it is read at once', async () => {
	kit.invalidate.mockClear();
	kit.navigating.complete = null;
	await readAnew('board:lines');
	expect(kit.invalidate).toHaveBeenCalledExactlyOnceWith('board:lines');
});
