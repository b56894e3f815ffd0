import Module from 'manifold-3d';
import { bridgingOf } from '../../src/lib/core/mesh/bridging';
import { layerVolumes } from '../../src/lib/core/mesh/coat-volumes';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import type { Mesh } from '../../src/lib/core/mesh/mesh';
import { toKernel } from '../outside/mesh-kernel';
import { measureMs } from './measure';
import { LAYERS_MM, wavyBlock } from './wavy-block';

/** What a process of its own is started for, so that its memory can be measured and its time limited. */
const [, , what, cells = '', segments = ''] = process.argv;
const pattern = wavyBlock(Number(cells));
if (what === 'layers') ourLayers();
else if (what === 'bridging') tell({ ms: measureMs(() => bridgingOf(pattern, { reachMm: 1 })) });
else await kernelSum(pattern, Number(segments));

function ourLayers(): void {
	const from = performance.now();
	const { layers, isWithin } = layerVolumes(pattern, LAYERS_MM);
	const ms = performance.now() - from;
	tell({ ms, isWithin, volumeMl: layers.reduce((sum, { volumeMl }) => sum + volumeMl, 0) });
}

/** The outermost face alone, by the kernel's sum with a ball: the other six would come on top. */
async function kernelSum(mesh: Mesh, ballSegments: number): Promise<void> {
	const kernel = await Module();
	kernel.setup();
	const ball = kernel.Manifold.sphere(
		LAYERS_MM.reduce((sum, mm) => sum + mm, 0),
		ballSegments
	);
	const solid = toKernel(kernel, mesh);
	let grown = solid;
	const ms = measureMs(() => {
		grown = solid.minkowskiSum(ball);
		grown.volume();
	});
	// Ours ends at the board; what hangs below it is cut off for the comparison, outside the time.
	const overBoardMm3 = grown.trimByPlane([0, 0, 1], 0).volume();
	tell({ ms, volumeMl: (overBoardMm3 - measuresOf(mesh).signedVolume) / 1000 });
}

/** One line of JSON, with the processor time and the most memory of the whole process. */
function tell(found: { ms: number; isWithin?: boolean; volumeMl?: number }): void {
	const { user, system } = process.cpuUsage();
	const mostMb = process.resourceUsage().maxRSS / 1024;
	const triangles = pattern.triangles.length / 3;
	console.log(JSON.stringify({ ...found, cpuMs: (user + system) / 1000, mostMb, triangles }));
}
