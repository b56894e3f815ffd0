import { PHASE_IDS, type PhaseId } from '../content/vocabulary';
import { ENGLISH } from '../language/words';
import type { ProcessContext } from './context';
import { titleInWords } from './steps/batch-words';

type LayerState = 'done' | 'current' | 'planned';

export interface JobSection {
	/** From the pattern outward; a release has no thickness worth drawing. */
	layers: Array<{
		kind: 'pattern' | 'release' | 'detail' | 'build' | 'shell';
		label: string;
		thicknessMm: number;
		state: LayerState;
	}>;
	pattern: {
		widthMm: number;
		heightMm: number;
		profile?: Array<{ xMm: number; yMm: number }>;
	};
	gapMm: number;
	frameHeightMm: number;
	flangeMm: number;
}

/** The mold's section as far as it is made: what lies, what is at work, what is still to come. */
export function sectionOfJob(c: ProcessContext, w = ENGLISH): JobSection {
	const said = w.steps.section;
	const { plan } = c;
	const at = PHASE_IDS.indexOf(c.phase);
	const against = (phase: PhaseId): LayerState => {
		const index = PHASE_IDS.indexOf(phase);
		return at > index ? 'done' : at === index ? 'current' : 'planned';
	};
	const coatState = (index: number): LayerState => {
		if (at > PHASE_IDS.indexOf('build')) return 'done';
		if (at < PHASE_IDS.indexOf('detail')) return 'planned';
		if (index < c.coatIndex) return 'done';
		return index === Math.min(c.coatIndex, c.coats.length - 1) ? 'current' : 'planned';
	};
	const { lengthMm, heightMm, profile } = plan.surface;
	const { waxCoats, filmPasses } = plan.release;

	return {
		layers: [
			{
				kind: 'pattern',
				label: said.pattern,
				thicknessMm: 0,
				state: atMost(against('pattern'), at)
			},
			...(waxCoats + filmPasses > 0
				? [
						{
							kind: 'release' as const,
							label: said.release(waxCoats > 0, filmPasses > 0),
							thicknessMm: 0,
							state: against('release')
						}
					]
				: []),
			...c.coats.map((coat, index) => ({
				kind: coat.kind,
				label: titleInWords(coat.title, w),
				thicknessMm: coat.thicknessMm,
				state: coatState(index)
			})),
			{
				kind: 'shell' as const,
				label: said.shell,
				thicknessMm: plan.shell.thicknessMm,
				state: against('shell')
			}
		],
		pattern: {
			widthMm: lengthMm,
			heightMm,
			...(profile.length > 2 ? { profile } : {})
		},
		gapMm: plan.frame.gapMm,
		frameHeightMm: plan.frame.heightMm,
		flangeMm: plan.frame.flangeMm
	};
}

/** The briefing comes before anything is made, so the pattern is what waits. */
function atMost(state: LayerState, phaseIndex: number): LayerState {
	return phaseIndex === 0 ? 'planned' : state;
}
