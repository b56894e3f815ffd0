/** What the frame round every page knows about the reader and the shop. */
export interface ShellData {
	person: { id: string; name: string; role: string } | null;
	shop: { name: string; isDemo: boolean } | null;
}

interface NavLink {
	href: string;
	text: string;
}

/** The pages this reader may reach from every page, in the order of a job's day. */
export function navLinks({ person, shop }: ShellData): NavLink[] {
	if (shop === null) return [];
	const everyone = [{ href: '/read', text: 'Reading room' }];
	if (person === null) return everyone;
	const links = [
		{ href: '/board', text: 'Board' },
		{ href: '/jobs/new', text: 'New mold' },
		{ href: '/patterns', text: 'Patterns' },
		{ href: '/materials', text: 'Materials' },
		...everyone,
		{ href: '/shop', text: 'Shop' }
	];
	return person.role === 'apprentice' ? links : [...links, { href: '/people', text: 'People' }];
}
