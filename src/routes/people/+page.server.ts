import { error, fail } from '@sveltejs/kit';
import { mayChange, mayManage, rolesToGive } from '$lib/screen/people/people-rights';
import { now } from '$lib/server/clock';
import {
	addPerson,
	listPeople,
	newPersonSchema,
	retirePerson,
	setPin
} from '$lib/server/people.repository';
import { listFailedPins } from '$lib/server/pin-attempts';
import { pinSchema } from '$lib/server/pin-hash';
import { recordsByPerson } from '$lib/server/training/training.repository';
import { SESSION_COOKIE } from '$lib/server/sessions';
import { isUnlocked } from '$lib/server/unlock';
import { weakPinWords } from '$lib/server/weak-pin';
import { readNewPerson } from './new-person';
import { ownPinProblem } from './wrong-own-pin';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals, cookies }) => {
	const actor = await standing({ locals, cookies });
	const people = await listPeople(locals.db);
	const isManager = mayManage(actor);
	const records = await recordsByPerson(locals.db);
	const names = new Map(people.map(({ id, name }) => [id, name]));
	return {
		at: now(),
		zone: locals.shop?.zone ?? 'UTC',
		isManager,
		isLocked: locals.person?.role === 'owner' && actor?.role !== 'owner',
		roles: actor ? rolesToGive(actor, people) : [],
		people: people.map((person) => ({
			...person,
			pinGivenBy: person.pinGivenBy && (names.get(person.pinGivenBy) ?? 'somebody'),
			isMe: person.id === actor?.id,
			training: isManager || person.id === actor?.id ? (records.get(person.id) ?? []) : null,
			mayChange: actor !== null && !person.retired && mayChange(actor, person, people)
		})),
		attempts: isManager
			? (await listFailedPins(locals.db)).map((attempt) => ({
					...attempt,
					name: names.get(attempt.personId) ?? 'Nobody of this shop'
				}))
			: []
	};
};

/** Who acts. An owner who has not given the password has no more say than a supervisor. */
async function standing({ locals, cookies }: Pick<RequestEvent, 'locals' | 'cookies'>) {
	const { person, db } = locals;
	if (person?.role !== 'owner') return person;
	const isOpen = await isUnlocked(db, cookies.get(SESSION_COOKIE), now());
	return isOpen ? person : { ...person, role: 'supervisor' as const };
}

/** Who acts, or a plain refusal. */
async function actorOf(event: Pick<RequestEvent, 'locals' | 'cookies'>) {
	const person = await standing(event);
	if (!person || !mayManage(person)) error(403, 'People are kept by supervisors and owners.');
	return person;
}

export const actions: Actions = {
	add: async ({ locals, request, cookies, getClientAddress }) => {
		const actor = await actorOf({ locals, cookies });
		const form = await request.formData();
		const people = await listPeople(locals.db);
		const { draft, errors } = readNewPerson(form, people, rolesToGive(actor, people));
		const parsed = newPersonSchema.safeParse({ ...draft, pin: String(form.get('pin') ?? '') });
		const refuse = (status: number) => fail(status, { act: 'add' as const, draft, errors });
		if (!parsed.success || Object.keys(errors).length > 0) return refuse(400);
		const problem = await ownPinProblem(locals.db, actor.id, form, getClientAddress());
		if (problem) {
			errors.ownPin = problem;
			return refuse(403);
		}
		const { name } = await addPerson(locals.db, parsed.data, now(), actor.id);
		return {
			act: 'add' as const,
			done: `${name} can sign in now, and chooses their own PIN then.`
		};
	},
	retire: async ({ locals, request, cookies, getClientAddress }) => {
		const actor = await actorOf({ locals, cookies });
		const form = await request.formData();
		const people = await listPeople(locals.db);
		const target = people.find(({ id }) => id === form.get('person'));
		const refuse = (status: number, message: string) =>
			fail(status, { act: 'retire' as const, personId: target?.id ?? '', message });
		if (!target || !mayChange(actor, target, people)) {
			return refuse(403, 'Those who sign are changed by an owner, or by themselves.');
		}
		const problem = await ownPinProblem(locals.db, actor.id, form, getClientAddress());
		if (problem) return refuse(403, problem);
		if ((await retirePerson(locals.db, target.id)) === 'last supervisor') {
			return refuse(409, `${target.name} is the last who may sign. Add another one first.`);
		}
		return {
			act: 'retire' as const,
			done: `${target.name} can no longer sign in, and stays in every record.`
		};
	},
	pin: async ({ locals, request, cookies, getClientAddress }) => {
		const actor = await actorOf({ locals, cookies });
		const form = await request.formData();
		const people = await listPeople(locals.db);
		const target = people.find(({ id }) => id === form.get('person'));
		const refuse = (status: number, message: string) =>
			fail(status, { act: 'pin' as const, personId: target?.id ?? '', message });
		if (!target || target.retired || !mayChange(actor, target, people)) {
			return refuse(403, 'Those who sign are changed by an owner, or by themselves.');
		}
		const pin = pinSchema.safeParse(String(form.get('pin') ?? ''));
		if (!pin.success) return refuse(400, 'Accepted: a new PIN of 4 to 8 digits.');
		const weak = weakPinWords(pin.data);
		if (weak) return refuse(400, weak);
		if (pin.data !== form.get('pinAgain')) return refuse(400, 'The two new PINs differ.');
		const problem = await ownPinProblem(locals.db, actor.id, form, getClientAddress());
		if (problem) return refuse(403, problem);
		await setPin(locals.db, target.id, pin.data, { by: actor.id });
		const then = actor.id === target.id ? '.' : ', and chooses their own PIN then.';
		return { act: 'pin' as const, done: `${target.name} signs in anew with it${then}` };
	}
};
