import { canonicalJson, sha256Hex } from '../log/canonical';
import type { Plan } from './plan';

/** What a job is opened with and stays bound to: SHA-256 over the plan's canonical JSON, in hex. */
export function planHash(plan: Plan): string {
	return sha256Hex(canonicalJson(plan));
}
