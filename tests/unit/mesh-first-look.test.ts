import { expect, test } from 'vitest';
import { firstLook } from '../../src/lib/core/mesh/first-look';
import { lostVolumeWords, simplifiedWords } from '../../src/lib/screen/mesh/simplified-words';
import { box, mapped } from '../fixtures/mesh-solids';

test('the first look at a box is its rectangle, where it stands in the file', () => {
	const moved = mapped(box(30, 20, 10), ([x, y, z]) => [x + 5, y - 3, z + 2]);
	const look = firstLook(moved);
	expect(look.box).toEqual({ left: 5, bottom: 2, width: 30, height: 10 });
	expect(look.triangles).toBe(12);
	expect(look.outlines).toHaveLength(1);
	const [xs, ys] = [look.outlines[0]!.map(({ xMm }) => xMm), look.outlines[0]!.map((p) => p.yMm)];
	expect([Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]).toEqual([
		5, 35, 2, 12
	]);
});

test('a copy that lost too much is told with how far it is off, and what would help', () => {
	const words = lostVolumeWords({ movedMm: 1.17, volumeOffFraction: -0.0312 });
	expect(words).toContain('off by 3.1%, more than 0.5%');
	expect(words).toContain('thinner than about 1.2 mm');
	expect(words).toContain('Reduce the mesh to 1,000,000 triangles or fewer');
});

test('a simplified copy is told by its triangles, how far they moved and the volume', () => {
	const words = simplifiedWords({ triangles: 399_812, movedMm: 1.2345, volumeOffFraction: -2e-4 });
	expect(words).toContain('a copy of 399,812 triangles');
	expect(words).toContain('moved by up to 1.2 mm');
	expect(words).toContain('off by 0.02%');
	// It is kept with the pattern, where a line has 300 characters.
	expect(words.length).toBeLessThan(280);
});
