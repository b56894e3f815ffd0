import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';
import { bridgingOf } from '../../src/lib/core/mesh/bridging';
import { layerVolumes } from '../../src/lib/core/mesh/coat-volumes';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import { readMesh } from '../../src/lib/core/mesh/read-mesh';
import { binaryStlMeasures } from '../../src/lib/core/mesh/stl-measures';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { stlBinary } from '../fixtures/mesh-files';
import { measureMs, medianOf } from './measure';
import { LAYERS_MM, wavyBlock } from './wavy-block';

const RUNS = 5;
/** What a loop over another loader's geometry does for the same answer. */
function loaderThenLoop(buffer: ArrayBuffer): number {
	const at = new STLLoader().parse(buffer).getAttribute('position').array;
	let [area, volume, x, y, z] = [0, 0, 0, 0, 0];
	let [low, high] = [Infinity, -Infinity];
	for (let i = 0; i < at.length; i += 9) {
		const [ax, ay, az, bx, by, bz, cx, cy, cz] = [
			at[i]!,
			at[i + 1]!,
			at[i + 2]!,
			at[i + 3]!,
			at[i + 4]!,
			at[i + 5]!,
			at[i + 6]!,
			at[i + 7]!,
			at[i + 8]!
		];
		const nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
		const ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
		const nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
		const six = ax * nx + ay * ny + az * nz;
		area += Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
		volume += six / 6;
		x += six * (ax + bx + cx);
		y += six * (ay + by + cy);
		z += six * (az + bz + cz);
		low = Math.min(low, ax, bx, cx, ay, by, cy, az, bz, cz);
		high = Math.max(high, ax, bx, cx, ay, by, cy, az, bz, cz);
	}
	return area + volume + x + y + z + low + high;
}

/** Each float of the file read once and summed: no answer can come sooner. */
function sumOfFloats(buffer: ArrayBuffer): number {
	const view = new DataView(buffer);
	let sum = 0;
	for (let at = 84; at < buffer.byteLength; at += 50) {
		for (let k = 12; k < 48; k += 4) sum += view.getFloat32(at + k, true);
	}
	return sum;
}

/** Times of the mesh work beside those of others for the same answer, in one run and in turn. */
export function benchMesh(): string[] {
	const million = stlBinary(wavyBlock(500));
	const runs = {
		measures: () => binaryStlMeasures(million)?.area,
		loader: () => loaderThenLoop(million.buffer),
		floor: () => sumOfFloats(million.buffer),
		reading: () => readMesh(million, 'a.stl').ok
	};
	for (const run of Object.values(runs)) run();
	const times = Array.from({ length: RUNS }, () => ({
		measures: measureMs(runs.measures),
		loader: measureMs(runs.loader),
		floor: measureMs(runs.floor),
		reading: measureMs(runs.reading)
	}));
	const median = (key: keyof typeof runs): number => medianOf(times.map((row) => row[key]));
	const count = (million.length - 84) / 50;
	const pattern = wavyBlock(224);
	let surface = new SurfaceDistance(pattern);
	const treeMs = measureMs(() => (surface = new SurfaceDistance(pattern)));
	let within = false;
	const layersMs = measureMs(() => (within = layerVolumes(pattern, LAYERS_MM, surface).isWithin));
	let places = 0;
	const bridgingMs = measureMs(
		() => (places = bridgingOf(pattern, { reachMm: 1 }, surface).places.length)
	);
	const ml = measuresOf(pattern).signedVolume / 1000;
	return [
		`Binary STL of ${count} triangles, ${Math.round(million.length / 1e6)} MB, median of ${RUNS} runs in turn:`,
		`  measures straight from the bytes   ${median('measures').toFixed(0)} ms`,
		`  STLLoader and a loop               ${median('loader').toFixed(0)} ms, ${(median('loader') / median('measures')).toFixed(1)} times as long`,
		`  each float read and summed         ${median('floor').toFixed(0)} ms; ours takes ${(median('measures') / median('floor')).toFixed(2)} times that`,
		`  read and joined to a mesh          ${median('reading').toFixed(0)} ms`,
		`Pattern of ${pattern.triangles.length / 3} triangles, ${ml.toFixed(0)} mL:`,
		`  tree and normals                   ${treeMs.toFixed(0)} ms`,
		`  six coats and a shell              ${layersMs.toFixed(0)} ms, ${within ? 'within' : 'NOT within'} 0.5 %`,
		`  bridging map at 1 mm               ${bridgingMs.toFixed(0)} ms, ${places} places`
	];
}
