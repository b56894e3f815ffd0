// `npm test`: every check in order, stopping at the first that fails, and one line of counts at the end.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { chromiumOrInstall } from './find-chromium.mjs';
import { installIfNeeded, run } from './run.mjs';

const reports = mkdtempSync(join(tmpdir(), 'glovewright-test-'));
process.on('exit', () => rmSync(reports, { recursive: true, force: true }));
const reportOf = (name) => join(reports, `${name}.json`);

const total = { passed: 0, failed: 0 };
/** Titles of tests that another program is needed for and that did not run; they end in "[needs program]". */
const notRun = [];
const NEEDS = /\[needs ([\w-]+)\]$/;

/** Adds what a vitest or playwright JSON report counted. A missing report is a failure, not a zero. */
function count(name, read) {
	try {
		const { passed, failed } = read(JSON.parse(readFileSync(reportOf(name), 'utf8')));
		total.passed += passed;
		total.failed += failed;
		return passed > 0 && failed === 0;
	} catch (error) {
		console.error(`No report of ${name}: ${error.message}`);
		total.failed += 1;
		return false;
	}
}

/** Any other skipped test counts as failed: nobody would notice it. */
function vitestCounts({ numPassedTests, numTotalTests, testResults }) {
	const waiting = testResults
		.flatMap(({ assertionResults }) => assertionResults)
		.filter(({ status, title }) => ['pending', 'skipped'].includes(status) && NEEDS.test(title));
	notRun.push(...waiting.map(({ title }) => title));
	return { passed: numPassedTests, failed: numTotalTests - numPassedTests - waiting.length };
}

/** Says at the end what could not be run here, and what it would take. */
function tellNotRun() {
	const programs = [...new Set(notRun.map((title) => NEEDS.exec(title)?.[1]))];
	for (const program of programs) {
		const count = notRun.filter((title) => NEEDS.exec(title)?.[1] === program).length;
		console.log(`${count} not run: ${program} is not installed here.`);
	}
}

const playwrightCounts = ({ stats, errors }) => ({
	passed: stats.expected,
	failed: stats.unexpected + stats.flaky + stats.skipped + errors.length
});

function vitest(name, ...reporters) {
	const args = ['run', '--silent', name, '--', '--reporter=json', `--outputFile=${reportOf(name)}`];
	return {
		name,
		go: async () => {
			const { code } = await run('npm', [...args, ...reporters]);
			return count(name, vitestCounts) && code === 0;
		}
	};
}

function script(name, ...args) {
	return {
		name,
		go: async () => (await run('npm', ['run', '--silent', name, '--', ...args])).code === 0
	};
}

const e2e = {
	name: 'e2e',
	go: async () => {
		const chromium = await chromiumOrInstall();
		if (!chromium) {
			console.error(
				'No Chromium found. Install chromium or chrome, or set CHROMIUM_PATH to where it is.'
			);
			return false;
		}
		console.log(`Browser: ${chromium}`);
		const { code } = await run('npm', ['run', '--silent', 'e2e', '--', '--reporter=list,json'], {
			env: { CHROMIUM_PATH: chromium, PLAYWRIGHT_JSON_OUTPUT_NAME: reportOf('e2e') }
		});
		return count('e2e', playwrightCounts) && code === 0;
	}
};

await installIfNeeded();
const steps = [
	script('check'),
	script('lint'),
	vitest('unit', '--reporter=default'),
	vitest('outside'),
	script('build'),
	script('torture', '--short'),
	e2e
];

let isGood = true;
for (const { name, go } of steps) {
	const startMs = performance.now();
	console.log(`\n== ${name} ==`);
	isGood = await go();
	const seconds = ((performance.now() - startMs) / 1000).toFixed(1);
	console.log(`== ${name}: ${isGood ? 'passed' : 'FAILED'} in ${seconds} s ==`);
	if (!isGood) break;
}
if (!isGood && total.failed === 0) total.failed = 1;
tellNotRun();
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exit(isGood ? 0 : 1);
