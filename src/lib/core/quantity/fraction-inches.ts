import { MM_PER_IN } from './customary';

const PARTS = 16;

/** A length as a carpenter cuts it, to the nearest sixteenth of an inch: "45 11/16 in"; less than half of one is "0 in". */
export function fractionInches(lengthMm: number): string {
	const sixteenths = Math.round((PARTS * lengthMm) / MM_PER_IN);
	const whole = Math.floor(sixteenths / PARTS);
	let over = sixteenths % PARTS;
	let under = PARTS;
	while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
	if (over === 0) return `${whole} in`;
	return `${whole > 0 ? `${whole} ` : ''}${over}/${under} in`;
}
