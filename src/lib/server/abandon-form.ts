import { fail } from '@sveltejs/kit';
import type { Db } from './database';
import { wrongPinWords } from './pin-words';
import { refusalWords } from './refusal-words';
import { signatureSchema, signJob } from './sign';

interface Abandoning {
	jobId: string;
	personId: string;
	zone: string;
	address: string;
	form: FormData;
}

/** Gives a mold up for the person of the session, who types their PIN anew. It never comes back, the reason does. */
export async function abandonFromForm(
	db: Db,
	{ jobId, personId, zone, address, form }: Abandoning
) {
	const text = (name: string) => String(form.get(name) ?? '').trim();
	const reason = text('reason').slice(0, 2000);
	const not = (status: number, problem: string) => fail(status, { reason, problem });

	if (reason === '') return not(422, 'Write why the mold is given up: the record needs it.');
	const parsed = signatureSchema.safeParse({
		decision: 'abandon',
		id: text('id'),
		seq: Number(text('seq')) + 1,
		personId,
		pin: text('pin'),
		reason
	});
	if (!parsed.success) {
		return parsed.error.issues.some(({ path }) => path[0] === 'pin')
			? not(422, 'Type your PIN: 4 to 8 digits.')
			: not(422, 'The page sent something that cannot be read. Load it again.');
	}
	const result = await signJob(db, { jobId, signature: parsed.data, address });
	switch (result.status) {
		case 'appended':
		case 'duplicate':
			return { abandoned: true };
		case 'wrong PIN':
			return not(result.waitS > 0 ? 429 : 403, wrongPinWords(result.waitS));
		case 'may not sign':
			return not(403, result.reason);
		case 'conflict':
			return not(409, 'Somebody entered something meanwhile. Look again, then decide.');
		case 'refused':
			return not(409, refusalWords(result.reason, zone));
		case 'unfit':
			return not(422, 'The page sent something that cannot be read. Load it again.');
		case 'no job':
			return not(404, 'There is no such mold.');
	}
}
