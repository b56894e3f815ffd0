/** Patterns, data sheets and plans are changed by those who answer for them; an apprentice reads them. */
export function mayEdit(person: { role: string } | null | undefined): boolean {
	return !!person && person.role !== 'apprentice';
}
