import { readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { Reporter, TestModule } from 'vitest/node';
import { lawsTable } from './laws-table';
import { lawsOfCases } from './laws-of-cases';
import type { OutsideRow } from './outside-case';
import { markOf, MARKS } from './marks';

/** Five significant digits, or the exponent when the number is very small or large. */
function short(value: number): string {
	return Number(value.toPrecision(5)).toString();
}

function deviation({ expected, got, unit }: OutsideRow): string {
	const off = got - expected;
	return expected === 0
		? `${off.toPrecision(2)} ${unit}`
		: `${((100 * off) / Math.abs(expected)).toFixed(3)} %`;
}

/** A Markdown table of all outside cases, as the README carries it. */
export function markdownTable(rows: readonly OutsideRow[]): string {
	const lines = rows.map((row) => {
		const cells = [row.what, row.source, row.unit, short(row.expected), short(row.got)];
		return `| ${[...cells, deviation(row), isOk(row) ? 'ok' : 'OFF'].join(' | ')} |`;
	});
	return [
		'| what | source | unit | expected | got | deviation | |',
		'|---|---|---|---|---|---|---|',
		...lines
	].join('\n');
}

const isOk = ({ expected, got, tolerance }: OutsideRow): boolean =>
	Math.abs(got - expected) <= tolerance * (1 + 1e-9) + 1e-12;

/** The work that a source stands in, without table, example and page, so that one book counts once. */
const workOf = (source: string): string => {
	const [work = source] = source.replace(/ \(from memory\)/, '').split(/[,:;] /);
	return work.replace(/(\d+ CFR [\d.]+).*/, '$1').trim();
};

/** Rows that nobody here wrote or recalled, and the independent works that they come from. */
export function independentRows(rows: readonly OutsideRow[]): { cases: number; works: number } {
	const independent = rows.filter((row) => ['published', 'a second library'].includes(markOf(row)));
	const works = new Set(independent.map(({ source }) => workOf(source)));
	return { cases: independent.length, works: works.size };
}

/** The closing line: cases, sources, and how many rest on memory or on common practice. */
export function closingLine(rows: readonly OutsideRow[]): string {
	const counts = MARKS.map(
		(mark) => `${rows.filter((row) => markOf(row) === mark).length} ${mark}`
	);
	const sources = new Set(rows.map(({ source }) => source)).size;
	const off = rows.filter((row) => !isOk(row)).length;
	const { cases, works } = independentRows(rows);
	return (
		`${rows.length} outside checks from ${sources} cited sources: ${rows.length - off} agree, ${off} do not; ` +
		`${counts.join(', ')}. ` +
		`Published or of a second library: ${cases}, from ${works} independent works.`
	);
}

const README = 'README.md';
const BEGIN = '<!-- outside checks: written by npm run outside -- --write -->';
const END = '<!-- end of outside checks -->';

/** What each file of cases holds, as a reader names it. */
export const GROUPS: Readonly<Record<string, string>> = {
	amounts: 'Amounts: coats, edges, fillets, orders',
	casting: 'Casting, plaster, shrinkage, ways to build',
	'coats-on-a-wall': 'Coats on a wall: sag and drainage',
	cure: 'Cure and temperature',
	display: 'Units as shown',
	exotherm: 'Heat of a cup',
	exposure: 'What is breathed over a shift',
	hydrostatics: 'Head, uplift, straps',
	lifting: 'Lifting',
	limits: 'Workplace limits as listed',
	mesh: 'Shapes read from a mesh file',
	'mesh-united': 'Parts of a mesh joined into one body',
	plates: 'Shell walls and frame boards',
	proportioning: 'Proportioning and weighing',
	room: 'Dew point, humidity, drying',
	rounding: 'Rounding',
	'second-formulas': 'Formulas again, worked with their units by a unit library',
	'second-heat': 'Cups, windows and waits again, by a solver of differential equations',
	'second-ode': 'Cure, air and warming again, by a solver of differential equations',
	'second-plates': 'Plates and beams again, by finite elements and computer algebra',
	'second-stats': 'Uncertainty again, by drawing at random',
	'second-units': 'Units as shown again, by a unit library',
	solidification: 'Setting of what is poured molten',
	vapor: 'Vapor, release and limits',
	ventilation: 'Ventilation, fire, build-up',
	'work-and-cost': 'Coats, cups, kits, days and prices'
};

/** A row with the file that it stands in, without folder and ending, and the laws that it calls. */
export type GroupedRow = OutsideRow & { group: string; laws: readonly string[] };

/** Checks, sources and worst deviation for each group of laws, as the README carries it. */
export function groupSummary(rows: readonly GroupedRow[]): string {
	const groups = [...new Set(rows.map(({ group }) => group))].sort((a, b) => a.localeCompare(b));
	const lines = groups.map((group) => {
		const mine = rows.filter((row) => row.group === group);
		const sources = new Set(mine.map(({ source }) => source)).size;
		const relative = mine.filter(({ expected }) => expected !== 0);
		const worst = Math.max(
			0,
			...relative.map(({ got, expected }) => Math.abs((got - expected) / expected))
		);
		const within = mine.filter(isOk).length === mine.length ? 'all' : 'NOT ALL';
		return `| ${GROUPS[group] ?? group} | ${mine.length} | ${sources} | ${(100 * worst).toFixed(2)} % | ${within} |`;
	});
	return [
		'| Laws | Checks | Sources | Worst deviation | Within their tolerance |',
		'|---|---|---|---|---|',
		...lines
	].join('\n');
}

/** The README's block, marks and all. */
export function readmeBlock(rows: readonly GroupedRow[]): string {
	return [
		BEGIN,
		'',
		closingLine(rows),
		'',
		groupSummary(rows),
		'',
		'<!-- prettier-ignore-start -->',
		'',
		'<details>',
		'<summary>Every law, and what it was held against</summary>',
		'',
		lawsTable(rows),
		'',
		'</details>',
		'',
		'<details>',
		`<summary>Every case: what, source, expected, got, deviation (${rows.length} rows)</summary>`,
		'',
		markdownTable(rows),
		'',
		'</details>',
		'',
		'<!-- prettier-ignore-end -->',
		'',
		END
	].join('\n');
}

/** The text with its block written anew. @throws Error when the marks are missing */
export function withBlock(text: string, block: string): string {
	const from = text.indexOf(BEGIN);
	const to = text.indexOf(END);
	if (from < 0 || to < from) throw new Error(`${README}: the marks of the outside checks are gone`);
	return text.slice(0, from) + block + text.slice(to + END.length);
}

/** A table without the padding that formatting gives it. */
const unpadded = (text: string): string =>
	text.replace(/[ \t]*\|[ \t]*/g, '|').replace(/-{3,}/g, '---');

/** Whether the README's block is the one that these rows give. */
export function isCurrent(readme: string, rows: readonly GroupedRow[]): boolean {
	return unpadded(readme).includes(unpadded(readmeBlock(rows)));
}

/** Vitest reporter: prints the table of outside checks after the run, and writes it when asked to. */
export default class OutsideTable implements Reporter {
	onTestRunEnd(modules: readonly TestModule[]): void {
		const rows = modules
			.toSorted((a, b) => a.moduleId.localeCompare(b.moduleId))
			.flatMap((module) => {
				const group = basename(module.moduleId, '.test.ts');
				const lawsAt = lawsOfCases(module.moduleId);
				return [...module.children.allTests()].flatMap((test): GroupedRow[] => {
					const row = test.meta().outside;
					return row ? [{ ...row, group, laws: lawsAt.get(row.line) ?? [] }] : [];
				});
			});
		console.log(`\n${markdownTable(rows)}\n`);
		console.log(closingLine(rows));
		// A run of some of the files says nothing of the whole table, and must not become it.
		const isWhole = new Set(rows.map(({ group }) => group)).size === Object.keys(GROUPS).length;
		if (process.env.GLOVEWRIGHT_OUTSIDE_WRITE && isWhole) {
			writeFileSync(README, withBlock(readFileSync(README, 'utf8'), readmeBlock(rows)));
			console.log(`Written: the table in ${README}`);
		}
		if (isWhole && !isCurrent(readFileSync(README, 'utf8'), rows)) {
			console.error(`${README} is out of date: npm run outside -- --write`);
			process.exitCode = 1;
		}
	}
}
