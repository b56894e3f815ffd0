import type { Person } from './people.repository';

/** Who looks after the shop itself: backups, exports, sessions, devices. Owners; where there is none, supervisors. */
export function mayAdminister(
	person: Pick<Person, 'role'> | null | undefined,
	people: ReadonlyArray<Pick<Person, 'role' | 'retired'>>
): boolean {
	const hasOwner = people.some(({ role, retired }) => role === 'owner' && !retired);
	return person?.role === 'owner' || (person?.role === 'supervisor' && !hasOwner);
}
