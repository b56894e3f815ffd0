import type { UnitSystem } from '$lib/core/quantity/display';
import { layoutSection, type SectionLayout } from './section-layout';
import { sectionText, type SectionModel } from './section-model';

/** A section ready to be drawn: laid out once where the model is known, so that a light page need not. */
export interface DrawnSection {
	layout: SectionLayout;
	/** The drawing in words. */
	text: string;
	/** What is not to scale in it; empty when all is. */
	note: string;
}

/** A drawing of about 480 px, or an emblem of 96 by 72 px without words. */
export function drawSection(
	model: SectionModel,
	{
		system,
		isCompact = false,
		isPlan = false
	}: { system: UnitSystem; isCompact?: boolean; isPlan?: boolean }
): DrawnSection {
	const layout = layoutSection(
		model,
		isCompact
			? { widthPx: 96, maxHeightPx: 72, minBandPx: 3.4, headPx: 2 }
			: { widthPx: 480, maxHeightPx: 400, minBandPx: 4.5, headPx: 64 }
	);
	const { coatFactor, shellFactor } = layout.scale;
	const note = [
		coatFactor > 1 ? `coats drawn ×${coatFactor}` : '',
		shellFactor > 1 ? `shell ×${shellFactor}` : '',
		layout.parts.some(({ kind }) => kind === 'release') ? 'release drawn as a line' : ''
	];
	return {
		layout,
		text: sectionText(model, system, isPlan),
		note: note.filter(Boolean).join(', ')
	};
}
