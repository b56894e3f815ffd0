import type { SectionBands } from '$lib/core/mesh/coat-section';
import type { Outline } from '$lib/core/mesh/section';
import type { Mark } from './marks';

export interface PictureFrame {
	width: number;
	height: number;
	pxPerMm: number;
	/** Where the middle of the pattern and the board are. */
	middleX: number;
	boardY: number;
}

/** A coat or the shell, from the pattern outward. */
export interface DrawnLayer {
	kind: 'detail' | 'build' | 'shell';
	label: string;
	thicknessMm: number;
}

const WIDTH = 720;
const MOST_HEIGHT = 460;
const MARGIN = 14;
const FOOT = 46;

/** A picture that holds a pattern of this size with layers of this thickness around it, to scale. */
export function pictureFrame(size: {
	spanMm: number;
	heightMm: number;
	aroundMm: number;
}): PictureFrame {
	const spanMm = size.spanMm + 2 * size.aroundMm;
	const upMm = size.heightMm + size.aroundMm;
	const pxPerMm = Math.min((WIDTH - 2 * MARGIN) / spanMm, (MOST_HEIGHT - MARGIN - FOOT) / upMm);
	const boardY = MARGIN + upMm * pxPerMm;
	return { width: WIDTH, height: boardY + FOOT, pxPerMm, middleX: WIDTH / 2, boardY };
}

/** How far each layer's outer face lies from the pattern, mm. */
export function outerDistancesMm(layers: readonly DrawnLayer[]): number[] {
	let outerMm = 0;
	return layers.map(({ thicknessMm }) => (outerMm += thicknessMm));
}

/** Closed outlines as one path; with the even-odd rule holes stay holes. */
function outlinePath(outlines: readonly Outline[], frame: PictureFrame): string {
	return outlines
		.map((outline) => {
			const points = outline.map(
				({ xMm, yMm }) =>
					`${(frame.middleX + xMm * frame.pxPerMm).toFixed(1)} ${(frame.boardY - yMm * frame.pxPerMm).toFixed(1)}`
			);
			return `M${points.join('L')}Z`;
		})
		.join('');
}

export interface Band {
	label: string;
	hatch: 'shell' | 'detail' | 'build-0' | 'build-1' | 'pattern';
	path: string;
}

/** Hatching of each layer: neighbors among the build coats are turned against each other. */
export function hatchesOf(layers: readonly DrawnLayer[]): Band['hatch'][] {
	let builds = 0;
	return layers.map(({ kind }) => {
		if (kind !== 'build') return kind;
		builds += 1;
		return builds % 2 === 1 ? 'build-0' : 'build-1';
	});
}

/** Shell, coats and pattern from the outside in, each to be drawn over the one before. */
export function sectionBandsToDraw(
	section: SectionBands,
	layers: readonly DrawnLayer[],
	frame: PictureFrame
): Band[] {
	const hatches = hatchesOf(layers);
	const around = section.offsets.map(({ outlines }, i): Band => ({
		label: layers[i]?.label ?? `Layer ${i + 1}`,
		hatch: hatches[i] ?? 'build-0',
		path: outlinePath(outlines, frame)
	}));
	const pattern = outlinePath(section.pattern, frame);
	return [...around.reverse(), { label: 'Pattern', hatch: 'pattern', path: pattern }];
}

/** The longest round length that a third of the picture holds, mm. */
export function scaleBarMm({ pxPerMm }: PictureFrame): number {
	const round = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
	return round.findLast((mm) => mm * pxPerMm <= WIDTH / 3) ?? 1;
}

/** An upright cut: across the length at x, or across the width at y. */
export interface Cut {
	across: 'length' | 'width';
	atMm: number;
}

/** The signs that lie within `nearMm` of the cut, where they stand on its picture. */
export function marksOnCut(
	marks: readonly Mark[],
	{ across, atMm }: Cut,
	nearMm: number,
	frame: PictureFrame
): (Mark & { x: number; y: number })[] {
	return marks
		.filter(({ xMm, yMm }) => Math.abs((across === 'length' ? xMm : yMm) - atMm) <= nearMm)
		.map((mark) => ({
			...mark,
			x: frame.middleX + (across === 'length' ? mark.yMm : mark.xMm) * frame.pxPerMm,
			y: frame.boardY - mark.zMm * frame.pxPerMm
		}));
}

interface PartingPlane {
	normal: readonly [number, number, number];
	offsetMm: number;
}

/** Where a parting plane meets the cut, from edge to edge of the picture; null when it runs along with it. */
export function partingOnCut(
	{ normal: [nx, ny, nz], offsetMm }: PartingPlane,
	{ across, atMm }: Cut,
	frame: PictureFrame
): { x1: number; y1: number; x2: number; y2: number } | null {
	const [alongX, fixed] = across === 'length' ? [ny, nx] : [nx, ny];
	const left = offsetMm - fixed * atMm;
	const topMm = frame.boardY / frame.pxPerMm;
	const halfMm = frame.width / 2 / frame.pxPerMm;
	const toPx = (h: number, z: number) => ({
		x: frame.middleX + h * frame.pxPerMm,
		y: frame.boardY - z * frame.pxPerMm
	});
	if (Math.abs(alongX) < 0.05 && Math.abs(nz) < 0.05) return null;
	const isSteep = Math.abs(alongX) >= Math.abs(nz);
	const [from, to] = isSteep
		? [toPx(left / alongX, 0), toPx((left - nz * topMm) / alongX, topMm)]
		: [toPx(-halfMm, (left + alongX * halfMm) / nz), toPx(halfMm, (left - alongX * halfMm) / nz)];
	return { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
}
