import { bodyProblems } from '../geometry/solids';
import { isShutFirst } from '../materials/contradictions';
import { weightRatio } from '../materials/mix-ratio';
import type { Sheet } from '../materials/sheet';
import { exclusionProblem } from '../materials/usual-hazards';
import { inShopUnits } from './in-shop-units';
import { planInputsSchema, type PlanInputs } from './inputs';
import { issueWords } from './issue-words';
import { PlanError, type PlanProblem } from './plan-error';

/**
 * The inputs as the plan reads them, defaults filled in.
 *
 * @throws PlanError naming every field that is out of range and every pair of fields that no plan
 *   can be computed from
 */
export function checkedInputs(inputs: unknown): PlanInputs {
	const parsed = planInputsSchema.safeParse(inputs);
	if (!parsed.success) {
		// One objection a field: a text in place of a list is also too long, which helps nobody.
		const first = new Map<string, string>();
		for (const issue of parsed.error.issues) {
			const path = issue.path.join('.');
			if (!first.has(path)) first.set(path, issueWords(issue, inputs));
		}
		throw new PlanError([...first].map(([path, message]) => ({ path, message })));
	}
	const problems = [...shapeProblems(parsed.data), ...materialProblems(parsed.data)];
	if (problems.length > 0) throw new PlanError(inShopUnits(problems, parsed.data.shop.units));
	return parsed.data;
}

function shapeProblems({ pattern }: PlanInputs): PlanProblem[] {
	return bodyProblems(pattern.body)
		.filter(({ severity }) => severity === 'refuse')
		.map(({ path, message }) => ({ path: `pattern.body.${path}`, message }));
}

/** What each place in the choice of materials takes. */
const KINDS: readonly [keyof PlanInputs['materials'], Sheet['kind']][] = [
	['detail', 'glove'],
	['build', 'glove'],
	['shell', 'shell'],
	['reinforcement', 'reinforcement'],
	['wax', 'wax'],
	['film', 'film'],
	['sealer', 'sealer'],
	['casting', 'casting']
];

function materialProblems({ materials }: PlanInputs): PlanProblem[] {
	return KINDS.flatMap(([place, kind]) => {
		const sheet = materials[place];
		if (!sheet) return [];
		const path = `materials.${place}`;
		const found: PlanProblem[] = [];
		if (sheet.kind !== kind) {
			found.push({
				path: `${path}.kind`,
				message: `${sheet.name} is a ${sheet.kind} material; accepted here: ${kind}.`
			});
		}
		if (!weightRatio(sheet)) {
			found.push({
				path: `${path}.ratioByWeight`,
				message: `${sheet.name} has ${sheet.parts.length} parts; give one number a part by weight, or by volume with every part's density.`
			});
		}
		if ((kind === 'glove' || kind === 'shell') && !sheet.potLife) {
			found.push({
				path: `${path}.potLife`,
				message: `${sheet.name} has no pot life, so no cup can be sized; enter the time, the mass and the temperature of its data sheet.`
			});
		}
		if ((kind === 'glove' || kind === 'shell') && isShutFirst(sheet)) {
			found.push({
				path: `${path}.recoatCloses.timeS`,
				message: `The recoat window of ${sheet.name} shuts before it opens: no coat could follow another. Accepted: a later end, or an earlier almost tack-free; mend its data sheet.`
			});
		}
		const contradicted = exclusionProblem(sheet);
		if (contradicted) {
			found.push({
				path: `${path}.sdsExcludesUsual`,
				message: `${sheet.name}: ${contradicted}`
			});
		}
		return [...found, ...timeProblems(path, sheet)];
	});
}

/** A second point must be far enough from the first, and shorter when warmer. */
function timeProblems(path: string, sheet: Sheet): PlanProblem[] {
	return (['tackFree', 'recoatCloses', 'demold', 'dry'] as const).flatMap((field) => {
		const time = sheet[field];
		if (!time?.second) return [];
		const warmerByK = time.second.atC - time.atC;
		const isShorter =
			warmerByK > 0 ? time.second.timeS < time.timeS : time.second.timeS > time.timeS;
		return Math.abs(warmerByK) >= 3 && isShorter
			? []
			: [
					{
						path: `${path}.${field}.second`,
						message: `${sheet.name}: the two times must lie at least 3 °C (5.4 °F) apart, the warmer one shorter.`
					}
				];
	});
}
