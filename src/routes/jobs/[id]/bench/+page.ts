import { bringPieces } from '$lib/screen/bench/pieces';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ data }) => {
	await bringPieces(data);
	return data;
};
