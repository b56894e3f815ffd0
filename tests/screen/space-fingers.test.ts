import { expect, test } from 'vitest';
import { SpaceFingers } from '../../src/lib/screen/mesh/space-fingers';

test('one finger turns by as much as it moves, and nothing once it is up', () => {
	const fingers = new SpaceFingers();
	fingers.down(1, 100, 100);
	expect(fingers.move(1, 130, 90)).toEqual({ right: 30, up: 10, zoom: 1 });
	fingers.up(1);
	expect(fingers.move(1, 200, 200)).toBeNull();
});

test('two fingers come closer by spreading, and turn by what their middle moves', () => {
	const fingers = new SpaceFingers();
	fingers.down(1, 100, 100);
	fingers.down(2, 200, 100);
	expect(fingers.move(2, 300, 100)).toEqual({ right: 50, up: 0, zoom: 0.5 });
	// Both by 20 px upward: their middle moves so far, their distance hardly.
	const moves = [fingers.move(1, 100, 80)!, fingers.move(2, 300, 80)!];
	expect(moves.reduce((sum, { up }) => sum + up, 0)).toBe(20);
	expect(moves.reduce((product, { zoom }) => product * zoom, 1)).toBeCloseTo(1, 9);
	fingers.down(3, 0, 0);
	expect(fingers.move(3, 50, 50)).toBeNull();
	// With one of them up, the other one turns alone again.
	fingers.up(1);
	expect(fingers.move(2, 310, 80)).toEqual({ right: 10, up: 0, zoom: 1 });
});
