import type { PhaseId, TroubleId } from '../content/vocabulary';
import { titles } from '../language/en/titles';

/** What a phase is called in English. */
export const PHASE_TITLES: Readonly<Record<PhaseId, string>> = titles.phases;

/** What a trouble is called in English. */
export const TROUBLE_TITLES: Readonly<Record<TroubleId, string>> = titles.troubles;
