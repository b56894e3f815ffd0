/** What a mold's section says of itself. */
export const section = {
	toScale: 'Section, to scale',
	coats: (factor: number) => `coats drawn ×${factor}`,
	shell: (factor: number) => `shell ×${factor}`,
	release: 'release drawn as a line',
	nothing: 'nothing',
	size: (width: string, height: string) => `${width} by ${height}`,
	asPlanned: (size: string, layers: string) =>
		`Section of the mold as planned over a pattern of ${size}: ${layers}.`,
	soFar: (size: string, now: { done: string; current: string; planned: string }) =>
		`Section of the mold over a pattern of ${size}. Done: ${now.done}. Now: ${now.current}. Planned: ${now.planned}.`
};
export type SectionWords = typeof section;
