/** Below this a component of the normal is left out; what that costs is of second order, 1e-7. */
const NOTHING = 1e-3;

/**
 * The part of a cube of side 1 about the origin that lies where normal · x ≤ offset.
 *
 * A plane cuts off a corner pyramid less the pyramids that stick out of the cube.
 * Source: Scardovelli, Zaleski 2000, Analytical relations connecting linear interfaces and volume
 * fractions in rectangular grids, J. Comput. Phys. 164 (from memory).
 *
 * @param x - with y and z the components of a unit vector
 */
export function cubeFraction(x: number, y: number, z: number, offset: number): number {
	let a = Math.abs(x);
	let b = Math.abs(y);
	let c = Math.abs(z);
	const half = (a + b + c) / 2;
	if (offset <= -half) return 0;
	if (offset >= half) return 1;
	// Largest first, so that the least may be left out.
	if (a < b) [a, b] = [b, a];
	if (b < c) [b, c] = [c, b];
	if (a < b) [a, b] = [b, a];
	if (b < NOTHING) return clamped(offset / a + 0.5);
	if (c < NOTHING) return clamped(square(a, b, offset + (a + b) / 2));
	// The smaller side is computed, so that few terms cancel.
	return offset > 0 ? 1 - corner(a, b, c, half - offset) : corner(a, b, c, half + offset);
}

function square(a: number, b: number, alpha: number): number {
	const rest = (over: number): number => (over > 0 ? over * over : 0);
	return (rest(alpha) - rest(alpha - a) - rest(alpha - b) + rest(alpha - a - b)) / (2 * a * b);
}

function corner(a: number, b: number, c: number, alpha: number): number {
	const rest = (over: number): number => (over > 0 ? over * over * over : 0);
	return (
		(rest(alpha) -
			rest(alpha - a) -
			rest(alpha - b) -
			rest(alpha - c) +
			rest(alpha - a - b) +
			rest(alpha - a - c) +
			rest(alpha - b - c)) /
		(6 * a * b * c)
	);
}

function clamped(fraction: number): number {
	return Math.max(0, Math.min(1, fraction));
}
