import { describe, expect, test } from 'vitest';
import { layoutSection } from '../../../src/lib/screen/section/section-layout';
import { sectionText, type SectionModel } from '../../../src/lib/screen/section/section-model';
import { sectionScale } from '../../../src/lib/screen/section/section-scale';

const SHEET = { widthPx: 480, maxHeightPx: 400, minBandPx: 4.5, headPx: 64 };

const model = (coatMm: number): SectionModel => ({
	layers: [
		{ kind: 'board', label: 'Board', thicknessMm: 18, state: 'done' },
		{ kind: 'pattern', label: 'Pattern', thicknessMm: 0, state: 'done' },
		{ kind: 'release', label: 'Wax', thicknessMm: 0, state: 'done' },
		{ kind: 'frame', label: 'Frame', thicknessMm: 18, state: 'done' },
		{ kind: 'build', label: 'Build coat 1', thicknessMm: coatMm, state: 'current' },
		{ kind: 'build', label: 'Build coat 2', thicknessMm: coatMm, state: 'planned' },
		{ kind: 'shell', label: 'Shell', thicknessMm: 12, state: 'planned' }
	],
	pattern: { widthMm: 200, heightMm: 100 },
	gapMm: 40,
	flangeMm: 30
});

/** Every number in a path, as points. */
function pointsOf(path: string): [number, number][] {
	return [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

describe('the section drawn to scale', () => {
	test('thick coats are drawn true, thin ones by the least whole factor that shows them', () => {
		expect(sectionScale(model(6), SHEET).coatFactor).toBe(1);
		const thin = sectionScale(model(1), SHEET);
		expect(thin.coatFactor).toBeGreaterThan(1);
		expect(thin.coatFactor * thin.pxPerMm).toBeGreaterThanOrEqual(SHEET.minBandPx);
	});

	test('a paper-thin coat never swells the glove beyond half the pattern', () => {
		const { gloveMm } = sectionScale(model(0.01), SHEET);
		expect(gloveMm).toBeLessThanOrEqual(50);
	});

	test('every layer stays on the sheet, above the board and inside the frame', () => {
		const { parts, width, height, scale } = layoutSection(model(1.5), SHEET);
		expect(parts.map(({ index }) => index)).toEqual([0, 1, 2, 3, 4, 5, 6]);
		const reachPx = (100 + scale.gapMm) * scale.pxPerMm;
		const footPx = height - scale.boardMm * scale.pxPerMm - 1;
		for (const part of parts) {
			for (const [x, y] of pointsOf(part.path)) {
				expect(x).toBeGreaterThanOrEqual(0);
				expect(x).toBeLessThanOrEqual(width);
				expect(y).toBeGreaterThanOrEqual(SHEET.headPx - 1);
				expect(y).toBeLessThanOrEqual(height);
				if (!['build', 'shell'].includes(part.kind)) continue;
				expect(Math.abs(x - width / 2)).toBeLessThanOrEqual(reachPx + 0.1);
				expect(y).toBeLessThanOrEqual(footPx + 0.1);
			}
		}
	});

	test('the pattern keeps its proportions', () => {
		const { parts } = layoutSection(model(1.5), SHEET);
		const points = pointsOf(parts.find(({ kind }) => kind === 'pattern')!.path);
		const spread = (axis: 0 | 1) =>
			Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));
		expect(spread(0) / spread(1)).toBeCloseTo(2, 1);
	});

	test('a profile drawn from right to left gives the same picture', () => {
		const profile = [
			{ xMm: 0, yMm: 0 },
			{ xMm: 20, yMm: 90 },
			{ xMm: 150, yMm: 100 },
			{ xMm: 200, yMm: 0 }
		];
		const draw = (line: typeof profile) => {
			const base = model(2);
			return layoutSection({ ...base, pattern: { ...base.pattern, profile: line } }, SHEET);
		};
		expect(draw(profile.toReversed())).toEqual(draw(profile));
	});

	test('is told in words as well', () => {
		expect(sectionText(model(2), 'SI')).toBe(
			'Section of the mold over a pattern of 200 mm by 100 mm. Done: Board, Pattern, Wax, Frame. Now: Build coat 1. Planned: Build coat 2, Shell.'
		);
	});
});
