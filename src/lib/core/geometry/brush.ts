import { z } from 'zod';

/** The narrowest brush of a shop, by which is decided what no brush can reach. */
export const brushSchema = z.strictObject({
	/** Where there is no room for this, the brush stops. */
	widthMm: z.number().min(0.5).max(50),
	/** How far the tips of its bristles reach beyond that. */
	reachMm: z.number().min(0).max(200)
});
export type Brush = z.infer<typeof brushSchema>;

/** A stiff pointed brush for corners; common practice, no source. A shop's own may be entered. */
export const NARROWEST_BRUSH: Brush = { widthMm: 3, reachMm: 10 };

const mm = z.number().min(0).max(10_000);
const place = z.number().min(-10_000).max(10_000);

/** What that brush leaves out. */
export const unreachedSchema = z.strictObject({
	brush: brushSchema,
	areaCm2: z.number().min(0).max(1e6),
	/** The largest first; the deepest point of each. */
	places: z
		.array(
			z.strictObject({
				number: z.number().int().min(1),
				xMm: place,
				yMm: place,
				zMm: place,
				widthMm: mm,
				depthMm: z.number().min(0).max(20_000),
				areaCm2: z.number().min(0).max(1e6)
			})
		)
		.max(20),
	unlistedPlaces: z.number().int().min(0)
});
export type Unreached = z.infer<typeof unreachedSchema>;
