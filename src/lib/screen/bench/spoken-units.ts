/** A unit as it stands on the screen, for one of it and for any other number. */
const WORDS: Readonly<Record<string, readonly [one: string, many: string]>> = {
	mm: ['millimeter', 'millimeters'],
	'cm²': ['square centimeter', 'square centimeters'],
	in: ['inch', 'inches'],
	ft: ['foot', 'feet'],
	mL: ['milliliter', 'milliliters'],
	L: ['liter', 'liters'],
	'fl oz': ['fluid ounce', 'fluid ounces'],
	gal: ['gallon', 'gallons'],
	g: ['gram', 'grams'],
	kg: ['kilogram', 'kilograms'],
	oz: ['ounce', 'ounces'],
	lb: ['pound', 'pounds'],
	'°C': ['degree Celsius', 'degrees Celsius'],
	'°F': ['degree Fahrenheit', 'degrees Fahrenheit'],
	s: ['second', 'seconds'],
	min: ['minute', 'minutes'],
	h: ['hour', 'hours'],
	d: ['day', 'days'],
	'%': ['percent', 'percent']
};

/** "in" is a unit only where its phrase ends: "0.2 in (5 mm)" is, "part 2 in the cup" is not. */
const ENDS: Readonly<Record<string, string>> = { in: String.raw`(?=\s*(?:[(),;:]|\.(?!\d)|$))` };
const units = Object.keys(WORDS)
	.map((unit) => unit + (ENDS[unit] ?? ''))
	.join('|');
/** A number and a whole unit: neither the start of a word nor of a compound such as g/mL. */
const AMOUNT = new RegExp(String.raw`(\d+(?:[.,]\d+)*)\s*(${units})(?![\p{L}\p{N}²/])`, 'gu');

/** A text as a voice should read it: units in words, SI and US customary; one of a unit in the singular. */
export function inSpokenUnits(text: string): string {
	return text.replace(AMOUNT, (said, number: string, unit: string) => {
		const words = WORDS[unit];
		if (!words) return said;
		return `${number} ${words[number === '1' ? 0 : 1]}`;
	});
}
