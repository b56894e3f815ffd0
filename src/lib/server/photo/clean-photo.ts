import { cleanJpeg } from './clean-jpeg';
import { cleanPng } from './clean-png';
import { cleanWebp } from './clean-webp';

export interface CleanPhoto {
	type: 'image/jpeg' | 'image/png' | 'image/webp';
	bytes: Uint8Array;
	widthPx: number;
	heightPx: number;
}

/** A photo of more could exhaust the memory of whoever opens it. */
const MOST_PX = 50_000_000;

/**
 * A photo without what its file says beside the picture: place, time, device, thumbnails, comments, and
 * whatever hangs on behind its end. Known by its bytes, whatever its name. A photo that has nothing of
 * the kind comes back as it was, byte by byte.
 *
 * @throws Error with a sentence when it is no whole JPEG, PNG or WebP, or too large a picture
 */
export function cleanPhoto(bytes: Uint8Array): CleanPhoto {
	const head = Buffer.from(bytes.subarray(0, 16)).toString('latin1');
	const cleaned = head.startsWith('\xff\xd8\xff')
		? { type: 'image/jpeg' as const, ...cleanJpeg(bytes) }
		: head.startsWith('\x89PNG\r\n\x1a\n')
			? { type: 'image/png' as const, ...cleanPng(bytes) }
			: head.startsWith('RIFF') && head.slice(8, 12) === 'WEBP'
				? { type: 'image/webp' as const, ...cleanWebp(bytes) }
				: null;
	if (!cleaned) throw new Error('Not a photo; accepted: JPEG, PNG or WebP.');
	const { widthPx, heightPx } = cleaned;
	if (!(widthPx > 0 && heightPx > 0 && widthPx * heightPx <= MOST_PX)) {
		throw new Error(
			`The photo has ${widthPx} × ${heightPx} px; accepted: 1 to ${MOST_PX} px in all.`
		);
	}
	return cleaned;
}
