import { fail } from '@sveltejs/kit';
import type { Db } from './database';
import { wrongPinWords } from './pin-words';
import { refusalWords } from './refusal-words';
import { signatureSchema, signJob } from './sign';

interface Signing {
	jobId: string;
	zone: string;
	address: string;
	form: FormData;
}

/** Takes a supervisor's word from the signing page. What was typed comes back, the PIN never. */
export async function signFromForm(db: Db, { jobId, zone, address, form }: Signing) {
	const text = (name: string) => {
		const value = form.get(name);
		return typeof value === 'string' ? value.trim() : '';
	};
	const typed = {
		decision: text('decision'),
		supervisorId: text('supervisorId'),
		to: text('to'),
		words: text('words')
	};
	const not = (status: number, problem: string) => fail(status, { ...typed, problem });

	if (typed.decision === '') return not(422, 'Choose what you decide.');
	if (typed.supervisorId === '') return not(422, 'Choose who signs.');
	if (typed.decision === 'send back' && typed.to === '') {
		return not(422, 'Choose the step it goes back to.');
	}
	if (typed.decision !== 'sign' && typed.words === '') {
		return not(422, 'Write the reason: the crew and the record need it.');
	}
	const parsed = signatureSchema.safeParse(
		signatureOf(typed, {
			id: text('id'),
			seq: Number(text('seq')) + 1,
			hold: text('hold'),
			pin: text('pin')
		})
	);
	if (!parsed.success) {
		const isPin = parsed.error.issues.some(({ path }) => path[0] === 'pin');
		return not(
			422,
			isPin
				? 'Type the PIN: 4 to 8 digits.'
				: 'The page sent something that cannot be signed. Load it again.'
		);
	}
	const result = await signJob(db, { jobId, signature: parsed.data, address });
	switch (result.status) {
		case 'appended':
		case 'duplicate':
			return { signed: true };
		case 'wrong PIN':
			return not(result.waitS > 0 ? 429 : 403, wrongPinWords(result.waitS));
		case 'may not sign':
			return not(403, result.reason);
		case 'conflict':
			return not(409, 'Somebody entered something meanwhile. Look again below, then sign.');
		case 'refused':
			return not(409, refusalWords(result.reason, zone));
		case 'no job':
			return not(404, 'There is no such mold.');
	}
}

interface Typed {
	decision: string;
	supervisorId: string;
	to: string;
	words: string;
}

/** The fields that go with the decision, and no others: the schema takes no strangers. */
function signatureOf(
	{ decision, supervisorId, to, words }: Typed,
	{ hold, ...rest }: { id: string; seq: number; hold: string; pin: string }
): Record<string, unknown> {
	const shared = { decision, supervisorId, ...rest };
	switch (decision) {
		case 'sign':
			return { ...shared, hold, ...(words ? { note: words } : {}) };
		case 'send back':
			return { ...shared, hold, to, reason: words };
		case 'reject':
			return { ...shared, reason: words };
		default:
			return { ...shared, note: words };
	}
}
