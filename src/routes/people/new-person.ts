import type { FieldErrors } from '$lib/screen/form/read-entries';
import { weakPinWords } from '$lib/server/weak-pin';
import { newPersonSchema, ROLES, type Person, type Role } from '$lib/server/people.repository';

/** What was typed about somebody new, and what is wrong with it. The PIN is not given back. */
export function readNewPerson(
	form: FormData,
	people: readonly Person[],
	roles: readonly Role[]
): { draft: { name: string; role: string }; errors: FieldErrors } {
	const text = (name: string) => String(form.get(name) ?? '');
	const draft = { name: text('name').trim().slice(0, 200), role: text('role') };
	const errors: FieldErrors = {};
	const { error } = newPersonSchema.safeParse({ ...draft, pin: text('pin') });
	for (const { path } of error?.issues ?? []) {
		if (path[0] === 'name') errors.name = 'Accepted: a name of 1 to 120 characters.';
		if (path[0] === 'pin') errors.pin = 'Accepted: a PIN of 4 to 8 digits.';
		if (path[0] === 'role') errors.role = `Accepted: ${ROLES.join(', ')}.`;
	}
	const isTaken = people.some(
		({ name, retired }) => !retired && name.toLowerCase() === draft.name.toLowerCase()
	);
	if (isTaken) errors.name = 'Somebody of this name is here already; add what tells them apart.';
	if (!errors.role && !roles.some((role) => role === draft.role)) {
		errors.role = 'Those who sign are added by an owner.';
	}
	const weak = weakPinWords(text('pin'));
	if (weak) errors.pin ??= weak;
	if (text('pin') !== text('pinAgain')) errors.pinAgain = 'The two PINs differ.';
	return { draft, errors };
}
