import type { Pattern } from '../geometry/pattern';

/** Below this width a loaded brush bridges a recess instead of filling it; common practice, no source. */
const NARROW_RECESS_MM = 3;
/** From this depth in widths on, air can't get out past a thick material; common practice, no source. */
const DEEP_RECESS_WIDTHS = 2;
/** Wider than this, a brush reaches the bottom of a recess however deep; common practice, no source. */
const WIDE_RECESS_MM = 10;
/** Strokes finer than this are lost under a thick first coat; common practice, no source. */
export const FINE_LINE_MM = 0.5;

const DETAIL_RULE = `detail coats when a recess is narrower than ${NARROW_RECESS_MM} mm, or deeper than ${DEEP_RECESS_WIDTHS} times its width and narrower than ${WIDE_RECESS_MM} mm, or a line is finer than ${FINE_LINE_MM} mm (common practice, no source)`;

/** Whether a pattern's detail calls for thin free-flowing coats first, and the sentence that says why. */
export function detailNeed(detail: Pattern['detail']): { needed: boolean; why: string } {
	const { narrowestRecessMm: width, deepestRecessMm: depth, finestLineMm: line } = detail;
	const reasons: string[] = [];
	if (width !== undefined && width < NARROW_RECESS_MM) {
		reasons.push(`the narrowest recess is ${width} mm wide, below ${NARROW_RECESS_MM} mm`);
	}
	if (
		width !== undefined &&
		depth !== undefined &&
		depth > DEEP_RECESS_WIDTHS * width &&
		width < WIDE_RECESS_MM
	) {
		const widths = Number((depth / width).toPrecision(2));
		reasons.push(`a recess is ${widths} times as deep as wide, above ${DEEP_RECESS_WIDTHS}`);
	}
	if (line !== undefined && line < FINE_LINE_MM) {
		reasons.push(`the finest line is ${line} mm, below ${FINE_LINE_MM} mm`);
	}
	if (reasons.length > 0) {
		return {
			needed: true,
			why: `Detail coats: ${reasons.join('; ')}. A thick material would trap air there. Rule: ${DETAIL_RULE}.`
		};
	}
	const known = [width, depth, line].some((value) => value !== undefined);
	return {
		needed: false,
		why: known
			? `No detail coats: no recess and no line is fine enough to trap air under a brushed coat. Rule: ${DETAIL_RULE}.`
			: `No detail coats: no recess and no fine line is given. Rule: ${DETAIL_RULE}.`
	};
}
