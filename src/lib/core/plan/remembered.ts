/** Answers that are kept; choice of the plan. */
const MOST = 64;

/**
 * Keeps the last answers of a slow pure function, so that a plan made again while somebody types
 * does not compute them anew. The same arguments give the same answer, remembered or not.
 */
export function remembered<A extends readonly unknown[], R>(
	compute: (...given: A) => R
): (...given: A) => R {
	const answers = new Map<string, R>();
	return (...given) => {
		const key = JSON.stringify(given);
		const known = answers.get(key);
		if (known !== undefined) return known;
		const answer = compute(...given);
		const oldest = answers.keys().next().value;
		if (answers.size >= MOST && oldest !== undefined) answers.delete(oldest);
		answers.set(key, answer);
		return answer;
	};
}
