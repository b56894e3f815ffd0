/**
 * Whether every text in a value is whole Unicode. A lone surrogate has no UTF-8 and so no hash.
 * Source: RFC 8785 (2020), section 3.2.2.2
 */
export function isWellFormed(value: unknown): boolean {
	// JSON escapes lone surrogates and nothing else this way, once escaped backslashes are out of it.
	const text = JSON.stringify(value) ?? '';
	return !/\\ud[89a-f]/i.test(text.replaceAll('\\\\', ''));
}
