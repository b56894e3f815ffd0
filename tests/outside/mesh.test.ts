import { describe } from 'vitest';
import { layerVolumes } from '../../src/lib/core/mesh/coat-volumes';
import { convexHull } from '../../src/lib/core/mesh/convex-hull';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import type { Mesh } from '../../src/lib/core/mesh/mesh';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { unreachedOf } from '../../src/lib/core/mesh/unreached';
import { undercutOf } from '../../src/lib/core/mesh/undercut';
import { bridgingOf } from '../../src/lib/core/mesh/bridging';
import { bunnyMesh } from '../fixtures/mesh-bunny';
import { grooved, slotted } from '../fixtures/mesh-recesses';
import { box, frustum, mapped, sphere } from '../fixtures/mesh-solids';
import { fromKernel, KERNEL, loadKernel, toKernel } from './mesh-kernel';
import { outsideCase } from './outside-case';

const kernel = await loadKernel();
const MENSURATION = 'elementary mensuration; exact geometry';
const STEINER = 'Steiner 1840, parallel bodies; exact geometry';
/** Far above the board a layer goes all around. */
const raised = (mesh: Mesh): Mesh => mapped(mesh, ([x, y, z]) => [x, y, z + 100]);
const layerMm3 = (mesh: Mesh, t: number): number =>
	layerVolumes(mesh, [t]).layers[0]!.volumeMl * 1000;

describe('meshed solids converge to their formulas with the square of the resolution', () => {
	const order = (coarse: number, fine: number, exact: number): number =>
		Math.log2(Math.abs(coarse - exact) / Math.abs(fine - exact));
	const balls = [4, 5].map((levels) => measuresOf(sphere(5, levels)));
	const cones = [64, 128].map((sides) => measuresOf(frustum(1, 0, 2, sides)));
	const [lean, tall] = [Math.PI * (1 + Math.sqrt(5)), (2 * Math.PI) / 3];
	const cases: [string, number][] = [
		['area of a ball', order(balls[0]!.area, balls[1]!.area, 100 * Math.PI)],
		[
			'volume of a ball',
			order(balls[0]!.signedVolume, balls[1]!.signedVolume, (500 * Math.PI) / 3)
		],
		['area of a cone', order(cones[0]!.area, cones[1]!.area, lean)],
		['volume of a cone', order(cones[0]!.signedVolume, cones[1]!.signedVolume, tall)]
	];
	for (const [what, got] of cases) {
		outsideCase({
			what: `order of convergence, ${what}`,
			source: MENSURATION,
			unit: '',
			expected: 2,
			got,
			tolerance: 0.05
		});
	}
});

describe('the public bunny', () => {
	const source = 'npm bunny 1.0.1, measured by Python trimesh 5.1.0';
	const { area, signedVolume } = measuresOf(bunnyMesh());
	const hull = measuresOf(convexHull(bunnyMesh())!);
	outsideCase({
		what: 'area',
		source,
		unit: 'units²',
		expected: 218.68927128689,
		got: area,
		tolerance: 1e-9
	});
	outsideCase({
		what: 'volume',
		source,
		unit: 'units³',
		expected: 194.28837181242,
		got: signedVolume,
		tolerance: 1e-9
	});
	outsideCase({
		what: 'area of its hull',
		source,
		unit: 'units²',
		expected: 247.477208,
		got: hull.area,
		tolerance: 1e-5
	});
	outsideCase({
		what: 'volume of its hull',
		source,
		unit: 'units³',
		expected: 308.151183,
		got: hull.signedVolume,
		tolerance: 1e-5
	});
	const solid = toKernel(kernel, bunnyMesh());
	outsideCase({
		what: 'volume, by the kernel',
		source: KERNEL,
		unit: 'units³',
		expected: solid.volume(),
		got: signedVolume,
		tolerance: { fraction: 1e-6 }
	});
	outsideCase({
		what: 'area, by the kernel',
		source: KERNEL,
		unit: 'units²',
		expected: solid.surfaceArea(),
		got: area,
		tolerance: { fraction: 1e-6 }
	});
});

describe('a layer around convex bodies', () => {
	outsideCase({
		what: 'box 20 × 30 × 40, 5 mm all around',
		source: STEINER,
		unit: 'mm³',
		expected: 5200 * 5 + Math.PI * 90 * 25 + ((4 * Math.PI) / 3) * 125,
		got: () => layerMm3(raised(box(20, 30, 40)), 5),
		tolerance: { fraction: 0.005 }
	});
	outsideCase({
		what: 'box 300 × 200 × 150 on the board, 6 mm: slabs, quarter cylinders, eighths of a ball',
		source: STEINER,
		unit: 'mm³',
		expected: 210_000 * 6 + (Math.PI / 4) * 36 * 1600 + ((2 * Math.PI) / 3) * 216,
		got: () => layerMm3(box(300, 200, 150), 6),
		tolerance: { fraction: 0.005 }
	});
	outsideCase({
		what: 'ball r 10, 4 mm all around',
		source: STEINER,
		unit: 'mm³',
		expected: ((4 * Math.PI) / 3) * (14 ** 3 - 10 ** 3),
		got: () => layerMm3(raised(sphere(10, 5)), 4),
		tolerance: { fraction: 0.005 }
	});
	outsideCase({
		what: 'cylinder r 10, h 20, 3 mm all around',
		source: STEINER,
		unit: 'mm³',
		expected: 600 * Math.PI * 3 + (20 * Math.PI + 10 * Math.PI ** 2) * 9 + ((4 * Math.PI) / 3) * 27,
		got: () => layerMm3(raised(frustum(10, 10, 20, 360)), 3),
		tolerance: { fraction: 0.005 }
	});
});

