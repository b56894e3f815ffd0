/** Seconds from `fromAt` to `toAt`; negative when `toAt` comes first. Instants are ISO strings in UTC. */
export function secondsBetween(fromAt: string, toAt: string): number {
	return (Date.parse(toAt) - Date.parse(fromAt)) / 1000;
}

/** The instant `seconds` after `at`, as an ISO string in UTC. */
export function addSeconds(at: string, seconds: number): string {
	return new Date(Date.parse(at) + Math.round(seconds * 1000)).toISOString();
}
