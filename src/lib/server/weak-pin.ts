/** Straight lines on the pad, and what is tried first; common practice, no source. */
const TRIED_FIRST = new Set([
	'2580',
	'0852',
	'1004',
	'1122',
	'112233',
	'121314',
	'159753',
	'147258',
	'5683'
]);

/**
 * Why a PIN is too easily guessed to stand for a signature, in words; null when it will do.
 *
 * Asked where a PIN is chosen or given, never where one is checked: those in force stay.
 */
export function weakPinWords(pin: string): string | null {
	const why = weakness(pin);
	return (
		why && `${why}, among the first that anybody tries. Accepted: another one of 4 to 8 digits.`
	);
}

function weakness(pin: string): string | null {
	if (/^(\d)\1+$/.test(pin)) return 'That is one digit over and over';
	if (isRun(pin)) return 'Those digits follow one another';
	if (/^(\d{2,4})\1+$/.test(pin)) return 'That repeats itself';
	if (/^(19|20)\d\d$/.test(pin)) return 'That looks like a year';
	return TRIED_FIRST.has(pin) ? 'That is a common PIN' : null;
}

/** 1234, 4321, 7890: each digit one more, or one less, than the one before, 0 next to 9. */
function isRun(pin: string): boolean {
	const digits = [...pin].map(Number);
	return [1, 9].some((step) =>
		digits.every((digit, i) => i === 0 || digit === ((digits[i - 1] ?? 0) + step) % 10)
	);
}