describe('a layer around bodies with hollows, against the kernel', () => {
	const slot = raised(slotted(5, 8, 20));
	// An inscribed ball of 64 segments reaches 0.1 % less than the true one on average.
	const grown = toKernel(kernel, slot).minkowskiSum(kernel.Manifold.sphere(3, 64));
	outsideCase({
		what: 'block with a slot that 3 mm all around just fill',
		source: `${KERNEL}: Minkowski sum with a ball of 64 segments`,
		unit: 'mm³',
		expected: grown.volume() - measuresOf(slot).signedVolume,
		got: () => layerMm3(slot, 3),
		tolerance: { fraction: 0.006 }
	});
	const bunny = mapped(bunnyMesh(), ([x, y, z]) => [x, y + 1, z]);
	const above = {
		...bunny,
		positions: bunny.positions.map(
			(_, i) => bunny.positions[i - (i % 3) + [0, 2, 1][i % 3]!]! + (i % 3 === 2 ? 10 : 0)
		)
	};
	const turned = {
		...above,
		triangles: above.triangles.map((_, i) => above.triangles[i - (i % 3) + [0, 2, 1][i % 3]!]!)
	};
	outsideCase({
		what: 'bunny, 0.2 all around',
		source: `${KERNEL}: Minkowski sum with a ball of 16 segments, a lower bound by some 1 %`,
		unit: 'units³',
		expected: 240.4159 - 194.28837,
		got: () => layerMm3(turned, 0.2),
		tolerance: { fraction: 0.02 }
	});
});

describe('closed forms of recesses and undercuts', () => {
	const alpha = Math.PI / 5;
	outsideCase({
		what: 'V-groove of 72°, ball of 1.2 mm: depth of air',
		source: 'closing by a ball: r / sin α − r (geometry)',
		unit: 'mm',
		expected: 1.2 / Math.sin(alpha) - 1.2,
		got: () =>
			bridgingOf(grooved(alpha, 5, 8), { reachMm: 1.2 }).places.find(({ kind }) => kind !== 'foot')!
				.depthMm,
		tolerance: { fraction: 0.02 }
	});
	outsideCase({
		what: 'slot 2 mm wide, 6 mm deep, 16 mm long, ball of 1.2 mm: depth of air in its bottom corners',
		source:
			'closing by a ball that rests on both lips: √((w/2)² + (d + √(r² − w²/4))²) − r (geometry)',
		unit: 'mm',
		expected: Math.hypot(1, 6 + Math.sqrt(1.2 ** 2 - 1)) - 1.2,
		got: () =>
			bridgingOf(slotted(2, 6, 16), { reachMm: 1.2 }).places.find(({ kind }) => kind !== 'foot')!
				.depthMm,
		tolerance: { fraction: 0.02 }
	});
	const [hole, ball, tips] = [1, 1.5, 10];
	const drilled = fromKernel(
		toKernel(kernel, box(20, 16, 50)).subtract(
			kernel.Manifold.cylinder(41, hole, hole, 64).translate([10, 8, 10])
		)
	);
	outsideCase({
		what: 'box with a blind hole of 2 mm, 40 mm deep: out of reach of a brush of 3 mm whose tips go 10 mm farther',
		source: 'wall and floor of a cylinder below √((t + r)² − a²) − √(r² − a²) (geometry)',
		unit: 'cm²',
		expected:
			(2 *
				Math.PI *
				hole *
				(40 - Math.sqrt((tips + ball) ** 2 - hole ** 2) + Math.sqrt(ball ** 2 - hole ** 2)) +
				Math.PI * hole ** 2) /
			100,
		got: () => unreachedOf(drilled, { widthMm: 2 * ball, reachMm: tips }).areaCm2,
		tolerance: { fraction: 0.005 }
	});
	outsideCase({
		what: 'cone leaned outward by 15°, 30 mm high: undercut',
		source: 'h · tan(lean) (geometry)',
		unit: 'mm',
		expected: 30 * Math.tan(Math.PI / 12),
		got: () =>
			undercutOf(new SurfaceDistance(frustum(20, 20 + 30 * Math.tan(Math.PI / 12), 30, 180)))
				.depthMm,
		tolerance: 0.25
	});
});
