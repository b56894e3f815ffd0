import { afterEach, expect, test, vi } from 'vitest';
import { publishAppended } from '../../src/lib/server/live';
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
