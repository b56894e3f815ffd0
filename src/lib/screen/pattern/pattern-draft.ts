import { z } from 'zod';

const text = z.string().default('');

const againstDraftSchema = z.object({ id: text, areaCm2: text });

/** One solid as typed; fields that its shape does not have stay as they are, in case it changes back. */
export const solidDraftSchema = z.object({
	shape: z.string().default('box'),
	id: text,
	name: text,
	on: z.string().default('board'),
	lengthMm: text,
	widthMm: text,
	heightMm: text,
	diameterMm: text,
	bottomDiameterMm: text,
	topDiameterMm: text,
	outerDiameterMm: text,
	innerDiameterMm: text,
	against: z.array(againstDraftSchema).max(12).default([])
});
export type SolidDraft = z.infer<typeof solidDraftSchema>;

/** A pattern's form as typed, every number still a text in the shop's units. Paths are those of the schema. */
export const patternDraftSchema = z.object({
	name: text,
	material: z.string().default('plaster'),
	porosity: z.string().default('porous, sealed'),
	undercutMm: text,
	purpose: text,
	partsWanted: text,
	detail: z
		.object({ narrowestRecessMm: text, deepestRecessMm: text, finestLineMm: text })
		.prefault({}),
	body: z
		.object({
			kind: z.string().default('solids'),
			solids: z.array(solidDraftSchema).max(60).default([]),
			exposedAreaCm2: text,
			volumeMl: text,
			lengthMm: text,
			widthMm: text,
			heightMm: text,
			steepestWallDeg: text,
			/** A whole measured mesh as JSON; nobody types it. */
			mesh: text
		})
		.prefault({})
});
export type PatternDraft = z.infer<typeof patternDraftSchema>;

/** A new solid on top of the last one, or on the board when it is the first. */
export function newSolid(solids: readonly SolidDraft[]): SolidDraft {
	const used = new Set(solids.map(({ id }) => id));
	let number = solids.length + 1;
	while (used.has(`solid-${number}`)) number += 1;
	return solidDraftSchema.parse({
		id: `solid-${number}`,
		name: `Solid ${number}`,
		on: solids.at(-1)?.id ?? 'board'
	});
}

/** The draft of a pattern that is yet to be described: one box on the board. */
export function emptyPattern(): PatternDraft {
	return patternDraftSchema.parse({ body: { solids: [newSolid([])] } });
}

/** The draft without one solid; what stood on it comes down onto what it stood on. */
export function withoutSolid(solids: readonly SolidDraft[], gone: SolidDraft): SolidDraft[] {
	return solids
		.filter(({ id }) => id !== gone.id)
		.map((solid) => ({
			...solid,
			on: solid.on === gone.id ? gone.on : solid.on,
			against: solid.against.filter(({ id }) => id !== gone.id)
		}));
}
