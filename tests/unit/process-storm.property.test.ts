import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isOnRatio } from '../../src/lib/core/process/cup-check';
import type { LoggedEvent, ProcessEvent } from '../../src/lib/core/process/events';
import { secondsBetween } from '../../src/lib/core/process/instant';
import { contextOf, fold } from '../../src/lib/core/process/job';
import { allowedTypes } from '../../src/lib/core/process/refusal';
import { BenchLog, HELPED, SMOKE_OVER } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const PEOPLE = ['ines', 'amir', 'okoro', 'lund'];
const pick = <T>(options: readonly T[], seed: number): T => options[seed % options.length] as T;

const range = (count: number) =>
	Array.from({ length: count }, (_, i) => [`${i + 1}`, true] as const);

/** Data for a type of event, right or wrong as the seed has it. */
function dataFor(log: BenchLog, type: string, seed: number): object {
	const { context } = log.state.snapshot;
	const sides: Record<string, object> = {
		'briefing.read': {
			briefing: pick(log.plan.briefings, seed),
			contentHash: 'a'.repeat(64)
		},
		'room.read': {
			temperatureC: pick([23, 23, 9], seed),
			humidityPct: 50,
			extractionOn: seed % 5 > 0
		},
		'cup.weighed': {
			massesG: pick([{ A: 80, B: 100 }, { A: 160, B: 200 }, { A: 90, B: 100 }, { B: 50 }], seed),
			lots: {}
		},
		'cup.mixed': seed % 3 ? {} : { mixedBy: pick(PEOPLE, seed >> 1) },
		'cup.discarded': seed % 3 ? { reason: 'x' } : { reason: 'x', cup: 'next' },
		'coat.finished': seed % 2 ? {} : { shortReason: 'cup ran out' },
		'tack.tested': { result: pick(['wet', 'almost tack-free', 'almost tack-free', 'hard'], seed) },
		'surface.abraded': { grit: '120', wiped: true, dried: true, reason: 'late' },
		'deviation.decided': { accepted: seed % 3 > 0, note: 'seen' },
		'thickness.measured': {
			points: ['a', 'b', 'c'].map((place) => ({ place, thicknessMm: pick([6, 6, 3], seed) }))
		},
		'coat.added': { reason: 'thin' },
		'glove.tested': { result: pick(['cured', 'cured', 'soft'], seed) },
		'shell.tested': { result: pick(['hard', 'hard', 'soft'], seed) },
		'shell.finished': { thicknessMm: pick([12, 5], seed), cornersFull: true, feetLevel: true },
		'mold.inspected': {
			voids: 0,
			bubbles: 0,
			tears: 1,
			thinSpots: 0,
			dimensions: [],
			lookedAt: seed % 4 ? Object.fromEntries(range(context.troublesMet.length)) : {},
			verdict: pick(['sound', 'needs repair', 'reject'], seed)
		},
		'mold.repaired': { done: 'x' },
		'test.judged': { kind: 'test cup', result: pick(['good', 'good', 'bad'], seed) },
		'mold.marked': { mark: 'x', sameSide: true, partingLine: pick(['uneven', 'plain'], seed) },
		'sealer.dried': { dry: true },
		'glove.waxed': { wholeBack: true, coats: pick([1, 2], seed) },
		'frame.fitted': { gapMm: pick([context.plan.frame.gapMm, 90], seed) },
		'frame.refitted': { tight: seed % 4 > 0 },
		'glove.peeled': { whole: seed % 4 > 0 },
		'part.poured': { massG: 100, headMm: 10, lot: 'x' },
		'part.released': { result: pick(['good', 'faulty'], seed) },
		'trouble.reported': {
			trouble: pick(['spill', 'bubbles', 'no-cure', 'skin-contact', 'cup-smoke'], seed),
			note: 'x'
		},
		'trouble.mended': {
			how: 'x',
			wayBack: pick(['resume', 'redo coat', 'release', 'resume'], seed)
		},
		'trouble.decided': {
			how: 'x',
			wayBack: pick(['resume', 'redo coat', 'release', 'resume'], seed),
			...(seed % 4 ? { ...HELPED, ...SMOKE_OVER } : {})
		},
		'hold.sentBack': {
			hold: context.hold,
			to: pick(['frame', 'release', 'build', 'trim', 'shell', 'inspect', 'pour'], seed),
			reason: 'x'
		}
	};
	const hold = type.startsWith('hold.') ? { hold: context.hold } : {};
	return { reason: 'x', note: 'x', ...hold, ...(sides[type] ?? {}) };
}

const SELDOM = [
	'job.abandoned',
	'mold.rejected',
	'job.takenOver',
	'job.paused',
	'trouble.reported'
];

/** A log grown by chance: mostly acts the step takes, at all sorts of times, by all sorts of people. */
function storm(seeds: readonly number[], detail: boolean): BenchLog {
	const plan = handPlan({ detail, people: 1 + ((seeds[1] ?? 0) % 2) });
	const release = { ...plan.release, sealerCoats: (seeds[2] ?? 0) % 3, sealerDryS: 2700 };
	const log = new BenchLog({ ...plan, release });
	if (seeds[0] !== undefined && seeds[0] % 2) log.toCoats();
	for (const seed of seeds) {
		const allowed = allowedTypes(log.state);
		const common = allowed.filter((type) => !SELDOM.includes(type));
		const type = pick(seed % 11 === 0 || common.length === 0 ? allowed : common, seed >> 3);
		if (type === undefined) break;
		log.wait(pick([30, 600, 2700, 2700, 9000, 60_000], seed >> 5));
		const by = seed % 3 ? (contextOf(log.state).worker ?? 'ines') : pick(PEOPLE, seed >> 7);
		const data = dataFor(log, type, seed >> 9);
		if (log.try(type, data, by).ok) log.do(type, data, by);
	}
	return log;
}

