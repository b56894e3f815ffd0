import { coatAtWork, type ProcessContext } from './context';
import { isTooSoon } from './early-test';
import type { LoggedEvent } from './events';
import { secondsBetween } from './instant';
import { advance, contextOf, openJob, type JobState } from './job';

/** A wait as kept: from the act that began it to the test that ended it. */
export interface AsBuiltWait {
	what: string;
	/** Not before this long. */
	plannedS: number;
	actualS: number;
	/** Until when at the latest, counted from the same start; null when there is no window. */
	closesS: number | null;
	/** Where the plan has the one and the other, for example "coats.0.tackTestS"; null where nothing closes. */
	plannedPath: string;
	closesPath: string | null;
	startedAt: string;
	endedAt: string;
}

/** The waits that ended with a passed test, in order. */
export function waitsKept(state: JobState): AsBuiltWait[] {
	const [first, ...rest] = state.effective;
	if (!first) return [];
	const waits: AsBuiltWait[] = [];
	let before = openJob(contextOf(state).plan, first);
	for (const logged of rest) {
		const next = advance(before, logged);
		if (!next.ok) throw new Error(`event ${logged.seq}: ${next.reason}`);
		const wait = endedBy(logged, contextOf(before), contextOf(next.state));
		if (wait) waits.push(wait);
		before = next.state;
	}
	return waits;
}

function endedBy(
	{ event }: LoggedEvent,
	c: ProcessContext,
	after: ProcessContext
): AsBuiltWait | null {
	const { plan } = c;
	const wait = (
		what: string,
		plannedPath: string,
		startedAt: string | null,
		plannedS: number,
		closes: { closesS: number; closesPath: string } | null = null
	): AsBuiltWait | null =>
		startedAt === null
			? null
			: {
					what,
					plannedS,
					actualS: secondsBetween(startedAt, event.at),
					closesS: closes?.closesS ?? null,
					plannedPath,
					closesPath: closes?.closesPath ?? null,
					startedAt,
					endedAt: event.at
				};

	switch (event.type) {
		case 'sealer.dried':
			return wait(
				`Sealer, coat ${c.sealerCoats + 1}: dry`,
				'release.sealerDryS',
				c.waitSinceAt,
				plan.release.sealerDryS ?? 0
			);
		case 'wax.buffed':
			return wait(
				`Wax, coat ${c.waxCoats + 1}: haze`,
				'release.waxHazeS',
				c.waitSinceAt,
				plan.release.waxHazeS
			);
		case 'film.dried':
			return wait(
				`Film, pass ${c.filmPasses + 1}: dry`,
				'release.filmDryS',
				c.waitSinceAt,
				plan.release.filmDryS
			);
		case 'coat.brushedBack': {
			const coat = coatAtWork(c);
			return wait(
				`${coat?.title ?? 'Coat'}: brush back`,
				`coats.${c.coatIndex}.brushBackS`,
				c.finishedAt,
				coat?.brushBackS ?? 0
			);
		}
		case 'tack.tested': {
			const coat = coatAtWork(c);
			const isLast = c.coatIndex + 1 >= c.coats.length;
			const isPassed = event.result === 'hard' ? isLast : after.tackPassed && !c.tackPassed;
			if (!coat || !isPassed || c.laidG === 0 || isTooSoon(c, event.at)) return null;
			return wait(
				`${coat.title}: fingertip test`,
				`coats.${c.coatIndex}.tackTestS`,
				c.finishedAt,
				coat.tackTestS,
				{
					closesS:
						c.finishedAt && c.windowClosesAt
							? secondsBetween(c.finishedAt, c.windowClosesAt)
							: coat.windowClosesS,
					closesPath: `coats.${c.coatIndex}.windowClosesS`
				}
			);
		}
		case 'glove.tested':
			return after.phase === c.phase
				? null
				: wait('Glove cure', 'gloveCure.testS', c.finishedAt, plan.gloveCure.testS);
		case 'shell.tested':
			return event.result === 'hard'
				? wait('Shell cure', 'shellCure.testS', c.finishedAt, plan.shellCure.testS)
				: null;
		default:
			return null;
	}
}
