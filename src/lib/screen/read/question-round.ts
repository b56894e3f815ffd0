export interface Question {
	ask: string;
	answers: string[];
	/** Index of the right answer. */
	right: number;
	because: string;
}

export interface Marked {
	/** Index that was chosen; null when none was. */
	chosen: number | null;
	isRight: boolean;
}

export interface Round {
	marked: Marked[];
	right: number;
	of: number;
}

/** Marks a round of questions. An answer that is no index of one counts as not given. */
export function markRound(questions: readonly Question[], given: readonly unknown[]): Round {
	const marked = questions.map(({ answers, right }, i) => {
		const typed = given[i];
		const index = typeof typed === 'string' && /^\d$/.test(typed) ? Number(typed) : null;
		const chosen = index !== null && index < answers.length ? index : null;
		return { chosen, isRight: chosen === right };
	});
	return { marked, right: marked.filter(({ isRight }) => isRight).length, of: questions.length };
}
