import { afterEach, expect, test, vi } from 'vitest';
import { closeLive, publishAppended, publishGap } from '../../src/lib/server/live';
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

test('many appends in a moment are told as the last one of each job', async () => {
	vi.useFakeTimers();
	const response = liveResponse(
		({ jobId, seq }) => ({ jobId, seq }),
		async () => ({ seq: 0 })
	);
	const said: string[] = [];
	const reading = response.body?.pipeThrough(new TextDecoderStream()).pipeTo(
		new WritableStream({
			write(text) {
				said.push(...text.split('\n\n').filter((line) => line.includes('jobId')));
			}
		})
	);
	for (let seq = 2; seq <= 30; seq++) publishAppended({ jobId: 'a', seq });
	publishAppended({ jobId: 'b', seq: 5 });
	await vi.advanceTimersByTimeAsync(100);
	publishAppended({ jobId: 'a', seq: 31 });
	await vi.advanceTimersByTimeAsync(1000);
	publishAppended({ jobId: 'a', seq: 32 });
	await vi.advanceTimersByTimeAsync(0);
	expect(said.map((line) => JSON.parse(line.slice('data: '.length)) as object)).toEqual([
		{ jobId: 'a', seq: 2 },
		{ jobId: 'a', seq: 30 },
		{ jobId: 'b', seq: 5 },
		{ jobId: 'a', seq: 31 },
		{ jobId: 'a', seq: 32 }
	]);
	closeLive();
	await reading;
});

test('whoever ends a stream, its place is given back once', async () => {
	const onend = vi.fn();
	const now = async () => ({ seq: 1 });
	await liveResponse(() => null, now, onend).body?.cancel();
	expect(onend).toHaveBeenCalledTimes(1);
	const open = liveResponse(() => null, now, onend);
	closeLive();
	await open.text();
	expect(onend).toHaveBeenCalledTimes(2);
	const failing = liveResponse(
		() => null,
		() => Promise.reject(new Error('gone')),
		onend
	);
	await expect(failing.text()).rejects.toThrow('gone');
	expect(onend).toHaveBeenCalledTimes(3);
});
