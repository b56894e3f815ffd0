import { describe } from 'vitest';
import { exposedOf } from '../../src/lib/core/mesh/exposed';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import type { Mesh, Vec3 } from '../../src/lib/core/mesh/mesh';
import { joinedParts, repairedMesh } from '../../src/lib/core/mesh/repair';
import { bunnyMesh } from '../fixtures/mesh-bunny';
import { box, frustum, mapped, sphere, together } from '../fixtures/mesh-solids';
import { KERNEL, loadKernel, toKernel } from './mesh-kernel';
import { outsideCase } from './outside-case';

const kernel = await loadKernel();
const moved = (mesh: Mesh, [dx, dy, dz]: Vec3): Mesh =>
	mapped(mesh, ([x, y, z]) => [x + dx, y + dy, z + dz]);
const leaned = (mesh: Mesh): Mesh =>
	mapped(mesh, ([x, y, z]) => [0.8 * x - 0.6 * z, y, 0.6 * x + 0.8 * z]);
const joined = (parts: readonly Mesh[]): Mesh => joinedParts(repairedMesh(together(...parts))).mesh;

describe('parts that touch or overlap, joined into one body', () => {
	const plate = box(100, 80, 30);
	const cases: [string, Mesh[]][] = [
		['round stem that stands on a plate', [plate, moved(frustum(15, 12, 30, 64), [50, 40, 30])]],
		['round stem sunk 1 mm into a plate', [plate, moved(frustum(15, 12, 30, 64), [50, 40, 29])]],
		['leaned post through a plate', [plate, moved(leaned(box(20, 20, 80)), [50, 30, -5])]],
		['two balls', [sphere(20, 5), moved(sphere(15, 5), [17.1, 3.3, 1.7])]],
		['two bunnies', [bunnyMesh(), moved(bunnyMesh(), [2.1, 0.3, 0.2])]]
	];
	for (const [what, parts] of cases) {
		const union = kernel.Manifold.union(parts.map((part) => toKernel(kernel, part)));
		outsideCase({
			what: `${what}: area`,
			source: `${KERNEL}: union`,
			unit: 'mm²',
			expected: union.surfaceArea(),
			got: () => measuresOf(joined(parts)).area,
			tolerance: { fraction: 1e-5 }
		});
		outsideCase({
			what: `${what}: volume`,
			source: `${KERNEL}: union`,
			unit: 'mm³',
			expected: union.volume(),
			got: () => measuresOf(joined(parts)).signedVolume,
			tolerance: { fraction: 1e-5 }
		});
	}
	outsideCase({
		what: 'box 20 × 20 × 30 on a box 100 × 80 × 30: exposed area',
		source: 'elementary mensuration: walls of both and the top of the lower one',
		unit: 'cm²',
		expected: (8000 + 2 * 180 * 30 + 4 * 20 * 30) / 100,
		got: () => exposedOf(joined([plate, moved(box(20, 20, 30), [40, 30, 30])])).exposedAreaCm2,
		tolerance: 1e-6
	});
});
