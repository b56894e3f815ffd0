import { expect, test } from 'vitest';
import { DEMO_PATTERNS } from '../../src/lib/core/mesh/demo/demo-patterns';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import { readMesh } from '../../src/lib/core/mesh/read-mesh';
import { binaryStl } from '../../src/lib/core/mesh/write-stl';

test.each(DEMO_PATTERNS.map(({ id, mesh }) => [id, mesh] as const))(
	'%s comes back from its own file as it was',
	(id, make) => {
		const mesh = make();
		const read = readMesh(binaryStl(mesh), `${id}.stl`);
		if (!read.ok) throw new Error(read.what);
		expect(read.format).toBe('stl');
		expect(read.mesh.triangles.length).toBe(mesh.triangles.length);
		const [a, b] = [measuresOf(mesh), measuresOf(read.mesh)];
		// Single precision has seven digits.
		expect(b.signedVolume / a.signedVolume).toBeCloseTo(1, 5);
		expect(b.area / a.area).toBeCloseTo(1, 5);
	}
);
