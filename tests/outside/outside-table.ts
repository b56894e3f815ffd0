import type { Reporter, TestModule } from 'vitest/node';
import type { OutsideRow } from './outside-case';

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

/** A Markdown table of all outside cases, so that it can be pasted into the README as it is. */
export function markdownTable(rows: OutsideRow[]): string {
	const lines = rows.map((row) => {
		const passed = Math.abs(row.got - row.expected) <= row.tolerance * (1 + 1e-9) + 1e-12;
		const cells = [row.what, row.source, row.unit, short(row.expected), short(row.got)];
		return `| ${[...cells, deviation(row), passed ? 'ok' : 'OFF'].join(' | ')} |`;
	});
	return [
		'| what | source | unit | expected | got | deviation | |',
		'|---|---|---|---|---|---|---|',
		...lines
	].join('\n');
}

/** Vitest reporter: prints the table of outside checks after the run. */
export default class OutsideTable implements Reporter {
	onTestRunEnd(modules: readonly TestModule[]): void {
		const rows = modules.flatMap((module) =>
			[...module.children.allTests()].flatMap((test) => test.meta().outside ?? [])
		);
		const sources = new Set(rows.map((row) => row.source));
		console.log(`\n${markdownTable(rows)}\n`);
		console.log(`${rows.length} outside checks from ${sources.size} cited sources`);
	}
}
