import { titles } from '../language/en/titles';

/** Phases of a job, in the order in which they are worked. */
export const PHASE_IDS = [
	'brief',
	'pattern',
	'release',
	'frame',
	'detail',
	'build',
	'gloveCure',
	'trim',
	'shellRelease',
	'shell',
	'shellCure',
	'open',
	'mark',
	'peel',
	'wash',
	'inspect',
	'pour',
	'handover'
] as const;

/** Steps a job may link to; each has one file in content/steps. `ready-*` and `mold-accepted` are hold points. */
export const STEP_SLUGS = [
	'brief',
	'room',
	'pattern',
	'seal',
	'wax',
	'film',
	'frame',
	'ready-to-coat',
	'weigh-and-mix',
	'detail-coat',
	'brush-back',
	'build-coat',
	'tack-test',
	'abrade',
	'thickness',
	'glove-cure',
	'trim',
	'shell-release',
	'ready-for-shell',
	'shell',
	'shell-cure',
	'ready-to-open',
	'open',
	'mark',
	'peel',
	'wash',
	'inspect',
	'mold-accepted',
	'first-pour',
	'hand-over'
] as const;

/** Troubles a job may raise; each has one file in content/troubles. */
export const TROUBLE_IDS = [
	'off-ratio',
	'pot-life-overrun',
	'recoat-too-early',
	'recoat-missed',
	'bubbles',
	'voids',
	'no-cure',
	'shell-locked',
	'glove-torn',
	'waste-smoke',
	'film-beaded',
	'frame-leak',
	'sag',
	'spill',
	'skin-contact',
	'breathing',
	'burn',
	'cut',
	'cup-smoke',
	'something-else'
] as const;

/** Briefings that must exist, one file each in content/briefings. */
export const BRIEFING_SLUGS = [
	'isocyanates',
	'amines-and-catalysts',
	'styrene-and-peroxides',
	'solvents-and-vapor',
	'dust-and-fiber',
	'cuts-and-lifting',
	'exotherm-and-waste',
	'first-aid-and-spill'
] as const;

export const HAZARD_IDS = [
	'isocyanate',
	'amine',
	'styrene',
	'peroxide',
	'solvent',
	'silica-dust',
	'glass-fiber',
	'sanding-dust',
	'knife',
	'heavy-lift',
	'hot-cup',
	'slip',
	'plaster-heat',
	'sensitizer'
] as const;

export const PPE_IDS = [
	'gloves',
	'eye-protection',
	'apron',
	'respirator',
	'dust-mask',
	'face-shield',
	'safety-shoes',
	'sleeves'
] as const;

export const VENTILATION_IDS = ['none', 'general', 'local exhaust'] as const;

export const SEVERITY_IDS = ['stop', 'mend', 'note'] as const;

export type PhaseId = (typeof PHASE_IDS)[number];
export type StepSlug = (typeof STEP_SLUGS)[number];
export type TroubleId = (typeof TROUBLE_IDS)[number];
export type BriefingSlug = (typeof BRIEFING_SLUGS)[number];
export type HazardId = (typeof HAZARD_IDS)[number];
export type PpeId = (typeof PPE_IDS)[number];
export type VentilationId = (typeof VENTILATION_IDS)[number];
export type SeverityId = (typeof SEVERITY_IDS)[number];

/** A name to show and the ISO 7010 sign that goes with it. */
export interface Sign {
	label: string;
	/** ISO 7010 reference, for example "W017". W001 where the standard has no closer sign. */
	sign: SignCode;
}

/**
 * Signs in use, with their meaning in our own words. Source: ISO 7010; W001, M002 and P001 checked
 * against a published extract, the others from memory.
 */
export const SIGNS = titles.signs;

export type SignCode = keyof typeof SIGNS;

export const HAZARDS: Record<HazardId, Sign> = {
	isocyanate: { label: titles.hazards.isocyanate, sign: 'W016' },
	amine: { label: titles.hazards.amine, sign: 'W023' },
	styrene: { label: titles.hazards.styrene, sign: 'W021' },
	peroxide: { label: titles.hazards.peroxide, sign: 'W028' },
	solvent: { label: titles.hazards.solvent, sign: 'W021' },
	'silica-dust': { label: titles.hazards['silica-dust'], sign: 'W001' },
	'glass-fiber': { label: titles.hazards['glass-fiber'], sign: 'W001' },
	'sanding-dust': { label: titles.hazards['sanding-dust'], sign: 'W001' },
	knife: { label: titles.hazards.knife, sign: 'W022' },
	'heavy-lift': { label: titles.hazards['heavy-lift'], sign: 'W001' },
	'hot-cup': { label: titles.hazards['hot-cup'], sign: 'W017' },
	slip: { label: titles.hazards.slip, sign: 'W011' },
	'plaster-heat': { label: titles.hazards['plaster-heat'], sign: 'W017' },
	sensitizer: { label: titles.hazards.sensitizer, sign: 'W001' }
};

export const PPE: Record<PpeId, Sign> = {
	gloves: { label: titles.ppe.gloves, sign: 'M009' },
	'eye-protection': { label: titles.ppe['eye-protection'], sign: 'M004' },
	apron: { label: titles.ppe.apron, sign: 'M026' },
	respirator: { label: titles.ppe.respirator, sign: 'M017' },
	'dust-mask': { label: titles.ppe['dust-mask'], sign: 'M016' },
	'face-shield': { label: titles.ppe['face-shield'], sign: 'M013' },
	'safety-shoes': { label: titles.ppe['safety-shoes'], sign: 'M008' },
	sleeves: { label: titles.ppe.sleeves, sign: 'M010' }
};
