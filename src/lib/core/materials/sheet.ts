import { z } from 'zod';
import { SUBSTANCE_IDS } from '../laws/substances';

/** What a material is for. A shop's library is filtered by it. */
export const MATERIAL_KINDS = [
	'glove',
	'shell',
	'casting',
	'wax',
	'film',
	'sealer',
	'reinforcement'
] as const;
export type MaterialKind = (typeof MATERIAL_KINDS)[number];

/** Chemical family: decides who gets along with whom. */
export const MATERIAL_FAMILIES = [
	'urethane',
	'tin silicone',
	'platinum silicone',
	'latex',
	'epoxy',
	'polyester',
	'acrylic',
	'plaster',
	'concrete',
	'casting wax',
	'paste wax',
	'polyvinyl alcohol',
	'shellac',
	'glass fiber',
	'plant fiber'
] as const;
export type MaterialFamily = (typeof MATERIAL_FAMILIES)[number];

const name = z.string().trim().min(1).max(120);
const note = z.string().trim().max(2000);
const positive = z.number().positive().max(1e6);
const timeS = z
	.number()
	.positive()
	.max(60 * 86_400);

/** A hazard statement's code as an SDS prints it. */
export const HAZARD_STATEMENT = /^(EUH|H)\d{3}[A-Za-z]{0,2}$/;

export const partSchema = z.strictObject({
	/** "A", "B", or for one-part materials the material's own word, for example "powder" and "water". */
	part: name.max(20),
	densityGPerMl: z.number().min(0.3).max(4).optional(),
	/** Viscosity of the unmixed part; the thicker part goes into the cup first. */
	viscosityPaS: positive.optional()
});

/** A time stated by the data sheet at its reference temperature, with a second point when it gives one. */
export const sheetTimeSchema = z.strictObject({
	timeS,
	atC: z.number().min(-10).max(80),
	second: z.strictObject({ timeS, atC: z.number().min(-10).max(80) }).optional()
});

export const kitSchema = z.strictObject({
	name,
	massG: positive,
	/** In the shop's currency, before tax. */
	price: z.number().min(0).max(1e6)
});

/** A material's data sheet as the shop keeps it: the sheet's own fields, nothing computed. */
export const sheetSchema = z.strictObject({
	id: z.string().regex(/^[a-z0-9-]{1,60}$/, 'small letters, digits and hyphens, up to 60'),
	name,
	maker: name,
	kind: z.enum(MATERIAL_KINDS),
	family: z.enum(MATERIAL_FAMILIES),
	/** For a glove material: does it flow into detail, or stay on a vertical wall? */
	body: z.enum(['free-flowing', 'thixotropic', 'paste', 'liquid', 'sheet']),
	parts: z.array(partSchema).min(1).max(3),
	/** One number per part, in the order of `parts`. Absent for one-part materials. */
	ratioByWeight: z.array(positive).max(3).optional(),
	ratioByVolume: z.array(positive).max(3).optional(),
	/** Greatest deviation of the weight ratio that may still be mixed; the sheet's, else 2 %. */
	ratioToleranceFraction: z.number().min(0.001).max(0.2).optional(),
	mixedDensityGPerMl: z.number().min(0.05).max(4),
	mixedViscosityPaS: positive.optional(),
	yieldStressPa: positive.optional(),
	potLife: z.strictObject({ timeS, massG: positive, atC: z.number().min(-10).max(80) }).optional(),
	mixS: z.number().min(10).max(1800).optional(),
	tackFree: sheetTimeSchema.optional(),
	/** When the next coat no longer bonds, counted from laying. */
	recoatCloses: sheetTimeSchema.optional(),
	demold: sheetTimeSchema.optional(),
	shoreA: z.number().min(0).max(100).optional(),
	shoreD: z.number().min(0).max(100).optional(),
	/** Of a casting that is poured molten. */
	meltsAtC: z.number().min(30).max(200).optional(),
	poursAtC: z.number().min(30).max(250).optional(),
	/** Hottest that a cured glove stands, pour after pour. */
	heatLimitC: z.number().min(30).max(400).optional(),
	linearShrinkagePct: z.number().min(0).max(10).optional(),
	elongationPct: z.number().min(0).max(2000).optional(),
	tearNPerMm: z.number().min(0).max(200).optional(),
	/** Young's modulus of the cured material, for a shell. */
	modulusMPa: z.number().positive().max(100_000).optional(),
	/** Mass per area of a cloth or mat. */
	arealG: z.number().positive().max(5000).optional(),
	/** What one coat or pass of a release or sealer takes. */
	spreadGPerM2: z.number().positive().max(2000).optional(),
	/** Haze or drying time between coats of a release or sealer. */
	dry: sheetTimeSchema.optional(),
	kits: z.array(kitSchema).max(12),
	shelfLifeDays: z.number().int().positive().max(3650).optional(),
	useTemperature: z
		.strictObject({ minC: z.number().min(-20).max(60), maxC: z.number().min(-20).max(80) })
		.optional(),
	/** GHS hazard statements as printed on the SDS, for example "H334". */
	hazardStatements: z
		.array(z.string().regex(HAZARD_STATEMENT, 'a hazard statement such as H317 or EUH204'))
		.max(30),
	/** Hazard ids of the content vocabulary, for example "isocyanate". */
	hazards: z.array(name.max(40)).max(12),
	/** Whoever keeps the sheet has read in its SDS that it has none of the hazards usual for its family. */
	sdsExcludesUsual: z.literal(true).optional(),
	/** Who said so, and when; left out on sheets of before. The server sets it, no form. */
	sdsReadBy: z.strictObject({ name: name.max(120), at: z.iso.datetime() }).optional(),
	/** What evaporates from it, as share of its mass as used; left out, the plan assumes by family. */
	volatiles: z
		.array(
			z.strictObject({
				substance: z.enum(SUBSTANCE_IDS),
				fraction: z.number().positive().max(1)
			})
		)
		.max(6)
		.optional(),
	/** Heat that the cure sets free, and heat capacity of the mix, for the temperature of a cup. */
	heatJPerG: z.number().min(0).max(1000).optional(),
	specificHeatJPerGK: z.number().min(0.5).max(5).optional(),
	/** Does a mold material need a release on a sealed pattern? */
	needsRelease: z.boolean(),
	/** Pattern materials or families that stop its cure. */
	inhibitedBy: z.array(name).max(20),
	note: note.optional(),
	/** Set when the shop no longer uses it; old jobs keep it. */
	retired: z.boolean()
});

export type Sheet = z.infer<typeof sheetSchema>;
export type SheetTime = z.infer<typeof sheetTimeSchema>;
export type Kit = z.infer<typeof kitSchema>;
