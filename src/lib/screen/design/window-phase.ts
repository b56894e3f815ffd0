import { controls } from '$lib/core/language/en/controls';

/** Where an instant lies against a window: before it, well inside, near its end, past it. */
export type WindowPhase = 'wait' | 'test-now' | 'closing' | 'closed';

interface Window {
	/** ISO instant at which the test may first be tried. */
	opensAt: string;
	/** ISO instant at which the window shuts; null when it never does. */
	closesAt: string | null;
	/** ISO instant that counts as the present. */
	now: string;
	/** Longest "closing" stretch before the end, seconds; never more than a third of the window. */
	closingS?: number;
}

/**
 * @returns the phase and the whole seconds to the next edge: to the opening while waiting, to the
 *   end while open; past the end they count up. `leftS` is null in a window that never shuts. One that
 *   shuts before it opens, where laying took long, presses until it shuts: what was laid first is testable sooner.
 * @throws RangeError when an instant cannot be read
 */
export function windowPhase({ opensAt, closesAt, now, closingS = 600 }: Window): {
	phase: WindowPhase;
	leftS: number | null;
} {
	const opensMs = instantMs(opensAt, 'opensAt');
	const nowMs = instantMs(now, 'now');
	const closesMs = closesAt === null ? Infinity : instantMs(closesAt, 'closesAt');
	if (nowMs < opensMs && opensMs <= closesMs) {
		return { phase: 'wait', leftS: Math.ceil((opensMs - nowMs) / 1000) };
	}
	if (closesAt === null) return { phase: 'test-now', leftS: null };
	if (nowMs >= closesMs) return { phase: 'closed', leftS: Math.floor((nowMs - closesMs) / 1000) };
	const closingMs = Math.min(closingS * 1000, (closesMs - opensMs) / 3);
	return {
		phase: closesMs < opensMs || nowMs >= closesMs - closingMs ? 'closing' : 'test-now',
		leftS: Math.floor((closesMs - nowMs) / 1000)
	};
}

/** Seconds as a clock shows them: "4:05", "1:02:09". Sign is dropped. */
export function clockText(seconds: number): string {
	const whole = Math.abs(Math.trunc(seconds));
	const h = Math.floor(whole / 3600);
	const m = Math.floor((whole % 3600) / 60);
	const s = String(whole % 60).padStart(2, '0');
	return h > 0 ? `${h}:${String(m).padStart(2, '0')}:${s}` : `${m}:${s}`;
}

/** Seconds as a voice says them, in the two largest units: "1 hour 2 minutes". */
export function spokenDuration(seconds: number, said = controls.duration): string {
	const whole = Math.abs(Math.trunc(seconds));
	const parts: [number, (count: number) => string][] = [
		[Math.floor(whole / 3600), said.hours],
		[Math.floor((whole % 3600) / 60), said.minutes],
		[whole % 60, said.seconds]
	];
	const told = parts.filter(([count]) => count > 0).slice(0, 2);
	if (told.length === 0) return said.seconds(0);
	return told.map(([count, say]) => say(count)).join(' ');
}

function instantMs(at: string, name: string): number {
	const ms = Date.parse(at);
	if (Number.isNaN(ms)) throw new RangeError(`${name} is "${at}"; accepted: an ISO instant`);
	return ms;
}
