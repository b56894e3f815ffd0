import { section as english } from '$lib/core/language/en/section';
import { section as spanish } from '$lib/core/language/es/section';
import { withLocalDigits } from '$lib/core/language/local-digits';
import { langOf, type Locale } from '$lib/core/language/locale';
import type { UnitSystem } from '$lib/core/quantity/display';
import { layoutSection, type SectionLayout } from './section-layout';
import { sectionText, type SectionModel } from './section-model';

/** A section ready to be drawn: laid out once where the model is known, so that a light page need not. */
export interface DrawnSection {
	layout: SectionLayout;
	/** The drawing in words. */
	text: string;
	/** What is to scale in it and what is not. */
	caption: string;
}

/** A drawing of about 480 px, or an emblem of 96 by 72 px without words. */
export function drawSection(
	model: SectionModel,
	{
		system,
		isCompact = false,
		isPlan = false,
		locale = 'en-US'
	}: { system: UnitSystem; isCompact?: boolean; isPlan?: boolean; locale?: Locale }
): DrawnSection {
	const layout = layoutSection(
		model,
		isCompact
			? { widthPx: 96, maxHeightPx: 72, minBandPx: 3.4, headPx: 2 }
			: { widthPx: 480, maxHeightPx: 400, minBandPx: 4.5, headPx: 64 }
	);
	const words = { en: english, es: spanish }[langOf(locale)];
	const { coatFactor, shellFactor } = layout.scale;
	const note = [
		coatFactor > 1 ? words.coats(coatFactor) : '',
		shellFactor > 1 ? words.shell(shellFactor) : '',
		layout.parts.some(({ kind }) => kind === 'release') ? words.release : ''
	];
	const notes = note.filter(Boolean).join(', ');
	return {
		layout,
		text: withLocalDigits(sectionText(model, system, isPlan, words), locale),
		caption: withLocalDigits(notes ? `${words.toScale}; ${notes}` : words.toScale, locale)
	};
}
