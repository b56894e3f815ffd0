import { expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { createJob, getJob } from '../../src/lib/server/jobs.repository';
import { addPerson } from '../../src/lib/server/people.repository';
import { decidedPlan, type PlanDecision } from '../../src/lib/server/plan-decision';
import { readDecision } from '../../src/lib/server/decision-form';
import { testInputs } from '../fixtures/materials';
import { AT } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

const address = '192.0.2.1';
const inputs = testInputs();
const whole = makePlan(inputs);
const thin = makePlan({ ...inputs, materials: { ...inputs.materials, film: undefined } });

async function shop() {
	const db = await testStore();
	const ada = await addPerson(db, { name: 'Ada Quill', role: 'supervisor', pin: '2468' }, AT);
	const ben = await addPerson(db, { name: 'Ben Marsh', role: 'mold maker', pin: '1357' }, AT);
	const eve = await addPerson(db, { name: 'Eve', role: 'supervisor', pin: '8642' }, AT, ada.id);
	const ask = (supervisorId: string, pin: string, plan = thin) => {
		const decision: PlanDecision = { supervisorId, pin, reason: 'A trial piece.' };
		return decidedPlan(db, { plan, decision, address });
	};
	return { db, ada, ben, eve, ask };
}

test('a plan with half a release opens only on a supervisor’s word, which the log keeps without the PIN', async () => {
	const { db, ada, ben, eve, ask } = await shop();
	const refused = (status: number, code: string) => ({ problem: { status, code } });

	await expect(decidedPlan(db, { plan: thin, decision: undefined, address })).rejects.toMatchObject(
		{
			problem: {
				status: 422,
				errors: [{ path: 'decision', message: expect.stringContaining('parting film') }]
			}
		}
	);
	await expect(ask(ada.id, '0000')).rejects.toMatchObject(refused(403, 'wrong-pin'));
	await expect(ask(ben.id, '1357')).rejects.toMatchObject(refused(403, 'may-not-sign'));
	// Whoever gave her that PIN knows it.
	await expect(ask(eve.id, '8642')).rejects.toMatchObject(refused(403, 'may-not-sign'));

	const decided = await ask(ada.id, '2468');
	const id = await createJob(db, { plan: thin, by: ben.id, at: AT, content: {}, decided });
	const job = await getJob(db, id);
	expect(job?.state.decided).toEqual({
		by: ada.id,
		reason: 'A trial piece.',
		what: [expect.stringContaining('a parting film is not chosen')]
	});
	expect(JSON.stringify(job?.log)).not.toContain('2468');
});

test('a plan that needs nobody’s word keeps none', async () => {
	const { ada, ask } = await shop();
	expect(await ask(ada.id, '2468', whole)).toBeUndefined();
});

test('a form says what of the word is missing, and gives back all but the PIN', () => {
	const form = new FormData();
	form.set('reason', 'A trial piece.');
	form.set('pin', '12');
	expect(readDecision(form)).toEqual({
		decision: null,
		answer: {
			supervisorId: '',
			reason: 'A trial piece.',
			problems: { supervisorId: expect.any(String), pin: expect.any(String) }
		}
	});
});
