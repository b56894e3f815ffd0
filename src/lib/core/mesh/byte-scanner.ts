const NEWLINE = 10;
const SPACE = 32;
const MINUS = 45;
const PLUS = 43;
const POINT = 46;
const ZERO = 48;
const NINE = 57;
/** Decimal digits that a double holds exactly; those beyond only scale. */
const EXACT_DIGITS = 15;

/** Reads words and numbers from text in bytes, so that a file larger than a string can be is no matter. */
export class ByteScanner {
	readonly bytes: Uint8Array;
	at: number;
	readonly end: number;

	constructor(bytes: Uint8Array, at = 0, end = bytes.length) {
		this.bytes = bytes;
		this.at = at;
		this.end = end;
	}

	/** Moves past blanks, line ends too unless `onLine`; says whether something follows. */
	skipBlanks(onLine = false): boolean {
		const { bytes, end } = this;
		let at = this.at;
		while (at < end && bytes[at]! <= SPACE && !(onLine && bytes[at] === NEWLINE)) at += 1;
		this.at = at;
		return at < end && !(onLine && bytes[at] === NEWLINE);
	}

	skipLine(): void {
		const found = this.bytes.indexOf(NEWLINE, this.at);
		this.at = found < 0 || found > this.end ? this.end : found + 1;
	}

	/** The next run of characters without a blank; empty at the end. */
	word(onLine = false): string {
		if (!this.skipBlanks(onLine)) return '';
		const from = this.at;
		while (this.at < this.end && this.bytes[this.at]! > SPACE && this.at - from < 400) this.at += 1;
		return String.fromCharCode(...this.bytes.subarray(from, this.at));
	}

	/** The rest of the line, trimmed; at most 400 characters of it. */
	restOfLine(): string {
		const from = this.at;
		this.skipLine();
		return String.fromCharCode(...this.bytes.subarray(from, Math.min(this.at, from + 400))).trim();
	}

	/** The next number; NaN when what follows is none (then nothing more of it is read than was a number). */
	number(onLine = false): number {
		if (!this.skipBlanks(onLine)) return Number.NaN;
		const { bytes, end } = this;
		let at = this.at;
		const sign = bytes[at] === MINUS ? -1 : 1;
		if (bytes[at] === MINUS || bytes[at] === PLUS) at += 1;
		let digits = 0;
		let kept = 0;
		let value = 0;
		let exponent = 0;
		let isFraction = false;
		for (; at < end; at += 1) {
			const byte = bytes[at]!;
			if (byte === POINT && !isFraction) isFraction = true;
			else if (byte >= ZERO && byte <= NINE) {
				digits += 1;
				if (kept < EXACT_DIGITS) {
					value = value * 10 + (byte - ZERO);
					if (value > 0) kept += 1;
					if (isFraction) exponent -= 1;
				} else if (!isFraction) exponent += 1;
			} else break;
		}
		if (digits === 0) return Number.NaN;
		if ((bytes[at]! | 32) === 101 && at < end) {
			let power = 0;
			let next = at + 1;
			const isNegative = bytes[next] === MINUS;
			if (isNegative || bytes[next] === PLUS) next += 1;
			const from = next;
			for (; next < end && bytes[next]! >= ZERO && bytes[next]! <= NINE; next += 1) {
				power = Math.min(9999, power * 10 + (bytes[next]! - ZERO));
			}
			if (next > from) {
				exponent += isNegative ? -power : power;
				at = next;
			}
		}
		this.at = at;
		return sign * scaled(value, exponent);
	}

	/** Line number of a place, counted from 1; slow, for messages only. */
	lineAt(at: number): number {
		let line = 1;
		for (let i = 0; i < at; i += 1) if (this.bytes[i] === NEWLINE) line += 1;
		return line;
	}
}

/** Division by a power of ten up to 1e22 rounds once, so that "1.0" and "1.00" are the same number. */
function scaled(value: number, exponent: number): number {
	if (exponent === 0 || value === 0) return value;
	if (exponent < 0) return exponent >= -22 ? value / 10 ** -exponent : value * 10 ** exponent;
	return value * 10 ** exponent;
}
