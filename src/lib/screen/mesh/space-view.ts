import {
	AmbientLight,
	BufferAttribute,
	BufferGeometry,
	DirectionalLight,
	Mesh,
	MeshLambertMaterial,
	PerspectiveCamera,
	Scene,
	WebGLRenderer
} from 'three';
import { depthColor } from './depth-color';

export interface SpaceView {
	/** Degrees about the upright axis and up from the board. */
	turn(rightDeg: number, upDeg: number): void;
	zoom(factor: number): void;
	close(): void;
}

interface Model {
	positions: Float32Array;
	triangles: Uint32Array;
	depthsMm: Float32Array | null;
}

const LEAST_UP_DEG = -30;
const MOST_UP_DEG = 89;

/**
 * Draws a pattern in space on a canvas, anew only when something moves.
 *
 * @throws Error where the device has no WebGL
 */
export function openSpaceView(canvas: HTMLCanvasElement, model: Model): SpaceView {
	const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
	const geometry = geometryOf(model);
	const material = new MeshLambertMaterial({ vertexColors: true, flatShading: true });
	const scene = new Scene();
	scene.add(new Mesh(geometry, material), new AmbientLight(0xffffff, 1.1));
	const sun = new DirectionalLight(0xffffff, 2.2);
	scene.add(sun);
	const camera = new PerspectiveCamera(35, 1, 0.1, 1);
	camera.up.set(0, 0, 1);
	geometry.computeBoundingSphere();
	const sphere = geometry.boundingSphere;
	const radius = sphere?.radius ?? 1;
	const place = { rightDeg: -35, upDeg: 35, distance: 3.6 * radius };

	function draw(): void {
		const { clientWidth: width, clientHeight: height } = canvas;
		if (width === 0 || height === 0 || !sphere) return;
		renderer.setPixelRatio(Math.min(2, devicePixelRatio));
		renderer.setSize(width, height, false);
		const [right, up] = [place.rightDeg, place.upDeg].map((deg) => (deg * Math.PI) / 180);
		const flat = place.distance * Math.cos(up!);
		camera.position.set(
			sphere.center.x + flat * Math.sin(right!),
			sphere.center.y - flat * Math.cos(right!),
			sphere.center.z + place.distance * Math.sin(up!)
		);
		camera.aspect = width / height;
		camera.near = place.distance / 100;
		camera.far = place.distance + 10 * radius;
		camera.lookAt(sphere.center);
		camera.updateProjectionMatrix();
		sun.position
			.copy(camera.position)
			.add(sphere.center)
			.setZ(camera.position.z + 2 * radius);
		renderer.render(scene, camera);
	}

	const watch = new ResizeObserver(draw);
	watch.observe(canvas);
	draw();
	return {
		turn(rightDeg, upDeg) {
			place.rightDeg += rightDeg;
			place.upDeg = Math.max(LEAST_UP_DEG, Math.min(MOST_UP_DEG, place.upDeg + upDeg));
			draw();
		},
		zoom(factor) {
			place.distance = Math.max(1.2 * radius, Math.min(20 * radius, place.distance * factor));
			draw();
		},
		close() {
			watch.disconnect();
			geometry.dispose();
			material.dispose();
			renderer.dispose();
		}
	};
}

function geometryOf({ positions, triangles, depthsMm }: Model): BufferGeometry {
	const geometry = new BufferGeometry();
	const count = positions.length / 3;
	const colors = new Float32Array(3 * count);
	const deepest = depthsMm ? depthsMm.reduce((most, depth) => Math.max(most, depth), 0) : 0;
	for (let v = 0; v < count; v += 1) colors.set(depthColor(depthsMm?.[v] ?? 0, deepest), 3 * v);
	geometry.setAttribute('position', new BufferAttribute(positions, 3));
	geometry.setAttribute('color', new BufferAttribute(colors, 3));
	geometry.setIndex(new BufferAttribute(triangles, 1));
	return geometry;
}
