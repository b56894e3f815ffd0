/** How many requests one address may send: `perMin` for as long as it likes, `burst` at once. */
export interface Rate {
	burst: number;
	perMin: number;
}

export type RateKind = 'read' | 'write' | 'secret';

/**
 * Requests of one network address, and of a request with several acts each act. A shop's benches may share one address, so these stop a program that
 * runs wild, not people; what stops guessing is the wait after wrong PINs. Common practice, no source.
 */
export const RATES: Record<RateKind, Rate> = {
	read: { burst: 600, perMin: 3000 },
	write: { burst: 300, perMin: 900 },
	/** Each of these costs the server a memory-hard hash. */
	secret: { burst: 30, perMin: 60 }
};

/** Addresses remembered at once; beyond it the one unused for longest starts anew. */
const MOST_BUCKETS = 20_000;

/** Token buckets, one for each key. Time comes in, so that it may be a test's. */
export class RateLimiter {
	readonly #buckets = new Map<string, { tokens: number; atMs: number }>();

	/**
	 * Takes as many tokens as something counts for, all or none; never more than may be taken at once.
	 *
	 * @returns whole seconds to wait; 0 when it may go on
	 */
	take(key: string, { burst, perMin }: Rate, nowMs: number, count = 1): number {
		const perMs = perMin / 60_000;
		const kept = this.#buckets.get(key);
		const grown = kept ? kept.tokens + Math.max(0, nowMs - kept.atMs) * perMs : burst;
		const tokens = Math.min(burst, grown);
		const asked = Math.min(count, Math.max(1, burst));
		const isTaken = tokens >= asked;
		this.#buckets.delete(key);
		this.#buckets.set(key, { tokens: isTaken ? tokens - asked : tokens, atMs: nowMs });
		if (this.#buckets.size > MOST_BUCKETS) {
			this.#buckets.delete(this.#buckets.keys().next().value ?? key);
		}
		return isTaken ? 0 : Math.ceil((asked - tokens) / perMs / 1000);
	}
}

const CHECKS_SECRET = /^\/(sign-in|new-pin|unlock|people|api\/session|(api\/)?jobs\/[^/]+\/sign)\b/;

/** Which limit a request counts against; null for those that watch over the server. */
export function rateKindOf(method: string, path: string): RateKind | null {
	if (path === '/healthz' || path === '/readyz') return null;
	if (method === 'GET' || method === 'HEAD' || method === 'OPTIONS') return 'read';
	return CHECKS_SECRET.test(path) ? 'secret' : 'write';
}

/** GLOVEWRIGHT_RATE_FACTOR, for a large shop behind one address or a load test; 1 when it is no positive number. */
export function rateFactor(factor = process.env.GLOVEWRIGHT_RATE_FACTOR): number {
	const times = Number(factor);
	return times > 0 && Number.isFinite(times) ? times : 1;
}

/** The limits times `rateFactor`. */
export function ratesOf(factor = process.env.GLOVEWRIGHT_RATE_FACTOR): Record<RateKind, Rate> {
	const times = rateFactor(factor);
	const scaled = ({ burst, perMin }: Rate) => ({ burst: burst * times, perMin: perMin * times });
	return { read: scaled(RATES.read), write: scaled(RATES.write), secret: scaled(RATES.secret) };
}
