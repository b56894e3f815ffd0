import { frame, type FrameWords } from '$lib/core/language/en/frame';

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
export function navLinks({ person, shop }: ShellData, said = frame): NavLink[] {
	if (shop === null) return [];
	const everyone = [{ href: '/read', text: said.room }];
	if (person === null) return everyone;
	const links = [
		{ href: '/board', text: said.board },
		{ href: '/jobs/new', text: said.newMold },
		{ href: '/patterns', text: said.patterns },
		{ href: '/materials', text: said.materials },
		...everyone,
		{ href: '/shop', text: said.shop }
	];
	return person.role === 'apprentice' ? links : [...links, { href: '/people', text: said.people }];
}

/** A role of the shop in the reader's words. */
export function roleIn(role: string, { roles }: FrameWords): string {
	return Object.entries(roles).find(([name]) => name === role)?.[1] ?? role;
}
