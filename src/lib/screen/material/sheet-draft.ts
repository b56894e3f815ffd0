import { z } from 'zod';

const text = z.string().default('');
export const MOST_VOLATILES = 6;
const texts = z.array(z.string()).max(40).default([]);

const timeDraftSchema = z
	.object({ timeS: text, atC: text, second: z.object({ timeS: text, atC: text }).prefault({}) })
	.prefault({});
export type TimeDraft = z.infer<typeof timeDraftSchema>;

const partDraftSchema = z.object({ part: text, densityGPerMl: text, viscosityPaS: text });
const volatileDraftSchema = z.object({ substance: text, fraction: text });
const kitDraftSchema = z.object({ name: text, massG: text, price: text });

/** A data sheet's form as typed; paths are those of the schema, numbers are texts in the shop's units. */
export const sheetDraftSchema = z.object({
	name: text,
	maker: text,
	kind: z.string().default('glove'),
	family: z.string().default('urethane'),
	body: z.string().default('thixotropic'),
	parts: z.array(partDraftSchema).max(3).default([]),
	ratioByWeight: texts,
	ratioByVolume: texts,
	ratioToleranceFraction: text,
	mixedDensityGPerMl: text,
	mixedViscosityPaS: text,
	yieldStressPa: text,
	potLife: z.object({ timeS: text, massG: text, atC: text }).prefault({}),
	mixS: text,
	tackFree: timeDraftSchema,
	recoatCloses: timeDraftSchema,
	demold: timeDraftSchema,
	dry: timeDraftSchema,
	shoreA: text,
	shoreD: text,
	linearShrinkagePct: text,
	meltsAtC: text,
	poursAtC: text,
	heatLimitC: text,
	elongationPct: text,
	tearNPerMm: text,
	modulusMPa: text,
	arealG: text,
	spreadGPerM2: text,
	kits: z.array(kitDraftSchema).max(12).default([]),
	shelfLifeDays: text,
	useTemperature: z.object({ minC: text, maxC: text }).prefault({}),
	/** One field, codes apart by commas or spaces. */
	hazardStatements: text,
	hazards: texts,
	/** "on" where somebody has read in the SDS that the usual hazards are not in it. */
	sdsExcludesUsual: text,
	/** "on" when it is ticked, as a checkbox posts it. */
	needsRelease: text,
	inhibitedBy: texts,
	volatiles: z.array(volatileDraftSchema).max(MOST_VOLATILES).default([]),
	/** "on" where the sheet says that nothing evaporates, which is more than saying nothing. */
	hasNoVolatiles: text,
	heatJPerG: text,
	specificHeatJPerGK: text,
	note: text
});
export type SheetDraft = z.infer<typeof sheetDraftSchema>;

/** A blank form with room for two parts, as most materials of the trade have. */
export function emptySheet(): SheetDraft {
	return sheetDraftSchema.parse({
		parts: [{ part: 'A' }, { part: 'B' }],
		ratioByWeight: ['', ''],
		ratioByVolume: ['', ''],
		kits: [{}]
	});
}

/** The draft as if a button of its rows had been pressed: "add part", "remove kit 2". */
export function withRows(draft: SheetDraft, change: string): SheetDraft {
	const [verb, row, index] = change.split(' ');
	const keep = <T>(rows: T[]) => rows.filter((_, i) => i !== Number(index));
	if (row === 'part' && verb === 'add' && draft.parts.length < 3) {
		return {
			...draft,
			parts: [...draft.parts, partDraftSchema.parse({ part: 'ABC'[draft.parts.length] })],
			ratioByWeight: [...draft.parts.map((_, i) => draft.ratioByWeight[i] ?? ''), ''],
			ratioByVolume: [...draft.parts.map((_, i) => draft.ratioByVolume[i] ?? ''), '']
		};
	}
	if (row === 'part' && verb === 'remove' && draft.parts.length > 1) {
		return {
			...draft,
			parts: keep(draft.parts),
			ratioByWeight: keep(draft.ratioByWeight),
			ratioByVolume: keep(draft.ratioByVolume)
		};
	}
	if (row === 'kit' && verb === 'add' && draft.kits.length < 12) {
		return { ...draft, kits: [...draft.kits, kitDraftSchema.parse({})] };
	}
	if (row === 'volatile' && verb === 'add' && draft.volatiles.length < MOST_VOLATILES) {
		return { ...draft, volatiles: [...draft.volatiles, volatileDraftSchema.parse({})] };
	}
	if (row === 'volatile' && verb === 'remove') {
		return { ...draft, volatiles: keep(draft.volatiles) };
	}
	return row === 'kit' && verb === 'remove' ? { ...draft, kits: keep(draft.kits) } : draft;
}
