import { z } from 'zod';
import { patternSchema } from '../geometry/pattern';
import { sheetSchema } from '../materials/sheet';
import { shopSchema } from '../plan/shop';

const id = z.string().regex(/^[a-z0-9-]{1,60}$/, 'lower case, digits and hyphens');

/** The demo says of itself that it is invented, everywhere a name is shown. */
const invented = z
	.string()
	.trim()
	.regex(/\binvented\b/i, 'must say that it is invented');

export const demoShopSchema = shopSchema.safeExtend({ name: invented, isDemo: z.literal(true) });

export const demoPersonSchema = z.strictObject({
	id,
	name: z.string().trim().min(1).max(60),
	role: z.enum(['apprentice', 'mold maker', 'supervisor', 'owner']),
	pin: z.string().regex(/^\d{6}$/, 'six digits')
});
export type DemoPerson = z.infer<typeof demoPersonSchema>;

export const demoPeopleSchema = z.strictObject({
	note: invented,
	people: z.array(demoPersonSchema).min(1)
});

export const demoSheetSchema = sheetSchema.safeExtend({
	name: invented,
	maker: invented,
	note: invented
});

/** Ids of the sheets a demo pattern is planned with, by what they do. */
const recommendedSchema = z.strictObject({
	detail: id.optional(),
	build: id,
	shell: id,
	reinforcement: id.optional(),
	wax: id.optional(),
	film: id.optional(),
	sealer: id.optional(),
	casting: id
});

export const demoPatternSchema = z.strictObject({
	id,
	recommended: recommendedSchema,
	pattern: patternSchema.safeExtend({ name: invented, purpose: invented })
});
export type DemoPattern = z.infer<typeof demoPatternSchema>;
