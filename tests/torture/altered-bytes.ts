import { verifierOf } from './record-faults';
import type { Row } from './row';

type Change = 'changed' | 'removed' | 'swapped';
const CHANGES: readonly Change[] = ['changed', 'removed', 'swapped'];

/** Alters a record by one byte at a time, and asks the verifier whether it sees it. */
export async function alterBytes(text: string, tries: number): Promise<Row> {
	const faultOf = await verifierOf();
	const bytes = new TextEncoder().encode(text);
	const decoder = new TextDecoder('utf-8', { ignoreBOM: true });
	const unseen: Record<Change, number> = { changed: 0, removed: 0, swapped: 0 };
	let done = 0;
	while (done < tries) {
		const change = CHANGES[done % 3] ?? 'changed';
		const altered = alter(bytes, change);
		// Two equal neighbors swapped are no change at all.
		if (altered === null) continue;
		done += 1;
		if (faultOf(decoder.decode(altered)) === null) unseen[change] += 1;
	}
	const missed = unseen.changed + unseen.removed + unseen.swapped;
	return {
		what: 'one byte of an exported log changed, removed or swapped',
		done: `${done} of ${tries} tries on ${bytes.length} bytes`,
		found: `detected ${done - missed} (${((100 * (done - missed)) / done).toFixed(2)} %)`,
		isGood: faultOf(text) === null && missed === 0
	};
}

function alter(bytes: Uint8Array, change: Change): Uint8Array | null {
	const at = Math.floor(Math.random() * (bytes.length - 1));
	if (change === 'removed') {
		return Uint8Array.from([...bytes.subarray(0, at), ...bytes.subarray(at + 1)]);
	}
	const copy = bytes.slice();
	const [here = 0, next = 0] = [bytes[at], bytes[at + 1]];
	if (change === 'changed') copy[at] = here ^ (1 + Math.floor(Math.random() * 255));
	else {
		if (here === next) return null;
		copy[at] = next;
		copy[at + 1] = here;
	}
	return copy;
}
