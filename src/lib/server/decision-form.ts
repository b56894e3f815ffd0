import type { Db } from './database';
import { listPeople, maySign } from './people.repository';
import { planDecisionSchema, type PlanDecision } from './plan-decision';

/** Who may let a plan through, and which of them is signed in. */
export async function plansSigners(db: Db, personId: string | undefined) {
	const people = await listPeople(db);
	const signers = people.filter((person) => !person.retired && maySign(person));
	return {
		signers: signers.map(({ id, name }) => ({ value: id, label: name })),
		mySignerId: signers.find(({ id }) => id === personId)?.id ?? ''
	};
}

interface ReadDecision {
	decision: PlanDecision | null;
	/** What goes back into the form: what was typed, but never the PIN, and what is missing by field. */
	answer: { supervisorId: string; reason: string; problems: Record<string, string> };
}

/** The word on a plan as a form sends it. */
export function readDecision(form: FormData): ReadDecision {
	const text = (name: string) => {
		const value = form.get(name);
		return typeof value === 'string' ? value.trim() : '';
	};
	const typed = { supervisorId: text('supervisorId'), reason: text('reason') };
	const parsed = planDecisionSchema.safeParse({ ...typed, pin: text('pin') });
	if (parsed.success) return { decision: parsed.data, answer: { ...typed, problems: {} } };
	const wrong = new Set(parsed.error.issues.map(({ path }) => path[0]));
	const problems = {
		...(wrong.has('supervisorId') && { supervisorId: 'Choose who decides.' }),
		...(wrong.has('reason') && {
			reason: 'Write the reason: the crew and the record need it. Accepted: up to 2,000 characters.'
		}),
		...(wrong.has('pin') && { pin: 'Type the PIN: 4 to 8 digits.' })
	};
	return { decision: null, answer: { ...typed, problems } };
}
