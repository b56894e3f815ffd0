type Role = 'apprentice' | 'mold maker' | 'supervisor' | 'owner';

interface Member {
	id: string;
	role: Role;
	retired: boolean;
}

const signs = (role: Role): boolean => role === 'supervisor' || role === 'owner';

/** People and the shop are kept by those who answer for it. */
export function mayManage(person: { role: Role } | null | undefined): boolean {
	return !!person && signs(person.role);
}

/**
 * Whether `actor` may retire `target` or give them a new PIN. With the PIN of another who signs, one
 * could sign one's own work; so signers are changed by an owner, or by themselves. A shop without an
 * owner has nobody above its supervisors: there they answer for one another.
 */
export function mayChange(
	actor: Pick<Member, 'id' | 'role'>,
	target: Pick<Member, 'id' | 'role'>,
	people: readonly Member[]
): boolean {
	if (!mayManage(actor)) return false;
	if (actor.role === 'owner' || actor.id === target.id || !signs(target.role)) return true;
	return target.role === 'supervisor' && !hasOwner(people);
}

/** Roles that `actor` may give to somebody new; one who signs is added by an owner, where there is one. */
export function rolesToGive(actor: Pick<Member, 'role'>, people: readonly Member[]): Role[] {
	if (!mayManage(actor)) return [];
	const all: Role[] = ['apprentice', 'mold maker', 'supervisor', 'owner'];
	return actor.role === 'owner' || !hasOwner(people) ? all : all.filter((role) => !signs(role));
}

/**
 * How many of those at work sign now, and how many will once they have chosen a PIN of their own: one that
 * somebody else gave signs nothing.
 */
export function countSigners(
	people: ReadonlyArray<Pick<Member, 'role' | 'retired'> & { pinGivenBy: string | null }>
): { signing: number; pending: number } {
	const signers = people.filter(({ role, retired }) => signs(role) && !retired);
	const signing = signers.filter(({ pinGivenBy }) => pinGivenBy === null).length;
	return { signing, pending: signers.length - signing };
}

export function hasOwner(people: ReadonlyArray<Pick<Member, 'role' | 'retired'>>): boolean {
	return people.some(({ role, retired }) => role === 'owner' && !retired);
}
