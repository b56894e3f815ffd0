import type { StepSlug } from '../content/vocabulary';
import { containers as english, type ContainerWords } from '../language/en/containers';
import { containerLabel } from '../materials/container-label';
import type { PictogramCode, SignalWord } from '../materials/ghs-statements';
import type { Sheet } from '../materials/sheet';
import type { Plan } from '../plan/plan';
import { OPEN_AT, usedSheets } from './materials-at';

/** A label in words: what a screen draws without knowing any table. */
export interface LabelFacts {
	signal: SignalWord | null;
	/** "Danger"; empty where the statements ask for no signal word. */
	signalWord: string;
	pictograms: Array<{
		code: PictogramCode;
		name: string;
		means: string;
		statements: string[];
	}>;
	/** What has to be said about it: nothing is stated, a code is in no list, or the word is the graver of two. */
	notes: string[];
}

/** One material of a mold and what its containers say. */
export interface ContainerFacts extends LabelFacts {
	id: string;
	name: string;
	/** "build coats"; several where one material serves more than one purpose. */
	uses: string[];
	steps: StepSlug[];
}

/** Label of a material by the hazard statements of its sheet. */
export function labelFacts(
	{ hazardStatements }: Pick<Sheet, 'hazardStatements'>,
	w: ContainerWords = english
): LabelFacts {
	const { signal, isGravest, pictograms, unknown } = containerLabel(hazardStatements);
	return {
		signal,
		signalWord: signal ? w.signal[signal] : '',
		pictograms: pictograms.map(({ code, statements }) => ({
			code,
			name: w.symbols[code],
			means: w.means[code],
			statements
		})),
		notes: [
			...(hazardStatements.length === 0 ? [w.none] : []),
			...(isGravest ? [w.gravest] : []),
			...(unknown.length > 0 ? [w.unknown(unknown.join(', '))] : [])
		]
	};
}

/** What the containers of a mold say, in the order in which they are opened, each once. */
export function containersOf(plan: Plan, w: ContainerWords = english): ContainerFacts[] {
	const found = new Map<string, ContainerFacts>();
	for (const { use, sheet } of usedSheets(plan)) {
		const known = found.get(sheet.id) ?? {
			id: sheet.id,
			name: sheet.name,
			uses: [],
			steps: [],
			...labelFacts(sheet, w)
		};
		known.uses.push(w.uses[use]);
		known.steps.push(...OPEN_AT[use].filter((slug) => !known.steps.includes(slug)));
		found.set(sheet.id, known);
	}
	return [...found.values()];
}
