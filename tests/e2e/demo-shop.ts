import type { App } from './app';

export interface Somebody {
	name: string;
	pin: string;
}

/** Invented people of the demo shop; their PINs stand on its sign-in page. */
export const CREW = {
	supervisor: { name: 'Tendai Brzoska', pin: '274918' },
	otherSupervisor: { name: 'Marisol Thunderwater', pin: '385027' },
	maker: { name: 'Anh Delacroix-Vu', pin: '496138' },
	apprentice: { name: 'Priya Castellanos', pin: '618350' }
} satisfies Record<string, Somebody>;

/** Lays out the demo shop through the form of the start page. */
export async function openDemoShop({ url }: Pick<App, 'url'>): Promise<void> {
	const answer = await fetch(`${url}/start`, {
		method: 'POST',
		headers: {
			origin: url,
			accept: 'text/html',
			'content-type': 'application/x-www-form-urlencoded'
		},
		redirect: 'manual'
	});
	if (answer.status !== 303) throw new Error(`the demo shop: ${await answer.text()}`);
}
