import { asBuilt, type AsBuilt } from '../process/as-built';
import { batchAtWork, cupInPreparation } from '../process/context';
import { contextOf, type JobState } from '../process/job';
import { largestCupMl } from '../process/cup-mass';
import { cupToWeigh } from '../process/next-cup';
import type { BenchStep } from '../process/step';
import { cupAdvice, type CupAtScale } from '../process/cup-advice';
import type { Words } from '../language/words';

/** The cup to weigh at this step, with what is known of its material; null when none is. */
export function cupAtScale(state: JobState, step: BenchStep): CupAtScale | null {
	const c = contextOf(state);
	const batch = batchAtWork(c);
	const next = cupToWeigh(c);
	if (!batch || !next || !step.acts.some(({ type }) => type === 'cup.weighed')) return null;

	const { plan } = c;
	const sheet = Object.values(plan.inputs.materials).find(({ id }) => id === batch.materialId);
	const { number, of, resplit, cup } = next;
	return {
		number,
		of,
		resplit,
		materialName: batch.materialName,
		cupVolumeMl: cup.cupVolumeMl,
		largestCupMl: largestCupMl(c),
		parts: cup.parts.map(({ part, massG }) => ({
			part,
			targetG: massG,
			densityGPerMl: sheet?.parts.find((p) => p.part === part)?.densityGPerMl ?? null
		})),
		fractions: batch.fractions,
		toleranceFraction: batch.toleranceFraction,
		readabilityG: plan.inputs.shop.scaleReadabilityG,
		weighedG: cupInPreparation(c)?.massesG ?? null,
		lots: lastLots(state, batch.materialName)
	};
}

/** What to do about the cup that was weighed as it is, in one line; null when it can be mixed, or none is on the scale. */
export function saidAtScale(cup: CupAtScale | null, { steps: { atScale } }: Words): string | null {
	if (!cup?.weighedG) return null;
	const { state, slip, alone, doubles, reachable, add } = cupAdvice(cup, cup.weighedG);
	if (state === 'partial') {
		const missing = add.filter(({ part }) => !((cup.weighedG?.[part] ?? 0) > 0));
		return atScale.missing(missing.map(({ part }) => part).join(', '));
	}
	if (state !== 'off ratio') return null;
	return !slip && !alone && (doubles || !reachable) ? atScale.tooFar : atScale.off;
}

/** Folding the log again takes longest of all at the bench: once an entry, not once a look. */
const sections = new WeakMap<JobState, AsBuilt['sections']>();

function sectionsOf(state: JobState): AsBuilt['sections'] {
	const known = sections.get(state) ?? asBuilt(state, []).sections;
	sections.set(state, known);
	return known;
}

/** Lot numbers as last entered for this material on this mold. */
function lastLots(state: JobState, materialName: string): Record<string, string> {
	const ofMaterial = sectionsOf(state).filter((s) => s.materialName === materialName);
	const cup = ofMaterial.at(-1)?.cups.at(-1) ?? ofMaterial.at(-2)?.cups.at(-1);
	return Object.fromEntries((cup?.parts ?? []).map(({ part, lot }) => [part, lot]));
}
