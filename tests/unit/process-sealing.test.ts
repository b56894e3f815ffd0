import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import type { Plan } from '../../src/lib/core/plan/plan';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { contextOf } from '../../src/lib/core/process/job';
import { rehearse } from '../../src/lib/core/process/rehearsal';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { testInputs, testSheet } from '../fixtures/materials';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const PREPARED = {
	dry: true,
	sound: true,
	sealedOrDense: true,
	inhibitorsConsidered: true,
	fixedToBoard: true,
	footGapsFilled: true
};

function porous(processVersion = 3): Plan {
	const plan = handPlan({ processVersion });
	return {
		...plan,
		release: { ...plan.release, sealerG: 240, sealerCoats: 2, sealerDryS: 45 * MIN }
	};
}

function briefed(plan = porous()) {
	return new BenchLog(plan).brief().readRoom().do('brief.finished', {
		sdsRead: true,
		ppeOut: true,
		spillKitKnown: true,
		trainingInDate: true
	});
}

const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const stepOf = (log: BenchLog) => benchStep(log.state, { by: MAKER, at: log.at });

describe('a porous pattern', () => {
	test('is sealed coat by coat, and each one dries before the next', () => {
		const log = briefed();
		expect(stepOf(log).title).toBe('Seal the pattern, coat 1 of 2');
		expect(stepOf(log).amounts).toEqual([{ label: 'sealer, this coat', massG: 120 }]);
		expect(log.try('pattern.prepared', PREPARED).ok).toBe(false);
		log.do('sealer.applied');
		expect(log.try('sealer.applied').ok).toBe(false);
		const early = log.try('sealer.dried', { dry: true });
		expect(early.ok ? '' : early.reason).toContain('the sealer is not dry');
		expect(stepOf(log).acts.find(({ primary }) => primary)?.fromAt).not.toBeNull();
		log.wait(45 * MIN).do('sealer.dried', { dry: true });
		expect(stepOf(log).title).toBe('Seal the pattern, coat 2 of 2');
		log
			.do('sealer.applied')
			.wait(45 * MIN)
			.do('sealer.dried', { dry: true });
		expect(pathOf(log)).toBe('pattern');
		log.do('pattern.prepared', PREPARED);
		expect(pathOf(log)).toBe('release.waxing');
		expect(asBuilt(log.state, log.log).waits.map(({ what }) => what)).toEqual([
			'Sealer, coat 1: dry',
			'Sealer, coat 2: dry'
		]);
	});

	test('that still drinks takes one more coat, which dries as well', () => {
		const log = briefed();
		for (let coat = 0; coat < 2; coat += 1) {
			log
				.do('sealer.applied')
				.wait(45 * MIN)
				.do('sealer.dried', { dry: true });
		}
		log.do('sealer.applied');
		expect(stepOf(log).title).toBe('Seal the pattern, coat 3 of 3');
		expect(log.try('pattern.prepared', PREPARED).ok).toBe(false);
		log.wait(45 * MIN).do('sealer.dried', { dry: true });
		expect(contextOf(log.state).sealerCoats).toBe(3);
		expect(log.try('pattern.prepared', PREPARED).ok).toBe(true);
	});

	test('is rehearsed with its coats', () => {
		const events = rehearse(porous(), {
			until: 'release',
			startAt: '2026-03-02T13:00:00Z',
			crew: { worker: 'ines', supervisor: 'okoro' }
		});
		expect(events.filter(({ type }) => type === 'sealer.dried')).toHaveLength(2);
	});

	test('of an earlier version goes on as it did, sealed by a confirmation', () => {
		const log = briefed(porous(2)).do('pattern.prepared', PREPARED);
		expect(pathOf(log)).toBe('release.waxing');
	});
});

test('a dense pattern is never asked for sealer', () => {
	const log = briefed(handPlan());
	expect(pathOf(log)).toBe('pattern');
	expect(stepOf(log).acts.map(({ type }) => type)).not.toContain('sealer.applied');
	const answer = log.try('sealer.applied');
	expect(answer.ok ? '' : answer.reason).toContain('the plan seals nothing');
});

// Two thin coats: common practice, no source.
test('a plan counts coats of sealer for a porous pattern only, and traces their drying', () => {
	const inputs = testInputs();
	const sealed = { ...inputs.materials, sealer: testSheet('shellac-sealer') };
	const planOf = (porosity: 'dense' | 'porous') =>
		makePlan({ ...inputs, materials: sealed, pattern: { ...inputs.pattern, porosity } });
	const { release, calendar, figures } = planOf('porous');
	expect(release.sealerCoats).toBe(2);
	expect(figures['release.sealerDryS']?.value).toBe(release.sealerDryS);
	const wait = calendar.find(({ id }) => id === 'seal-1-dry');
	const waitedS = (Date.parse(wait?.endAt ?? '') - Date.parse(wait?.startAt ?? '')) / 1000;
	expect(waitedS).toBe(release.sealerDryS);
	expect(planOf('dense').release).toMatchObject({ sealerCoats: 0, sealerDryS: 0 });
});
