import { fail } from '@sveltejs/kit';
import { troubleAnswers, type TroubleAnswer } from '$lib/core/process/events';
import { TROUBLE_ANSWERS } from '$lib/core/process/trouble-answers';
import type { Db } from './database';
import { wrongPinWords } from './pin-words';
import { refusalWords } from './refusal-words';
import { pinSchema } from './pin-hash';
import { signatureSchema, signJob } from './sign';

const ANSWERS = Object.keys(troubleAnswers) as TroubleAnswer[];
const isAnswer = (name: string): name is TroubleAnswer => ANSWERS.some((own) => own === name);

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
		wayBack: text('wayBack'),
		words: text('words'),
		/** Questions on the trouble that the page asked, and what was answered. */
		asked: text('asked').split(' ').filter(isAnswer),
		answers: Object.fromEntries(ANSWERS.map((name) => [name, text(name)]))
	};
	const not = (status: number, ...problems: string[]) => fail(status, { ...typed, problems });

	const pinProblems = pinSchema.safeParse(text('pin')).success
		? []
		: ['Type the PIN: 4 to 8 digits.'];
	const missing = [...missingFrom(typed), ...pinProblems];
	if (missing.length > 0) return not(422, ...missing);
	const parsed = signatureSchema.safeParse(
		signatureOf(typed, {
			id: text('id'),
			seq: Number(text('seq')) + 1,
			hold: text('hold'),
			undoes: text('undoes'),
			pin: text('pin')
		})
	);
	if (!parsed.success) {
		return not(422, 'The page sent something that cannot be signed. Load it again.');
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
		case 'unfit':
			return not(422, 'The page sent something that cannot be signed. Load it again.');
		case 'no job':
			return not(404, 'There is no such mold.');
	}
}

interface Typed {
	decision: string;
	supervisorId: string;
	to: string;
	wayBack: string;
	words: string;
	asked: TroubleAnswer[];
	answers: Record<string, string>;
}

/** Everything that is still to be filled in, in the order of the form. */
function missingFrom(typed: Typed): string[] {
	const { decision, supervisorId, to, wayBack, words, asked, answers } = typed;
	return [
		...(decision === '' ? ['Choose what you decide.'] : []),
		...(decision === 'send back' && to === '' ? ['Choose the step it goes back to.'] : []),
		...(decision === 'decide trouble'
			? asked.filter((name) => answers[name] === '').map((name) => TROUBLE_ANSWERS[name].missing)
			: []),
		...(decision === 'decide trouble' && wayBack === '' ? ['Choose how work goes on.'] : []),
		...(decision !== 'sign' && decision !== '' && words === ''
			? ['Write the reason: the crew and the record need it.']
			: []),
		...(supervisorId === '' ? ['Choose who signs.'] : [])
	];
}

/** The fields that go with the decision, and no others: the schema takes no strangers. */
function signatureOf(
	{ decision, supervisorId, to, wayBack, words, asked, answers }: Typed,
	{ hold, undoes, ...rest }: { id: string; seq: number; hold: string; undoes: string; pin: string }
): Record<string, unknown> {
	const shared = { decision, supervisorId, ...rest };
	switch (decision) {
		case 'sign':
			return { ...shared, hold, ...(words ? { note: words } : {}) };
		case 'send back':
			return { ...shared, hold, to, reason: words };
		case 'decide trouble':
			return { ...shared, how: words, wayBack, ...answered(asked, answers) };
		case 'take back':
			return { ...shared, undoes, reason: words };
		case 'reject':
			return { ...shared, reason: words };
		default:
			return { ...shared, note: words };
	}
}

/** A tick as the schema has it, words as they were written. */
function answered(asked: TroubleAnswer[], answers: Record<string, string>) {
	return Object.fromEntries(
		asked.map((name) => [name, answers[name] === 'true' ? true : answers[name]])
	);
}
