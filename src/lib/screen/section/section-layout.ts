import { offsetProfile, type PointMm } from '$lib/core/geometry/profile-offset';
import { simplifyLine } from '$lib/core/geometry/simplify-line';
import type { SectionLayer, SectionModel } from './section-model';
import { onBoard, patternOutline, slab, topAtMm } from './section-outline';
import { sectionScale, type SectionScale, type Sheet } from './section-scale';

/** One part as drawn: its outline, and where the leader of its item number ends. */
export interface DrawnPart extends SectionLayer {
	/** Place in the model's list of layers. */
	index: number;
	path: string;
	anchor: { x: number; y: number };
}

export interface SectionLayout {
	width: number;
	height: number;
	scale: SectionScale;
	/** In the order of the layers. */
	parts: DrawnPart[];
}

/** A tenth of a pixel is not seen, also on paper; arcs and meshes give ten times the points that show. A choice. */
const TOLERANCE_PX = 0.1;

interface Shape {
	layer: SectionLayer;
	index: number;
	outlines: PointMm[][];
	isOpen: boolean;
	/** The line upon which the leader ends. */
	leaderLine: PointMm[];
}

/** The section to scale: every layer as an outline in pixels of a sheet. */
export function layoutSection(model: SectionModel, sheet: Sheet): SectionLayout {
	const scale = sectionScale(model, sheet);
	const toleranceMm = TOLERANCE_PX / scale.pxPerMm;
	// Each coat is laid on every point below it, so those that do not show cost most.
	const outline = simplifyLine(patternOutline(model), toleranceMm / 2);
	const half = Math.max(...outline.map(({ xMm }) => xMm));
	const shapes = drawnShapes(model, scale, outline, half);

	const width = sheet.widthPx;
	const height = scale.tallMm * scale.pxPerMm + sheet.headPx + 1;
	const footPx = height - scale.boardMm * scale.pxPerMm - 1;
	const toPx = ({ xMm, yMm }: PointMm) => ({
		x: round(width / 2 + xMm * scale.pxPerMm),
		y: round(footPx - yMm * scale.pxPerMm)
	});
	const pathOf = (line: PointMm[]) =>
		`M${simplifyLine(line, toleranceMm)
			.map(toPx)
			.map(({ x, y }) => `${x} ${y}`)
			.join('L')}`;

	const stacked = shapes.filter(({ layer }) => !['board', 'frame'].includes(layer.kind));
	const parts = shapes.map(({ layer, index, outlines, isOpen, leaderLine }) => {
		const slot = stacked.findIndex((shape) => shape.index === index);
		const xMm =
			layer.kind === 'frame'
				? -half - scale.gapMm - scale.frameMm / 2
				: layer.kind === 'board'
					? half + scale.gapMm + scale.frameMm * 1.3
					: half * 0.8 * (1 - (2 * slot + 1) / stacked.length);
		return {
			...layer,
			index,
			path: outlines.map((line) => pathOf(line) + (isOpen ? '' : 'Z')).join(''),
			anchor: toPx({ xMm, yMm: topAtMm(leaderLine, xMm) })
		};
	});
	return { width, height: round(height), scale, parts };
}

function drawnShapes(
	model: SectionModel,
	scale: SectionScale,
	outline: PointMm[],
	half: number
): Shape[] {
	const { gapMm, frameMm, boardMm, stackMm, gloveMm } = scale;
	const reachMm = half + gapMm;
	const flangeMm = model.gapMm > 0 ? (model.flangeMm / model.gapMm) * gapMm : gapMm;
	const edgeMm = half + Math.min(gapMm, Math.max(flangeMm, gloveMm * 1.1));
	const lowered = (line: PointMm[], byMm: number) =>
		line.map(({ xMm, yMm }) => ({ xMm, yMm: yMm - byMm }));

	let base = onBoard(outline, edgeMm);
	let inner = base;
	let depthMm = 0;
	let isInShell = false;

	return model.layers.flatMap((layer, index): Shape[] => {
		const shape = (outlines: PointMm[][], leaderLine: PointMm[], isOpen = false) => [
			{ layer, index, outlines, isOpen, leaderLine }
		];
		switch (layer.kind) {
			case 'pattern':
				return shape([outline], lowered(outline, model.pattern.heightMm * 0.25));
			case 'casting':
				return layer.state === 'planned'
					? []
					: shape([outline], lowered(outline, model.pattern.heightMm * 0.45));
			case 'board': {
				const out = reachMm + frameMm * 1.6;
				const top = slab(-out, out, -boardMm, -boardMm / 2);
				return shape([slab(-out, out, -boardMm, 0)], top);
			}
			case 'frame': {
				const fullMm = model.pattern.heightMm + stackMm;
				// A frame must still stand above what is drawn thicker than it is.
				const topMm = Math.min(fullMm, Math.max(model.frameHeightMm ?? fullMm, stackMm * 1.1));
				const left = slab(-reachMm - frameMm, -reachMm, 0, topMm);
				const right = slab(reachMm, reachMm + frameMm, 0, topMm);
				return shape([left, right], lowered(left, topMm * 0.08));
			}
			case 'release':
				return shape([inner], inner, true);
			default: {
				if (layer.kind === 'shell' && !isInShell) {
					isInShell = true;
					const laid = edgeMm < reachMm ? onBoard(inner, reachMm) : inner;
					base = simplifyLine(laid, TOLERANCE_PX / scale.pxPerMm / 2);
					inner = base;
					depthMm = 0;
				}
				const factor = layer.kind === 'shell' ? scale.shellFactor : scale.coatFactor;
				const thickMm = layer.thicknessMm * factor;
				const outer = offsetProfile(base, depthMm + thickMm);
				const middle = offsetProfile(base, depthMm + thickMm / 2);
				const band = [...outer, ...inner.toReversed()].map((point) => within(point, reachMm));
				inner = outer;
				depthMm += thickMm;
				return shape([band], middle);
			}
		}
	});
}

/** The frame stops whatever is brushed against it. */
function within({ xMm, yMm }: PointMm, reachMm: number): PointMm {
	return { xMm: Math.max(-reachMm, Math.min(reachMm, xMm)), yMm };
}

function round(value: number): number {
	return Math.round(value * 10) / 10;
}
