export interface Question {
	ask: string;
	answers: string[];
	/** Index of the right answer. */
	right: number;
	because: string;
}

/** A question as it is shown, before it is marked. */
export interface AskedHere {
	ask: string;
	answers: string[];
	isAgain?: boolean;
}

/** What is shown with a question once it is marked. */
export interface MarkedHere {
	chosen: number | null;
	right: number;
	because: string;
	source?: string;
}

/** The index that was posted for a question of so many answers; null when none of them was. */
export function chosenIndex(typed: unknown, answers: number): number | null {
	const index = typeof typed === 'string' && /^\d$/.test(typed) ? Number(typed) : null;
	return index !== null && index < answers ? index : null;
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
		const chosen = chosenIndex(given[i], answers.length);
		return { chosen, isRight: chosen === right };
	});
	return { marked, right: marked.filter(({ isRight }) => isRight).length, of: questions.length };
}
