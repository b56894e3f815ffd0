const DECIMAL = /^[+-]?(\d{1,3}(,\d{3})+|\d+)?(\.\d*)?(e[+-]?\d{1,4})?$/i;
const FRACTION = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/;

/**
 * A number as people type it: "1,234.5", "-4", "3 1/2", "5/8". A comma in another place is not
 * guessed at, since half the world means a decimal point by it.
 *
 * @returns null when it cannot be read, or is no finite number
 */
export function readNumber(text: string): number | null {
	const plain = text.trim().replace(/^[−–]/, '-');
	const fraction = FRACTION.exec(plain);
	if (fraction) {
		const [, whole = '0', over, under] = fraction;
		const value = Number(whole) + Number(over) / Number(under);
		return Number.isFinite(value) ? value : null;
	}
	if (!DECIMAL.test(plain) || !/\d/.test(plain)) return null;
	const value = Number(plain.replaceAll(',', ''));
	return Number.isFinite(value) ? value : null;
}
