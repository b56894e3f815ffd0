import type { WaitingAct } from './waiting-act';

/**
 * What waits on this device, seen from any page: sent from there too, and never forgotten. The store on the
 * device is loaded after the page, so that no page waits for it.
 */
export class WaitingElsewhere {
	acts = $state.raw<WaitingAct[]>([]);

	/** Sends what this person's waiting acts are, and shows what is left. */
	async look(personId: string | null): Promise<void> {
		const { lookForWaiting } = await import('./look-for-waiting');
		this.acts = (await lookForWaiting(personId)) ?? this.acts;
	}
}
