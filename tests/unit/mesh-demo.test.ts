import { describe, expect, test } from 'vitest';
import { bridgingOf } from '../../src/lib/core/mesh/bridging';
import { carvedBracket } from '../../src/lib/core/mesh/demo/carved-bracket';
import { DEMO_PATTERNS } from '../../src/lib/core/mesh/demo/demo-patterns';
import { exposedOf } from '../../src/lib/core/mesh/exposed';
import { healthOf } from '../../src/lib/core/mesh/health';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import type { Vec3 } from '../../src/lib/core/mesh/mesh';
import { placedMesh } from '../../src/lib/core/mesh/place';
import { restsOf } from '../../src/lib/core/mesh/rests';

test.each(DEMO_PATTERNS.map(({ name, mesh }) => [name, mesh()] as const))(
	'%s is closed and has no fault, not even a sliver',
	(_, mesh) => expect(healthOf(mesh).faults).toEqual([])
);

describe('the carved bracket', () => {
	const mesh = carvedBracket();
	const reachMm = 1.2;
	const laid = (down: Vec3) => placedMesh(mesh, { unitMm: 1, down, turnDeg: 0, scale: 1 });

	test('lies on its underside without a gap: at a sharp foot a ball leaves r · (√2 − 1)', () => {
		expect(measuresOf(mesh).bounds.min[2]).toBe(0);
		const { places } = bridgingOf(laid([0, 0, -1]), { reachMm, maxTriangles: 100_000 });
		const feet = places.filter(({ at }) => at[2] < reachMm);
		expect(feet.length).toBeGreaterThan(0);
		for (const { kind, depthMm } of feet) {
			expect(kind).toBe('foot');
			expect(depthMm).toBeLessThan(reachMm * (Math.SQRT2 - 1) + 0.1);
		}
	});

	test('touches the board over the whole face that is proposed to lie down', () => {
		const [largest] = restsOf(mesh);
		expect(largest?.down[2]).toBeGreaterThan(1 - 1e-9);
		const { footprintCm2 } = exposedOf(laid(largest!.down));
		expect(footprintCm2).toBeGreaterThan((0.9 * largest!.area) / 100);
	});
});
