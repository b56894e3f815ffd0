import { afterEach, expect, test, vi } from 'vitest';
import { publishAppended, publishGap } from '../../src/lib/server/live';
import { liveResponse } from '../../src/lib/server/live-response';

afterEach(() => void vi.useRealTimers());

test('a stream that fails at its first word leaves no timer and hears no more', async () => {
	vi.useFakeTimers();
	const heard = vi.fn(() => null);
	const response = liveResponse(heard, () => Promise.reject(new Error('the disk is gone')));
	await expect(response.text()).rejects.toThrow('the disk is gone');
	expect(vi.getTimerCount()).toBe(0);
	publishAppended({ jobId: 'job-00001', seq: 2 });
	expect(heard).not.toHaveBeenCalled();
});

test('a stream that is let go leaves no timer', async () => {
	vi.useFakeTimers();
	const response = liveResponse(
		({ seq }) => ({ seq }),
		async () => ({ seq: 1 })
	);
	expect(vi.getTimerCount()).toBe(1);
	await response.body?.cancel();
	expect(vi.getTimerCount()).toBe(0);
});

test('when something may have been missed, a stream says where things stand once more', async () => {
	let seq = 1;
	const response = liveResponse(
		() => null,
		async () => ({ seq })
	);
	const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
	const words = async () => (await reader?.read())?.value;
	expect([await words(), await words()]).toEqual(['retry: 2000\n\n', 'data: {"seq":1}\n\n']);
	seq = 7;
	publishGap();
	expect(await words()).toBe('data: {"seq":7}\n\n');
	await reader?.cancel();
	publishGap();
});

test('a stream that cannot say where things stand ends', async () => {
	let isBroken = false;
	const response = liveResponse(
		() => null,
		async () => {
			if (isBroken) throw new Error('the database is gone');
			return { seq: 1 };
		}
	);
	isBroken = true;
	publishGap();
	publishGap();
	expect(await response.text()).toBe('retry: 2000\n\ndata: {"seq":1}\n\n');
});
