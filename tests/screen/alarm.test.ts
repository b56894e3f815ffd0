import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Alarm } from '../../src/lib/device/alarm.svelte';
import { keepScreenLit } from '../../src/lib/device/wake-lock';

/** Each tone that was started, by its pitch and when it begins. */
let tones: Array<[hz: number, atS: number]>;
let vibrate: ReturnType<typeof vi.fn>;

class FakeAudio {
	currentTime = 5;
	destination = {};
	resume = () => Promise.resolve();
	createGain() {
		const gain = { setValueAtTime: () => {}, linearRampToValueAtTime: () => {} };
		return { gain, connect: () => {} };
	}
	createOscillator() {
		const frequency = { value: 0 };
		return {
			frequency,
			connect: (to: object) => to,
			start: (atS: number) => tones.push([frequency.value, atS]),
			stop: () => {}
		};
	}
}

beforeEach(() => {
	vi.useFakeTimers();
	tones = [];
	vibrate = vi.fn();
	vi.stubGlobal('AudioContext', FakeAudio);
	vi.stubGlobal('navigator', { vibrate });
});
afterEach(() => {
	vi.useRealTimers();
	vi.unstubAllGlobals();
});

test('asked for by a touch, it rings by sound and vibration, and its words stay for a minute', async () => {
	const alarm = new Alarm();
	await alarm.turnOn();
	expect(tones).toHaveLength(1);
	tones = [];
	alarm.ring('The cup’s time is up');
	expect(alarm.ringing).toBe('The cup’s time is up');
	expect(vibrate).toHaveBeenCalledOnce();
	expect(tones.map(([hz]) => hz)).toEqual([880, 660, 880, 660, 880, 660]);
	expect(tones.every(([, atS], n) => atS >= 5 && atS >= (tones[n - 1]?.[1] ?? 0))).toBe(true);
	vi.advanceTimersByTime(59_000);
	expect(alarm.ringing).not.toBeNull();
	vi.advanceTimersByTime(1000);
	expect(alarm.ringing).toBeNull();
});

test('not asked for, it still shows its words, and makes no noise', () => {
	const alarm = new Alarm();
	alarm.ring('Test the tack');
	expect(alarm.ringing).toBe('Test the tack');
	expect(tones).toEqual([]);
	expect(vibrate).not.toHaveBeenCalled();
	alarm.quiet();
	expect(alarm.ringing).toBeNull();
});

test('where there is no sound and nothing shakes it still shows', async () => {
	vi.stubGlobal('AudioContext', undefined);
	vi.stubGlobal('navigator', {});
	const alarm = new Alarm();
	await alarm.turnOn().catch(() => {});
	expect(alarm.isOn).toBe(true);
	alarm.ring('Brush back');
	expect(alarm.ringing).toBe('Brush back');
});

/** A page that can be hidden and shown, on a device that keeps its screen lit when asked. */
function page(request: () => Promise<{ release: () => Promise<void> }>) {
	const heard = new Set<() => void>();
	const document = {
		visibilityState: 'visible',
		addEventListener: (_: string, listener: () => void) => heard.add(listener),
		removeEventListener: (_: string, listener: () => void) => heard.delete(listener)
	};
	vi.stubGlobal('document', document);
	vi.stubGlobal('navigator', { wakeLock: { request } });
	const show = (visibilityState: string) => {
		document.visibilityState = visibilityState;
		for (const listener of heard) listener();
	};
	return { show, heard };
}

test('the screen stays lit while the page shows, again after it was hidden, and no longer than that', async () => {
	const release = vi.fn(() => Promise.resolve());
	const request = vi.fn(() => Promise.resolve({ release }));
	const { show, heard } = page(request);
	const end = keepScreenLit();
	expect(request).toHaveBeenCalledTimes(1);
	show('hidden');
	expect(request).toHaveBeenCalledTimes(1);
	show('visible');
	expect(request).toHaveBeenCalledTimes(2);
	await vi.advanceTimersByTimeAsync(0);
	end();
	expect(release).toHaveBeenCalledOnce();
	expect(heard.size).toBe(0);
});

test('a page left before the lock was given lets it go at once; a refused one breaks nothing', async () => {
	const release = vi.fn(() => Promise.resolve());
	page(() => Promise.resolve({ release }));
	keepScreenLit()();
	await vi.advanceTimersByTimeAsync(0);
	expect(release).toHaveBeenCalledOnce();
	page(() => Promise.reject(new Error('battery low')));
	keepScreenLit()();
	await vi.advanceTimersByTimeAsync(0);
});
