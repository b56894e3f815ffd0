import type { SeenField } from './bench-fields';

/** What a person at the bench does with one field: types this, ticks it, or leaves it. */
export type Answer = string | ((field: SeenField, what: string) => string);
export type Answers = ReadonlyArray<readonly [field: RegExp, answer: Answer]>;

const planned: Answer = ({ label, beside }) => {
	const value = /planned ([\d.]+)/.exec(beside)?.[1];
	if (value === undefined) throw new Error(`"${label}" names no planned value: "${beside}"`);
	return value;
};

/** Target on the scale, from the line the entry is described by: "B 120.5 g". */
const onTarget: Answer = ({ label, beside }) => {
	const value = /([\d.]+) ?g\b/.exec(beside)?.[1];
	if (value === undefined) throw new Error(`"${label}" names no target: "${beside}"`);
	return value;
};

/** Half a millimeter over the least the step asks for: "at least 4.8 mm". */
const thickEnough: Answer = (_field, what) => {
	const least = /at least ([\d.]+) mm/.exec(what)?.[1];
	if (least === undefined) throw new Error(`the step names no least thickness: "${what}"`);
	return String(Number(least) + 0.5);
};

/** What a careful crew enters, by the words beside the field. The first line that fits counts. */
export const CAREFUL: Answers = [
	[/^Room temperature/, '22'],
	[/^Relative humidity/, '45'],
	[/^Pattern surface, at its coldest/, '22'],
	[/^Clear gap/, planned],
	[/^Scale shows /, onTarget],
	[/^Lot numbers/, ({ label, value }) => value || `INVENTED-${label}-1`],
	[/^Coats of wax/, planned],
	[/^Where \d/, ({ label }) => `Place ${label.replace(/\D/g, '')}`],
	[/^Gauge \d/, thickEnough],
	[/^Measured \d/, ({ before }) => before],
	[/^Thickness at the thinnest place/, planned],
	[/^(Voids|Bubbles|Tears|Thin spots)$/, '0'],
	[/ poured$/, planned],
	[/^Head of liquid/, planned],
	[/^Lot number$/, 'INVENTED-CAST-1'],
	[/^The mark$/, 'Arrow and N, north side'],
	[/^The parting line/, 'Uneven: it keys the two by itself'],
	[/^Layers of reinforcement/, planned],
	[/^What was made, away/, 'Test cup: a small mixed cup, watched for foam'],
	[/^What it shows/, 'Good: no foam, cures as it should'],
	[/^Handed over to/, 'The invented casting bench'],
	[/^How it is stored/, 'In its shell, level, out of the sun.'],
	[/^How it is repaired/, 'The same rubber, abraded and wiped.'],
	[/^When it is worn out/, 'Edges round off.'],
	[/^What the gloved fingertip found/, 'Almost tack-free: sticky, takes nothing away, faint print'],
	[/^The glove is/, 'Cured: springs back, no dent stays'],
	[/^The frame went back/, 'Tight: little shrinkage'],
	[/^The shell is/, 'Hard: a nail leaves no mark, it rings'],
	[/^The glove came off/, 'Whole'],
	[/^Your verdict/, 'Sound'],
	[/^The first part is/, 'Good'],
	[/^Abraded with/, '120 grit'],
	[/^Why the window was missed/, 'A delivery kept the crew away.']
];

/** The answer to a field by its own words, or by those of its group; undefined when there is none. */
export function answerTo(field: SeenField, what: string, answers: Answers): string | undefined {
	const found = answers.find(([words]) => words.test(field.label) || words.test(field.group));
	const answer = found?.[1];
	return typeof answer === 'function' ? answer(field, what) : answer;
}
