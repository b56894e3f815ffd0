import { measuresOf } from './measures';
import type { Mesh } from './mesh';
import { sectionOf, uprightPlane, type Outline } from './section';
import { simplified } from './simplify-line';

/** What can be shown of a file as soon as its triangles are read. */
export interface FirstLook {
	/** Section through the middle across y, in the file's own axes and unit, z upward. */
	outlines: Outline[];
	/** The file's box in the drawing: left and bottom, then width and height. */
	box: { left: number; bottom: number; width: number; height: number };
	triangles: number;
}

/** As many corners as a small picture can show. A choice. */
const MOST_POINTS = 600;

/** A first picture of a mesh that nobody has looked through or laid down yet. */
export function firstLook(mesh: Mesh): FirstLook {
	const { min, max } = measuresOf(mesh).bounds;
	const plane = uprightPlane({ xMm: 0, yMm: (min[1] + max[1]) / 2, turnDeg: 0 });
	return {
		outlines: sectionOf(mesh, plane).map((outline) => simplified(outline, MOST_POINTS)),
		box: { left: min[0], bottom: min[2], width: max[0] - min[0], height: max[2] - min[2] },
		triangles: mesh.triangles.length / 3
	};
}
