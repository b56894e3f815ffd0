import { isSince, type ProcessContext } from './context';

/** Coats of sealer that this mold's pattern takes; none for a dense one. Logged from version 3 on. */
export function sealerCoatsOf(c: ProcessContext): number {
	return isSince(c, 3) ? (c.plan.release.sealerCoats ?? 0) : 0;
}
