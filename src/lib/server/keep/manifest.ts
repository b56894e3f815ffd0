import { z } from 'zod';
import { canonicalJson, sha256Hex } from '$lib/core/log/canonical';

const hash = z.string().regex(/^[0-9a-f]{64}$/);

/** What a zip of a whole shop says about itself. */
export const manifestSchema = z.strictObject({
	format: z.literal('glovewright.shop.1'),
	exportedAt: z.iso.datetime(),
	shop: z.string(),
	/** Schema of the store it came from. */
	schema: z.number().int().min(1),
	hasPins: z.boolean(),
	/** Molds whose record is damaged, with what is wrong; they are not in it. */
	damaged: z.array(z.string()),
	jobs: z.array(
		z.strictObject({
			id: z.string().min(1),
			openedAt: z.iso.datetime(),
			headHash: hash,
			seq: z.number().int().min(1)
		})
	),
	photos: z.array(z.strictObject({ hash, type: z.string(), addedAt: z.string() })),
	meshes: z.array(z.strictObject({ hash, format: z.string(), addedAt: z.string() })),
	files: z.record(z.string(), z.strictObject({ bytes: z.number().int().min(0), sha256: hash })),
	/** SHA-256 of the canonical JSON of the manifest without this member. */
	manifestHash: hash
});
export type Manifest = z.infer<typeof manifestSchema>;

/** The hash a manifest should have. */
export function manifestHashOf({ manifestHash: _own, ...rest }: Manifest): string {
	return sha256Hex(canonicalJson(rest));
}

const EXTENSIONS: Record<string, string> = {
	'image/jpeg': 'jpg',
	'image/png': 'png',
	'image/webp': 'webp'
};

export function photoName(hash: string, type: string): string {
	return `photos/${hash}.${EXTENSIONS[type] ?? 'bin'}`;
}

export function meshName(hash: string, format: string): string {
	return `meshes/${hash}.${format}`;
}

export function recordName(jobId: string): string {
	return `records/${jobId.replaceAll(/[^\w-]/g, '_')}.json`;
}
