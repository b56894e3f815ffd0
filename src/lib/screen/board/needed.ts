import type { ShopDay } from '$lib/core/process/ahead/shop-days';
import type { DaysLine } from './days-line';

/** One thing that somebody is needed for. */
export interface Need {
	moldId: string;
	mold: string;
	what: string;
	fromMs: number;
	toMs: number;
	/** When it must have begun; null when it can wait. */
	latestMs: number | null;
	isOutside: boolean;
}

/** What one person, or whoever is a supervisor, is needed for on one day. */
export interface NeededPerson {
	who: string;
	needs: Need[];
}

const SUPERVISOR = 'A supervisor';
const NOBODY = 'Nobody yet';

/** For each day who is needed where, in the order of time: people by the first thing they are needed for. */
export function neededByDay(
	lines: readonly DaysLine[],
	days: readonly ShopDay[],
	nowMs: number
): NeededPerson[][] {
	const all = lines.flatMap((line) => needsOf(line, nowMs));
	return days.map((day) => {
		const own = all
			.filter(({ need }) => need.fromMs >= day.fromMs && need.fromMs < day.toMs)
			.sort((a, b) => a.need.fromMs - b.need.fromMs);
		const people = new Map<string, Need[]>();
		for (const { who, need } of own) people.set(who, [...(people.get(who) ?? []), need]);
		return [...people].map(([who, needs]) => ({ who, needs }));
	});
}

function needsOf(line: DaysLine, nowMs: number): Array<{ who: string; need: Need }> {
	const { id: moldId, title: mold, ask, worker, stretches } = line;
	const plain = { moldId, mold };
	const asked = ask && {
		who: SUPERVISOR,
		need: {
			...plain,
			what: ask.text,
			fromMs: nowMs,
			toMs: nowMs,
			latestMs: null,
			isOutside: false
		}
	};
	const ahead = stretches
		.filter(({ kind }) => kind === 'work' || kind === 'hold')
		// The hold point that is asked for already stands at the top.
		.filter(({ kind }, index) => !(ask?.kind === 'signature' && kind === 'hold' && index === 0))
		.map(({ kind, title, fromMs, toMs, latestMs, isOutside }) => ({
			who: kind === 'hold' ? SUPERVISOR : worker || NOBODY,
			need: { ...plain, what: title, fromMs, toMs, latestMs, isOutside }
		}));
	return asked ? [asked, ...ahead] : ahead;
}
