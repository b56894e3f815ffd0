import type { Mesh } from '../mesh';
import { lathe } from './lathe';

const SIDES = 144;

/** An invented stepped wheel, 120 mm across: two rims, each with a belt groove that is an undercut, and a bore. */
export function steppedPulley(): Mesh {
	return lathe(
		[
			[9, 0],
			[60, 0],
			[60, 5],
			[53, 10],
			[53, 14],
			[60, 19],
			[60, 24],
			[40, 24],
			[40, 28],
			[34, 32],
			[34, 36],
			[40, 40],
			[40, 44],
			[22, 44],
			[22, 50],
			[20, 52],
			[9, 52]
		],
		SIDES
	);
}
