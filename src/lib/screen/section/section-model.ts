import { section as english, type SectionWords } from '$lib/core/language/en/section';
import type { PointMm } from '$lib/core/geometry/profile-offset';
import { displayQuantity, type UnitSystem } from '$lib/core/quantity/display';

export type LayerKind =
	'pattern' | 'board' | 'frame' | 'release' | 'detail' | 'build' | 'shell' | 'casting';

export interface SectionLayer {
	kind: LayerKind;
	label: string;
	/** Zero or left unknown for a release: it is drawn as a line. Not used for the pattern. */
	thicknessMm: number;
	state: 'done' | 'current' | 'planned';
}

export interface SectionModel {
	/** From the pattern outward: coats and shell are stacked in this order. */
	layers: SectionLayer[];
	pattern: {
		widthMm: number;
		heightMm: number;
		/** Outline from the left foot over the top to the right foot; the board is at yMm = 0. */
		profile?: PointMm[];
	};
	/** Clear distance between the pattern's foot and the frame. */
	gapMm: number;
	/** Height of the frame's boards; left out, they rise to the top of the mold. */
	frameHeightMm?: number;
	/** How far the glove lies out upon the board; never beyond the frame. */
	flangeMm: number;
}

/** The drawing in words, for those who do not see it; of a plan, nothing is made yet. */
export function sectionText(
	{ layers, pattern }: SectionModel,
	system: UnitSystem,
	isPlan = false,
	words: SectionWords = english
): string {
	const list = (state: SectionLayer['state']) =>
		layers
			.filter((layer) => layer.state === state)
			.map((layer) => layer.label)
			.join(', ') || words.nothing;
	const length = (mm: number) => displayQuantity(Math.round(mm), 'mm', system);
	const size = words.size(length(pattern.widthMm), length(pattern.heightMm));
	if (isPlan) {
		const all = layers.map((layer) => layer.label).join(', ');
		return words.asPlanned(size, all);
	}
	const [done, current, planned] = [list('done'), list('current'), list('planned')];
	return words.soFar(size, { done, current, planned });
}
