import { unzipSync } from 'fflate';
import type { ReadLimits } from './read-limits';
import { refuse, RefusedError } from './refusal';

/** Least room given before a high ratio counts as an attack: small files may well be all zeros. */
const HARMLESS_BYTES = 20_000_000;
/** Text of a mesh shrinks about tenfold; deflate's limit is 1032. A choice. */
const MOST_RATIO = 200;

/** Files of a zip archive whose name ends in `.model` or `.rels`, refused before they swell beyond the limits. */
export function unzipModels(bytes: Uint8Array, limits: ReadLimits): Map<string, Uint8Array> {
	let total = 0;
	try {
		const files = unzipSync(bytes, {
			filter: ({ name, originalSize, size }) => {
				if (!/\.(model|rels)$/i.test(name)) return false;
				total += originalSize;
				const isBomb = originalSize > HARMLESS_BYTES && originalSize > size * MOST_RATIO;
				if (isBomb || total > limits.maxUnzippedBytes) {
					refuse(
						`"${name.slice(0, 80)}" would unzip from ${size} to ${originalSize} bytes`,
						'zip directory',
						`up to ${limits.maxUnzippedBytes} bytes in all, and no more than ${MOST_RATIO} times the zipped size`
					);
				}
				return true;
			}
		});
		return new Map(Object.entries(files));
	} catch (error) {
		if (error instanceof RefusedError) throw error;
		refuse(
			'The zip archive cannot be opened',
			'zip archive',
			'a 3MF file as it was exported, whole'
		);
	}
}
