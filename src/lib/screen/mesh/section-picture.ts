import type { SectionBands } from '$lib/core/mesh/coat-section';
import type { Outline } from '$lib/core/mesh/section';

export interface PictureFrame {
	width: number;
	height: number;
	pxPerMm: number;
	/** Where the middle of the pattern and the board are. */
	middleX: number;
	boardY: number;
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
	hatch: 'shell' | 'build-0' | 'build-1' | 'pattern';
	path: string;
}

/** Shell, coats and pattern from the outside in, each to be drawn over the one before. */
export function sectionBandsToDraw(
	section: SectionBands,
	coats: number,
	frame: PictureFrame
): Band[] {
	const around = section.offsets.map(({ outlines }, i): Band => {
		const path = outlinePath(outlines, frame);
		if (i >= coats) return { label: 'Shell', hatch: 'shell', path };
		return { label: `Coat ${i + 1}`, hatch: i % 2 === 0 ? 'build-0' : 'build-1', path };
	});
	const pattern = outlinePath(section.pattern, frame);
	return [...around.reverse(), { label: 'Pattern', hatch: 'pattern', path: pattern }];
}

/** The longest round length that a third of the picture holds, mm. */
export function scaleBarMm({ pxPerMm }: PictureFrame): number {
	const round = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
	return round.findLast((mm) => mm * pxPerMm <= WIDTH / 3) ?? 1;
}
