import { z } from 'zod';
import { patternSchema } from '../geometry/pattern';
import { sheetSchema } from '../materials/sheet';
import { shopSchema } from './shop';

/** Materials chosen for one mold, as whole sheets, so that a frozen plan never changes with the library. */
const choiceSchema = z.strictObject({
	/** Free-flowing material for detail coats; used only when the detail calls for it. */
	detail: sheetSchema.optional(),
	build: sheetSchema,
	shell: sheetSchema,
	/** Cloth or chopped strand, for a laminated shell. */
	reinforcement: sheetSchema.optional(),
	wax: sheetSchema.optional(),
	film: sheetSchema.optional(),
	sealer: sheetSchema.optional(),
	casting: sheetSchema
});

/** Less is mostly left in the cup; a choice of ours. */
export const LEAST_CUP_G = 25;
const cupG = z.number().min(LEAST_CUP_G).max(20_000);

/** Everything a plan is computed from. Plain data, hashed with the plan. */
export const planInputsSchema = z.strictObject({
	shop: shopSchema,
	pattern: patternSchema,
	materials: choiceSchema,
	/** Total build of the glove, and how many build coats; left out, the plan proposes them. */
	gloveThicknessMm: z.number().min(1).max(30).optional(),
	buildCoats: z.number().int().min(2).max(12).optional(),
	shellThicknessMm: z.number().min(3).max(80).optional(),
	/** No cup of these coats or of the shell is planned larger; left out, time, shelf and data sheet decide. */
	detailCupG: cupG.optional(),
	buildCupG: cupG.optional(),
	shellCupG: cupG.optional(),
	/** Clear gap between pattern and frame. */
	frameGapMm: z.number().min(10).max(300).optional(),
	/** Room while the work is done; left out, the shop's own. */
	roomTemperatureC: z.number().min(0).max(45).optional(),
	roomHumidityPct: z.number().min(1).max(100).optional(),
	/** Coldest place of the pattern; left out, as warm as the room. */
	surfaceTemperatureC: z.number().min(-20).max(60).optional(),
	/** When a lot was made, for its shelf life; left out, the lot is taken as fresh. */
	lots: z
		.array(z.strictObject({ materialId: z.string().max(60), madeAt: z.iso.datetime() }))
		.max(20)
		.optional(),
	/** Thickener, pigment or accelerator in parts per hundred of the mix, as its sheet says. */
	additions: z
		.array(
			z.strictObject({
				to: z.enum(['detail', 'build', 'shell', 'casting']),
				name: z.string().trim().min(1).max(120),
				partsPerHundred: z.number().positive().max(100)
			})
		)
		.max(10)
		.optional(),
	people: z.number().int().min(1).max(8),
	startAt: z.iso.datetime()
});
export type PlanInputs = z.infer<typeof planInputsSchema>;
