import type { LayerKind, SectionLayer, SectionModel } from './section-model';

/** The paper the section is drawn upon, in pixels of the SVG. */
export interface Sheet {
	widthPx: number;
	maxHeightPx: number;
	/** Thinnest band that still shows what it is. */
	minBandPx: number;
	/** Room left free above the drawing, for item numbers. */
	headPx: number;
}

export interface SectionScale {
	pxPerMm: number;
	/** How many times thicker than true the coats and the shell are drawn. */
	coatFactor: number;
	shellFactor: number;
	/** Drawn thickness of all coats, and of coats and shell. */
	gloveMm: number;
	stackMm: number;
	/** Drawn gap: never narrower than the thickened stack needs. */
	gapMm: number;
	boardMm: number;
	frameMm: number;
	tallMm: number;
}

const FACTORS = [1, 2, 3, 4, 5, 8, 10, 15, 20, 30, 50];

/**
 * The scale at which the whole section fits the sheet, with the least whole factor that lets the
 * thinnest coat be seen, as long as the glove stays slimmer than half the pattern.
 */
export function sectionScale(model: SectionModel, sheet: Sheet): SectionScale {
	const of = (...kinds: LayerKind[]) => model.layers.filter(({ kind }) => kinds.includes(kind));
	const coats = of('detail', 'build');
	const shells = of('shell');
	const boardMm = thickest(of('board'));
	const frameMm = thickest(of('frame'));
	const slimMm = Math.min(model.pattern.widthMm, model.pattern.heightMm) / 2;

	const fit = (coatFactor: number) => {
		const bandMm = thinnest(coats) * coatFactor;
		const shellFactor =
			coats.length > 0 ? (FACTORS.find((f) => thinnest(shells) * f >= bandMm * 1.3) ?? 1) : 1;
		const gloveMm = total(coats) * coatFactor;
		const stackMm = gloveMm + total(shells) * shellFactor;
		const gapMm = Math.max(model.gapMm, stackMm * 1.12);
		const wideMm = model.pattern.widthMm + 2 * (gapMm + frameMm * 1.6);
		const tallMm = boardMm + model.pattern.heightMm + stackMm * 1.06;
		const pxPerMm = Math.min(sheet.widthPx / wideMm, (sheet.maxHeightPx - sheet.headPx) / tallMm);
		const isSeen = coats.length === 0 || bandMm * pxPerMm >= sheet.minBandPx;
		return {
			scale: {
				pxPerMm,
				coatFactor,
				shellFactor,
				gloveMm,
				stackMm,
				gapMm,
				boardMm,
				frameMm,
				tallMm
			},
			isSeen
		};
	};
	const tries = FACTORS.map(fit);
	const seen = tries.find(({ isSeen }) => isSeen);
	const slim = tries.filter(({ scale }) => scale.gloveMm <= slimMm).at(-1) ?? tries[0]!;
	return seen !== undefined && seen.scale.coatFactor <= slim.scale.coatFactor
		? seen.scale
		: slim.scale;
}

function total(layers: SectionLayer[]): number {
	return layers.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
}

function thickest(layers: SectionLayer[]): number {
	return Math.max(0, ...layers.map(({ thicknessMm }) => thicknessMm));
}

function thinnest(layers: SectionLayer[]): number {
	return layers.length === 0 ? Infinity : Math.min(...layers.map(({ thicknessMm }) => thicknessMm));
}
