import { expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { stepFigures } from '../../src/lib/core/bench/bench-figures';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const figure = (label: string, value: number) => ({
	label,
	value,
	unit: 's' as const,
	formula: 'as the sheet says',
	inputs: [],
	source: 'hand-written'
});
const plan = {
	...handPlan(),
	figures: {
		'coats.0.windowClosesS': figure('Build coat 1: window', 14_400),
		'coats.1.windowClosesS': figure('Build coat 2: window', 9000)
	}
} as unknown as ReturnType<typeof handPlan>;
const shown = (log: BenchLog) => {
	const step = benchStep(log.state, { by: MAKER, at: log.at });
	return [step.slug, step.title, ...stepFigures(log.state, step).map((f) => f.figure.label)];
};

test('a missed window is the one of the coat that was laid, in title and numbers', () => {
	const log = new BenchLog(plan).toCoats().cup(180).do('coat.finished');
	const tack = ['tack-test', 'Build coat 1: fingertip test', 'Build coat 1: window'];
	expect(shown(log)).toEqual(tack);
	log.wait(5 * 3600).do('tack.tested', { result: 'hard' });
	expect(shown(log)).toEqual(['abrade', 'Build coat 1: window missed', 'Build coat 1: window']);
});
