import type { RequestEvent } from '@sveltejs/kit';
import { liveResponse } from './live-response';
import { ApiProblem } from './problem';
import { rateFactor } from './rate-limit';
import { hashOf, SESSION_COOKIE } from './sessions';
import { MOST_STREAMS, StreamSlots } from './stream-slots';

const slots = new StreamSlots();
const times = rateFactor();
/** Till another screen was closed, which nobody knows beforehand. */
const WAIT_S = 30;

/** A live stream for whoever asks. @throws ApiProblem 429 when their session or address has too many open */
export function liveStream(
	{ locals, cookies }: Pick<RequestEvent, 'locals' | 'cookies'>,
	...[pick, now]: Parameters<typeof liveResponse>
): Response {
	const release = slots.take({
		[`session ${hashOf(cookies.get(SESSION_COOKIE) ?? '')}`]: MOST_STREAMS.session * times,
		[`address ${locals.address}`]: MOST_STREAMS.address * times
	});
	if (release) return liveResponse(pick, now, release);
	throw new ApiProblem({
		status: 429,
		code: 'too-many-streams',
		detail: `Too many live screens are open: up to ${MOST_STREAMS.session * times} in one session, ${MOST_STREAMS.address * times} from one address. Close some.`,
		waitS: WAIT_S
	});
}
