import { contextOf, type JobState } from '../process/job';
import { cupToWeigh } from '../process/next-cup';
import type { BenchStep } from '../process/step';
import { ENGLISH, type Words } from '../language/words';
import type { Figure } from '../quantity/figure';

/** A number of the step in view that opens to how it was found. */
interface StepFigure {
	/** Whose target mass it is, when it is one of the cup at the scale. */
	part: string | null;
	label: string;
	figure: Figure;
}

/** What the numbers of this step come from, as far as the plan traced them. */
export function stepFigures(state: JobState, step: BenchStep, w = ENGLISH): StepFigure[] {
	const { figures } = contextOf(state).plan;
	return [...massesOf(state, step), ...pathsOf(step, laidPath(state, step))].flatMap(
		({ part, path }) => {
			const figure = figures[path];
			if (!figure) return [];
			const label = shortLabel(figure, path, w);
			return [
				{ part, label, figure: w.lang === 'en' ? figure : { ...figure, label: part ?? label } }
			];
		}
	);
}

/** "Build coat 1: thickness" as "Thickness": the step in view says which coat. */
function shortLabel({ label }: Figure, path: string, w: Words): string {
	const own = w.steps.figures[path.split('.').at(-1) as keyof typeof w.steps.figures];
	if (own !== undefined) return own;
	const text = label.split(': ').at(-1) ?? label;
	return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The batch in the plan that is coated or laid at this step. */
function batchPath({
	coatIndex,
	roundIndex
}: Pick<BenchStep, 'coatIndex' | 'roundIndex'>): string | null {
	if (coatIndex !== null) return `coats.${coatIndex}`;
	return roundIndex === null ? null : `shell.rounds.${roundIndex}`;
}

/** The batch that was laid last: the one whose surface is tested or abraded. */
function laidPath(state: JobState, { coatIndex, roundIndex }: BenchStep): string | null {
	const back = contextOf(state).laidG === 0 ? 1 : 0;
	return batchPath({
		coatIndex: coatIndex === null ? null : Math.max(0, coatIndex - back),
		roundIndex: roundIndex === null ? null : Math.max(0, roundIndex - back)
	});
}

/** The planned masses of the cup; a cup that was split anew is no number of the plan. */
function massesOf(state: JobState, step: BenchStep): Array<{ part: string; path: string }> {
	const c = contextOf(state);
	if (step.slug === 'first-pour') {
		return step.amounts.map(({ label }, i) => ({ part: label, path: `pour.parts.${i}.massG` }));
	}
	const batch = batchPath(step);
	const next = cupToWeigh(c);
	if (!batch || !next || next.resplit || step.amounts.length === 0) return [];
	return next.cup.parts.flatMap(({ part, massG }, i) => {
		// Equal cups share the trace of the first.
		const path = [next.number - 1, 0]
			.map((cup) => `${batch}.cups.${cup}.parts.${i}.massG`)
			.find((key) => c.plan.figures[key]?.value === massG);
		return path ? [{ part, path }] : [];
	});
}

/** The other numbers a person is told here, by their places in the plan. */
function pathsOf(step: BenchStep, laid: string | null): Array<{ part: null; path: string }> {
	const batch = batchPath(step);
	const of = (...paths: string[]) => paths.map((path) => ({ part: null, path }));
	const ofBatch = (...keys: string[]) => (batch ? of(...keys.map((key) => `${batch}.${key}`)) : []);
	switch (step.slug) {
		case 'frame':
			return of('frame.gapMm', 'frame.heightMm', 'frame.flangeMm');
		case 'seal':
			return of('release.sealerG', 'release.sealerDryS');
		case 'wax':
			return of('release.waxG', 'release.waxHazeS');
		case 'film':
			return of('release.filmG', 'release.filmDryS');
		case 'brush-back':
			return ofBatch('brushBackS', 'tackTestS');
		case 'tack-test':
		case 'abrade':
			return laid ? of(`${laid}.tackTestS`, `${laid}.windowClosesS`) : [];
		case 'thickness':
			return of('glove.leastMm', 'glove.thicknessMm');
		case 'glove-cure':
			return of('gloveCure.testS');
		case 'shell-release':
			return of('shellRelease.waxG');
		case 'shell-cure':
			return of('shellCure.testS');
		case 'first-pour':
			return of('pour.massG', 'pour.headMm', 'pour.pressurePa');
		default:
			return [
				...ofBatch('thicknessMm', 'massG', 'workingS', 'cups.0.cupVolumeMl'),
				...(step.roundIndex === null ? [] : [...ofBatch('layers'), ...of('shell.thicknessMm')])
			];
	}
}
