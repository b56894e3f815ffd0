import { familiesOf, onlyBodyOf } from '$lib/core/materials/kind-families';
import type { MaterialKind } from '$lib/core/materials/sheet';
import { emptySheet, type SheetDraft } from './sheet-draft';

/** Fields of the form, by their first word, that a sheet of some kinds has and others have not. */
export type KindField =
	| 'ratioToleranceFraction'
	| 'mixedViscosityPaS'
	| 'yieldStressPa'
	| 'mixS'
	| 'potLife'
	| 'tackFree'
	| 'recoatCloses'
	| 'demold'
	| 'dry'
	| 'shoreA'
	| 'shoreD'
	| 'meltsAtC'
	| 'poursAtC'
	| 'heatLimitC'
	| 'linearShrinkagePct'
	| 'elongationPct'
	| 'tearNPerMm'
	| 'modulusMPa'
	| 'arealG'
	| 'spreadGPerM2'
	| 'volatiles'
	| 'heatJPerG'
	| 'specificHeatJPerGK'
	| 'needsRelease'
	| 'inhibitedBy';

const MIXING: readonly KindField[] = [
	'ratioToleranceFraction',
	'mixedViscosityPaS',
	'yieldStressPa',
	'mixS',
	'potLife',
	'demold',
	'linearShrinkagePct',
	'volatiles',
	'heatJPerG',
	'specificHeatJPerGK',
	'needsRelease',
	'inhibitedBy'
];
const COATING: readonly KindField[] = ['dry', 'spreadGPerM2', 'volatiles'];

const FIELDS: Readonly<Record<MaterialKind, readonly KindField[]>> = {
	glove: [
		...MIXING,
		'tackFree',
		'recoatCloses',
		'shoreA',
		'shoreD',
		'elongationPct',
		'tearNPerMm',
		'heatLimitC'
	],
	shell: [...MIXING, 'tackFree', 'recoatCloses', 'shoreD', 'modulusMPa'],
	casting: [...MIXING, 'shoreA', 'shoreD', 'modulusMPa', 'meltsAtC', 'poursAtC'],
	wax: COATING,
	film: COATING,
	sealer: COATING,
	reinforcement: ['arealG']
};

const isKind = (kind: string): kind is MaterialKind => kind in FIELDS;

/** Whether materials of this kind are weighed and mixed in a cup. */
export function isMixed(kind: string): boolean {
	return !isKind(kind) || FIELDS[kind].includes('potLife');
}

/** What a wax, film or sealer is taken to weigh where its tin does not say, g/mL; no plan uses it. */
export const DENSITY_UNSAID = 1;

/** Whether it is brushed or wiped on by its coverage, so that nobody needs its density. */
export const isCoating = (kind: string): boolean => isKind(kind) && FIELDS[kind] === COATING;

/** Whether a field is shown: the kind has it, or something stands in it that must not be lost. */
export function isAsked(draft: SheetDraft, field: KindField): boolean {
	return !isKind(draft.kind) || FIELDS[draft.kind].includes(field) || hasText(draft[field]);
}

function hasText(node: unknown): boolean {
	if (typeof node === 'string') return node.trim() !== '';
	return typeof node === 'object' && node !== null && Object.values(node).some(hasText);
}

/**
 * The draft for another use: a family that use does not know, and a body that was the other use's, are left for
 * the person to choose, since whole plans rest on them.
 */
export function usedAs(draft: SheetDraft, kind: string): SheetDraft {
	if (!isKind(kind) || kind === draft.kind) return fitToKind({ ...draft, kind });
	const families: readonly string[] = familiesOf(kind);
	const [first = '', second] = families;
	const only = second === undefined ? first : '';
	const family = families.includes(draft.family) ? draft.family : only;
	return fitToKind({ ...draft, kind, family, body: onlyBodyOf(kind) ?? '' });
}

/**
 * The draft with as many parts as its kind begins with: what is not mixed has one, unless more is
 * entered of them than their names.
 */
export function fitToKind(draft: SheetDraft): SheetDraft {
	const { kind, parts, ratioByWeight, ratioByVolume } = draft;
	const isBlank = (from: number) =>
		!hasText(ratioByWeight) &&
		!hasText(ratioByVolume) &&
		parts.slice(from).every((part) => !hasText([part.densityGPerMl, part.viscosityPaS]));
	if (!isMixed(kind) && parts.length > 1 && isBlank(1)) {
		return { ...draft, parts: parts.slice(0, 1), ratioByWeight: [''], ratioByVolume: [''] };
	}
	if (isMixed(kind) && parts.length === 1 && parts[0]?.part === 'A' && isBlank(0)) {
		const { parts: two, ratioByWeight: byWeight, ratioByVolume: byVolume } = emptySheet();
		return { ...draft, parts: two, ratioByWeight: byWeight, ratioByVolume: byVolume };
	}
	return draft;
}
