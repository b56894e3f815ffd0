import { CanvasTexture, Group, Sprite, SpriteMaterial, Vector3 } from 'three';
import type { Mark } from './marks';

const SIDE_PX = 64;
/** Height of a disc as part of the distance it is seen from. */
const SIZE_SHARE = 0.05;
/** How far a disc is moved toward the eye, as part of its height: no surface that leans by 45° or less cuts it. */
const LIFT_SHARE = 0.7;

/** Signs in discs that turn toward whoever looks, hidden where the pattern is in front of them. */
export class MarkSprites {
	readonly group = new Group();
	#spots: Vector3[] = [];

	set(marks: readonly Mark[]): void {
		this.dispose();
		this.#spots = marks.map(({ xMm, yMm, zMm }) => new Vector3(xMm, yMm, zMm));
		for (const { sign, what } of marks) {
			// The center lies inside: seen through the pattern or not at all.
			const material = new SpriteMaterial({ map: discOf(sign), depthTest: what !== 'center' });
			this.group.add(new Sprite(material));
		}
	}

	face(eye: Vector3, distance: number): void {
		this.group.children.forEach((sprite, i) => {
			const spot = this.#spots[i]!;
			const toEye = eye.clone().sub(spot).normalize();
			sprite.position.copy(spot).addScaledVector(toEye, LIFT_SHARE * SIZE_SHARE * distance);
			sprite.scale.setScalar(SIZE_SHARE * distance);
		});
	}

	dispose(): void {
		for (const sprite of this.group.children) {
			if (!(sprite instanceof Sprite)) continue;
			sprite.material.map?.dispose();
			sprite.material.dispose();
		}
		this.group.clear();
	}
}

/** White on black with a white rim: it reads on every ground, in both lights. */
function discOf(sign: string): CanvasTexture {
	const canvas = document.createElement('canvas');
	canvas.width = canvas.height = SIDE_PX;
	const pen = canvas.getContext('2d');
	if (pen) {
		const middle = SIDE_PX / 2;
		pen.fillStyle = '#ffffff';
		pen.arc(middle, middle, middle - 1, 0, 2 * Math.PI);
		pen.fill();
		pen.beginPath();
		pen.fillStyle = '#111111';
		pen.arc(middle, middle, middle - 5, 0, 2 * Math.PI);
		pen.fill();
		pen.fillStyle = '#ffffff';
		pen.font = `bold ${sign.length > 1 ? 30 : 38}px sans-serif`;
		pen.textAlign = 'center';
		pen.textBaseline = 'middle';
		pen.fillText(sign, middle, middle + 2);
	}
	return new CanvasTexture(canvas);
}
