import { voice } from '$lib/core/language/en/voice';
import { ENGLISH } from '$lib/core/language/words';

/** "in" is a unit only where its phrase ends: "0.2 in (5 mm)" is, "part 2 in the cup" is not. */
const ENDS: Readonly<Record<string, string>> = { in: String.raw`(?=\s*(?:[(),;:]|\.(?!\d)|$))` };
const units = Object.keys(voice.units)
	.map((unit) => unit + (ENDS[unit] ?? ''))
	.join('|');
/** A number and a whole unit: neither the start of a word nor of a compound such as g/mL. */
const AMOUNT = new RegExp(String.raw`(\d+(?:[.,]\d+)*)\s*(${units})(?![\p{L}\p{N}²/])`, 'gu');

/** A text as a voice should read it: units in words, SI and US customary; one of a unit in the singular. */
export function inSpokenUnits(text: string, { voice: said } = ENGLISH): string {
	return text.replace(AMOUNT, (amount, number: string, unit: string) => {
		const words = Object.entries(said.units).find(([name]) => name === unit)?.[1];
		if (!words) return amount;
		return `${number} ${words[number === '1' ? 0 : 1]}`;
	});
}