const seeds = fc.array(fc.nat({ max: 2 ** 30 }), { minLength: 60, maxLength: 160 });

/** Pairs of facts that must never stand in one log, whatever anybody tried. */
function forbidden(log: readonly LoggedEvent[]): string[] {
	const faults: string[] = [];
	const plan = handPlan();
	let weighed: Record<string, number> | null = null;
	let signedBefore = new Set<string>();
	const workers = new Set<string>();
	let waxed = false;
	let readyForShell = false;
	let finishedAt: string | null = null;
	let lastTest: ProcessEvent | null = null;
	let isFit = false;
	let repairable = false;
	let tested = true;

	for (const { event } of log) {
		const batch = plan.coats[0];
		switch (event.type) {
			case 'cup.weighed':
				weighed = event.massesG;
				break;
			case 'cup.mixed':
				if (!signedBefore.has('readyToCoat')) faults.push('mixed before the first hold point');
				if (!batch || !weighed || !isOnRatio(batch, weighed)) faults.push('mixed off ratio');
				if (finishedAt !== null && !readyForShell && lastTest === null) {
					faults.push('mixed on an untested coat');
				}
				weighed = null;
				break;
			case 'coat.finished':
				finishedAt = event.at;
				lastTest = null;
				break;
			case 'tack.tested':
				if (event.result === 'almost tack-free') lastTest = event;
				break;
			case 'surface.abraded':
				lastTest = event;
				break;
			case 'glove.tested':
				if (
					finishedAt &&
					event.result === 'cured' &&
					secondsBetween(finishedAt, event.at) < 16 * 3600
				) {
					faults.push('cured before its time');
				}
				break;
			case 'glove.waxed':
				waxed = true;
				break;
			case 'mold.inspected':
				isFit = event.verdict === 'sound';
				repairable = event.verdict === 'needs repair';
				break;
			case 'trouble.reported':
				tested &&= !['bubbles', 'no-cure'].includes(event.trouble);
				break;
			case 'test.judged':
				tested = event.result === 'good';
				break;
			case 'mold.repaired':
				isFit = false;
				repairable = false;
				break;
			case 'hold.signed':
				if (event.hold === 'moldAccepted' && !isFit) faults.push('accepted with a flaw');
				if (workers.has(event.by)) faults.push('signed own work');
				signedBefore = signedBefore.add(event.hold);
				if (event.hold === 'readyForShell') {
					readyForShell = true;
					if (!waxed) faults.push('shell released on an unwaxed glove');
				}
				break;
			case 'deviation.decided':
				if (workers.has(event.by)) faults.push('decided own deviation');
				isFit ||= repairable && event.accepted;
				break;
			case 'trouble.mended':
			case 'trouble.decided':
				if (event.wayBack === 'release') {
					signedBefore = new Set();
					finishedAt = null;
					waxed = false;
				}
				if (event.wayBack === 'redo coat') finishedAt = null;
				break;
			case 'hold.sentBack':
				if (['pattern', 'release', 'frame'].includes(event.to)) {
					signedBefore = new Set();
					finishedAt = null;
					waxed = false;
				}
				if (event.hold === 'readyForShell') readyForShell = false;
				break;
			case 'mold.opened':
				if (!signedBefore.has('readyToOpen')) faults.push('opened without a signature');
				break;
			case 'part.poured':
				if (!signedBefore.has('moldAccepted')) faults.push('poured in a mold not accepted');
				break;
		}
		const isWork = ![
			'job.opened',
			'briefing.read',
			'room.read',
			'job.takenOver',
			'job.paused',
			'trouble.reported',
			'trouble.mended',
			'trouble.decided',
			'test.judged',
			'job.abandoned',
			'hold.signed',
			'hold.sentBack',
			'deviation.decided',
			'mold.rejected'
		].includes(event.type);
		if (isWork) workers.add(event.by);
		// A cup is set aside while the trouble lasts; anything else is work that went on.
		if (isWork && event.type !== 'cup.discarded' && !tested) {
			faults.push('went on after foam or no cure without a good test');
		}
	}
	return faults;
}

describe('a storm of events', () => {
	test('never leaves a forbidden pair of facts in the log', () => {
		let accepted = 0;
		fc.assert(
			fc.property(seeds, fc.boolean(), (chance, detail) => {
				const { log } = storm(chance, detail);
				accepted += log.length;
				expect(forbidden(log)).toEqual([]);
			}),
			{ numRuns: 120 }
		);
		// A storm of which nothing was taken would prove nothing.
		expect(accepted).toBeGreaterThan(120 * 15);
	});

	test('folds to the state it grew to', () => {
		fc.assert(
			fc.property(seeds, (chance) => {
				const grown = storm(chance, true);
				const folded = fold(grown.plan, grown.log);
				expect(folded.snapshot.value).toEqual(grown.state.snapshot.value);
				expect(contextOf(folded)).toEqual(contextOf(grown.state));
			}),
			{ numRuns: 60 }
		);
	});

	test('of malformed times or acts never throws: the machine answers', () => {
		fc.assert(
			fc.property(seeds, (chance) => {
				const log = storm(chance, false);
				for (const type of [
					'cup.mixed',
					'hold.signed',
					'mold.handedOver',
					'tack.tested'
				] as const) {
					expect(() => log.try(type, dataFor(log, type, 5), 'amir')).not.toThrow();
				}
			}),
			{ numRuns: 40 }
		);
	});
});
