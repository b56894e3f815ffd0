import { addSeconds } from '../process/instant';

/** One answer that a person gave to one question of a pool. */
export interface Answered {
	question: string;
	isRight: boolean;
	at: string;
}

/** What a person's answers say of one question. */
export interface Standing {
	/** When it is to be asked again; null while it was never missed, and once it is learned. */
	dueAt: string | null;
	/** When it was last asked; null when never. */
	askedAt: string | null;
}

const DAY_S = 86_400;

/**
 * How long a question that was missed rests after each right answer, in days; after the last of them it
 * counts as learned. That spaced asking keeps better than massed: Cepeda, Pashler, Vul, Wixted and Rohrer,
 * "Distributed practice in verbal recall tasks", Psychological Bulletin 132 (2006), from memory. These
 * lengths are common practice, no source.
 */
export const RESTS_DAYS = [1, 4, 12] as const;

/**
 * Where one question stands.
 *
 * @param answers - all answers to it, in order of time
 */
export function standingOf(answers: readonly Answered[]): Standing {
	let dueAt: string | null = null;
	let rests = 0;
	for (const { isRight, at } of answers) {
		if (!isRight) {
			dueAt = at;
			rests = 0;
			continue;
		}
		// Asked before its time, a right answer shows what was read a minute ago, and moves nothing.
		if (dueAt === null || at < dueAt) continue;
		const rest = RESTS_DAYS[rests];
		dueAt = rest === undefined ? null : addSeconds(at, rest * DAY_S);
		rests += 1;
	}
	return { dueAt, askedAt: answers.at(-1)?.at ?? null };
}

/** Standing of each question that was ever asked, by its id. */
export function standings(answers: readonly Answered[]): Map<string, Standing> {
	const byQuestion = new Map<string, Answered[]>();
	for (const answer of answers) {
		byQuestion.set(answer.question, [...(byQuestion.get(answer.question) ?? []), answer]);
	}
	return new Map([...byQuestion].map(([question, given]) => [question, standingOf(given)]));
}

/** Ids of the questions that are to be asked again at `at`, longest due first. */
export function dueQuestions(answers: readonly Answered[], at: string): string[] {
	return [...standings(answers)]
		.flatMap(([question, { dueAt }]) =>
			dueAt !== null && dueAt <= at ? [{ question, dueAt }] : []
		)
		.sort((a, b) => (a.dueAt < b.dueAt ? -1 : a.dueAt > b.dueAt ? 1 : 0))
		.map(({ question }) => question);
}
