import { expect, test } from 'vitest';
import { asBuilt } from '../../src/lib/core/process/as-built';
import type { LoggedEvent, ProcessEvent } from '../../src/lib/core/process/events';
import { addSeconds } from '../../src/lib/core/process/instant';
import { fold } from '../../src/lib/core/process/job';
import { rehearseJob } from '../../src/lib/core/process/rehearsal';
import { handPlan } from '../fixtures/plan';

const crew = { worker: 'mara', supervisor: 'tom' };
const START = '2026-03-02T14:00:00.000Z';

/** A log under construction: each act a minute after the last, unless told otherwise. */
function begin(until: 'build' | 'end') {
	const plan = handPlan();
	const { log } = rehearseJob(plan, { until, startAt: START, crew });
	let at = log.at(-1)?.event.at ?? START;
	const post = (event: object, by = crew.worker, afterS = 60) => {
		at = addSeconds(at, afterS);
		const seq = log.length + 1;
		log.push({ id: `e${seq}`, seq, event: { at, by, ...event } as ProcessEvent });
	};
	return { plan, log, post };
}

test('a careful job is laid as planned, in every coat and round, with nothing left open', () => {
	const { plan, log } = begin('end');
	const built = asBuilt(fold(plan, log), log);

	expect(built.sections.map(({ id }) => id)).toEqual([
		...plan.coats.map(({ id }) => id),
		...plan.shell.rounds.map(({ id }) => id)
	]);
	for (const section of built.sections) {
		expect(section.laidG).toBeGreaterThan(0.97 * section.plannedG);
		expect(section.finishedAt).not.toBeNull();
		for (const cup of section.cups) {
			expect(cup.parts.map(({ part }) => part)).toEqual(['B', 'A']);
			expect(cup.deviationFraction).toBeLessThanOrEqual(section.toleranceFraction);
			expect(cup.workedS).toBeLessThanOrEqual(cup.workingS);
		}
	}
	expect(built.signatures.map(({ hold }) => hold)).toEqual([
		'readyToCoat',
		'readyForShell',
		'readyToOpen',
		'moldAccepted'
	]);
	for (const wait of built.waits) expect(wait.actualS).toBeGreaterThanOrEqual(wait.plannedS);
	expect(built.waits.filter(({ what }) => what.includes('fingertip'))).toHaveLength(
		plan.coats.length
	);
	expect(built.people).toContain('mara');
	expect(built.briefings.map(({ slug }) => slug)).toEqual(expect.arrayContaining(plan.briefings));
	expect(built.confirmed.map(({ by }) => by)).toEqual([crew.worker]);
});

test('a corrected cup counts once, one set aside is kept with its reason and lays nothing', () => {
	const { plan, log, post } = begin('build');
	const lots = { A: 'L1', B: 'L2' };
	const cup = plan.coats[0]?.cups[0];
	const target = (part: string) => cup?.parts.find((p) => p.part === part)?.massG ?? 0;
	post({ type: 'cup.weighed', massesG: { B: target('B') * 1.1, A: target('A') }, lots });
	post({ type: 'cup.weighed', massesG: { B: target('B') * 1.1, A: target('A') * 1.1 }, lots });
	post({ type: 'cup.mixed' });
	post({ type: 'cup.discarded', reason: 'It strings.' });
	post({ type: 'cup.weighed', massesG: { B: target('B'), A: target('A') }, lots });
	post({ type: 'cup.mixed' });
	post({ type: 'cup.applied' }, crew.worker, 300);

	const [section] = asBuilt(fold(plan, log), log).sections;
	expect(section?.cups.map(({ corrected, discarded }) => [corrected, discarded])).toEqual([
		[true, 'It strings.'],
		[false, null]
	]);
	expect(section?.cups.map(({ number }) => number)).toEqual([1, 2]);
	expect(section?.cups[1]).toMatchObject({ workedS: 300 });
	expect(section?.laidG).toBeCloseTo(target('A') + target('B'), 6);
});

test('an undone entry is listed with its reason and counts nowhere else', () => {
	const { plan, log, post } = begin('build');
	const lots = { A: 'L1', B: 'L2' };
	post({ type: 'cup.weighed', massesG: { A: 1, B: 1 }, lots });
	const wrong = log.at(-1) as LoggedEvent;
	post({ type: 'act.undone', undoes: wrong.id, reason: 'Wrong mold.' });

	const built = asBuilt(fold(plan, log), log);
	expect(built.sections).toEqual([]);
	expect(built.undone).toEqual([
		{
			seq: wrong.seq,
			at: wrong.event.at,
			by: 'mara',
			type: 'cup.weighed',
			label: 'Cup weighed',
			said: 'A 1 g, B 1 g',
			reason: 'Wrong mold.',
			undoneAt: log.at(-1)?.event.at
		}
	]);
});

test('a coat laid again after a trouble is a second attempt, beside the first', () => {
	const { plan, log, post } = begin('build');
	const lots = { A: 'L1', B: 'L2' };
	const weighed = {
		type: 'cup.weighed',
		massesG: Object.fromEntries(
			(plan.coats[0]?.cups[0]?.parts ?? []).map(({ part, massG }) => [part, massG])
		),
		lots
	};
	post(weighed);
	post({ type: 'cup.mixed' });
	post({ type: 'cup.applied' });
	post({ type: 'trouble.reported', trouble: 'off-ratio', note: 'Soft patch.' });
	post({ type: 'trouble.mended', how: 'Scraped off, wiped.', wayBack: 'redo coat' });
	post(weighed);

	const built = asBuilt(fold(plan, log), log);
	expect(built.sections.map(({ id, attempt }) => [id, attempt])).toEqual([
		['build-1', 1],
		['build-1', 2]
	]);
	expect(built.troubles[0]?.mended?.how).toBe('Scraped off, wiped.');
});
