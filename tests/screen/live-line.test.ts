import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LiveLine } from '$lib/device/live-line.svelte';

/** A browser's EventSource that the test speaks through. */
class Source {
	static opened: Source[] = [];
	onopen = () => {};
	onerror = () => {};
	onmessage = (_: { data: string }) => {};
	onbeat = () => {};
	isClosed = false;
	constructor(readonly address: string) {
		Source.opened.push(this);
	}
	addEventListener(_name: 'beat', listener: () => void) {
		this.onbeat = listener;
	}
	close() {
		this.isClosed = true;
	}
}
const newest = () => Source.opened.at(-1) ?? new Source('none');
let page = new EventTarget();

beforeEach(() => {
	vi.useFakeTimers();
	Source.opened = [];
	page = new EventTarget();
	vi.stubGlobal('EventSource', Source);
	vi.stubGlobal('window', page);
	vi.stubGlobal('document', Object.assign(new EventTarget(), { visibilityState: 'visible' }));
});
afterEach(() => {
	vi.useRealTimers();
	vi.unstubAllGlobals();
});

function followed() {
	const line = new LiveLine();
	const heard: number[] = [];
	const end = line.follow('/live', (seq) => heard.push(seq));
	return { line, heard, end };
}

test('numbers are heard, and words that are none are not', () => {
	const { line, heard } = followed();
	expect(line.state).toBe('opening');
	newest().onopen();
	for (const data of ['{"seq":4}', 'nonsense', '{"seq":"5"}', 'null', '{"seq":6}']) {
		newest().onmessage({ data });
	}
	expect([line.state, heard]).toEqual(['live', [4, 6]]);
});

test('a line that drops is opened anew, soon at first and then ever less often, up to half a minute', () => {
	const { line } = followed();
	newest().onopen();
	for (let tries = 0; tries < 10; tries++) {
		newest().onerror();
		expect(line.state).toBe('dropped');
		const count = Source.opened.length;
		const longestMs = Math.min(30_000, 500 * 2 ** tries);
		vi.advanceTimersByTime(longestMs / 2 - 1);
		expect(Source.opened).toHaveLength(count);
		vi.advanceTimersByTime(longestMs / 2 + 1);
		expect(Source.opened).toHaveLength(count + 1);
	}
	newest().onopen();
	expect(line.state).toBe('live');
	newest().onerror();
	vi.advanceTimersByTime(500);
	expect(Source.opened).toHaveLength(12);
	expect(Source.opened.filter(({ isClosed }) => !isClosed)).toHaveLength(1);
});

test('a line on which even the beat is missing is down, though nobody said so', () => {
	const { line } = followed();
	newest().onopen();
	for (let beat = 0; beat < 5; beat++) {
		vi.advanceTimersByTime(10_000);
		newest().onbeat();
	}
	expect(line.state).toBe('live');
	vi.advanceTimersByTime(25_000);
	expect(line.state).toBe('dropped');
	expect(Source.opened).toHaveLength(1);
	vi.advanceTimersByTime(500);
	expect(Source.opened).toHaveLength(2);
});

test('a device that loses its network says so at once, and tries again when it has one', () => {
	const { line } = followed();
	newest().onopen();
	page.dispatchEvent(new Event('offline'));
	expect(line.state).toBe('dropped');
	page.dispatchEvent(new Event('online'));
	expect(Source.opened).toHaveLength(2);
});

test('a screen that is left leaves no line and no timer', () => {
	const { end } = followed();
	newest().onerror();
	end();
	expect(vi.getTimerCount()).toBe(0);
	page.dispatchEvent(new Event('online'));
	expect(Source.opened).toHaveLength(1);
});
