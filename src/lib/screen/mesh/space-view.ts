import {
	AmbientLight,
	BufferAttribute,
	BufferGeometry,
	CylinderGeometry,
	DirectionalLight,
	Group,
	InstancedMesh,
	Matrix4,
	Mesh,
	MeshBasicMaterial,
	MeshLambertMaterial,
	PerspectiveCamera,
	Quaternion,
	Scene,
	Vector3,
	WebGLRenderer
} from 'three';
import { depthColor } from './depth-color';
import { MarkSprites } from './mark-sprites';
import type { Mark } from './marks';

export interface SpaceView {
	/** Degrees about the upright axis and up from the board. */
	turn(rightDeg: number, upDeg: number): void;
	zoom(factor: number): void;
	/** Turns the side with this point to the front and comes closer. */
	look(spot: { xMm: number; yMm: number; zMm: number }): void;
	setModel(model: SpaceModel): void;
	setMarks(marks: readonly Mark[], lines: readonly number[][]): void;
	close(): void;
}

export interface SpaceModel {
	positions: Float32Array;
	triangles: Uint32Array;
	/** At each corner; dark is the greatest. */
	values: Float32Array | null;
}

const LEAST_UP_DEG = -30;
const MOST_UP_DEG = 89;
/** Thickness of a line as part of the pattern's size. */
const LINE_SHARE = 0.006;

/**
 * Draws a pattern in space on a canvas, anew only when something moves.
 *
 * @throws Error where the device has no WebGL
 */
export function openSpaceView(canvas: HTMLCanvasElement): SpaceView {
	// Asked for here, since the renderer writes to the console where there is none.
	const context = canvas.getContext('webgl2', { antialias: true, alpha: true });
	if (!context) throw new Error('this device has no WebGL');
	const renderer = new WebGLRenderer({ canvas, context });
	const material = new MeshLambertMaterial({ vertexColors: true, flatShading: true });
	const body = new Mesh(new BufferGeometry(), material);
	const lines = new Group();
	const sprites = new MarkSprites();
	const sun = new DirectionalLight(0xffffff, 2.2);
	const scene = new Scene();
	scene.add(body, lines, sprites.group, new AmbientLight(0xffffff, 1.1), sun);
	const camera = new PerspectiveCamera(35, 1, 0.1, 1);
	camera.up.set(0, 0, 1);
	const center = new Vector3();
	const target = new Vector3();
	const place = { rightDeg: -35, upDeg: 35, distance: 0, radius: 0 };

	function draw(): void {
		const { clientWidth: width, clientHeight: height } = canvas;
		if (width === 0 || height === 0 || place.radius === 0) return;
		renderer.setPixelRatio(Math.min(2, devicePixelRatio));
		renderer.setSize(width, height, false);
		const [right, up] = [place.rightDeg, place.upDeg].map((deg) => (deg * Math.PI) / 180);
		const flat = place.distance * Math.cos(up!);
		const away = new Vector3(flat * Math.sin(right!), -flat * Math.cos(right!), 0);
		camera.position.copy(target).add(away.setZ(place.distance * Math.sin(up!)));
		camera.aspect = width / height;
		camera.near = place.distance / 100;
		camera.far = place.distance + 10 * place.radius;
		camera.lookAt(target);
		camera.updateProjectionMatrix();
		sun.position.copy(camera.position).add(target);
		sun.position.z = camera.position.z + 2 * place.radius;
		sprites.face(camera.position, place.distance);
		renderer.render(scene, camera);
	}

	const watch = new ResizeObserver(draw);
	watch.observe(canvas);
	return {
		turn(rightDeg, upDeg) {
			place.rightDeg += rightDeg;
			place.upDeg = Math.max(LEAST_UP_DEG, Math.min(MOST_UP_DEG, place.upDeg + upDeg));
			draw();
		},
		zoom(factor) {
			const { radius, distance } = place;
			place.distance = Math.max(0.4 * radius, Math.min(20 * radius, distance * factor));
			draw();
		},
		look({ xMm, yMm, zMm }) {
			const spot = new Vector3(xMm, yMm, zMm);
			const [dx, dy] = [xMm - center.x, yMm - center.y];
			// A point in the middle is seen from above, any other from its own side.
			const isMiddle = Math.hypot(dx, dy) < 0.15 * place.radius;
			if (!isMiddle) place.rightDeg = (Math.atan2(dx, -dy) * 180) / Math.PI;
			place.upDeg = isMiddle ? 65 : 35;
			target.copy(center).lerp(spot, 0.7);
			place.distance = 1.9 * place.radius;
			draw();
		},
		setModel(model) {
			body.geometry.dispose();
			body.geometry = geometryOf(model);
			const sphere = body.geometry.boundingSphere;
			const isFirst = place.radius === 0;
			place.radius = sphere?.radius ?? 1;
			if (sphere) center.copy(sphere.center);
			if (isFirst) {
				target.copy(center);
				place.distance = 3.6 * place.radius;
			}
			draw();
		},
		setMarks(marks, drawn) {
			sprites.set(marks);
			for (const old of lines.children) if (old instanceof InstancedMesh) old.dispose();
			lines.clear();
			for (const line of drawn) lines.add(tubeOf(line, LINE_SHARE * place.radius));
			draw();
		},
		close() {
			watch.disconnect();
			sprites.dispose();
			body.geometry.dispose();
			material.dispose();
			renderer.dispose();
		}
	};
}

/** A closed line as short rods, since a line of one pixel is not seen. */
function tubeOf(line: readonly number[], radius: number): InstancedMesh {
	const count = line.length / 3;
	const point = (i: number): Vector3 => new Vector3().fromArray(line, 3 * (i % count));
	const rods = new InstancedMesh(
		new CylinderGeometry(1, 1, 1, 6),
		new MeshBasicMaterial({ color: 0x111111 }),
		count
	);
	for (let i = 0; i < count; i += 1) {
		const [from, to] = [point(i), point(i + 1)];
		const along = to.clone().sub(from);
		const length = along.length();
		const turn = new Quaternion().setFromUnitVectors(
			new Vector3(0, 1, 0),
			length > 0 ? along.divideScalar(length) : new Vector3(0, 1, 0)
		);
		const middle = from.add(to).multiplyScalar(0.5);
		rods.setMatrixAt(
			i,
			new Matrix4().compose(middle, turn, new Vector3(radius, length + radius, radius))
		);
	}
	return rods;
}

function geometryOf({ positions, triangles, values }: SpaceModel): BufferGeometry {
	const geometry = new BufferGeometry();
	const count = positions.length / 3;
	const colors = new Float32Array(3 * count);
	const most = values ? values.reduce((greatest, value) => Math.max(greatest, value), 0) : 0;
	for (let v = 0; v < count; v += 1) colors.set(depthColor(values?.[v] ?? 0, most), 3 * v);
	geometry.setAttribute('position', new BufferAttribute(positions, 3));
	geometry.setAttribute('color', new BufferAttribute(colors, 3));
	geometry.setIndex(new BufferAttribute(triangles, 1));
	geometry.computeBoundingSphere();
	return geometry;
}
