import type { MassPart } from '../laws/centroid';
import { LIFT_CAUTION } from '../laws/lifting-advice';
import { boardThicknessMm } from './board-thickness';
import type { FramePlan } from './frame-plan';
import { liftOf } from './lift-of';
import { liftingLimitOf } from './lifting-limit';
import type { Plan } from './plan';
import type { Draft } from './trace';

type LiftingSection = NonNullable<Plan['lifting']>;

/** Weights, centers of mass and ways to lift: the mold as built, turned over, and with a part in it. */
export function liftingSection(
	draft: Draft,
	frame: FramePlan,
	weights: Plan['weights'],
	thicknessMm: number
): LiftingSection {
	const { heightMm, exposedAreaCm2, footprintCm2 } = draft.surface;
	const { insideLengthMm, insideWidthMm } = frame.frame;
	const depthMm = Math.min(insideLengthMm, insideWidthMm) + 2 * boardThicknessMm(draft);
	const limit = liftingLimitOf(draft, depthMm);
	const stackMm = heightMm + thicknessMm;
	// Walls at half height, tops at full height, so it errs high: the side on which molds fall over.
	const topShare = Math.min(1, footprintCm2 / exposedAreaCm2);
	const coatMm = heightMm * (topShare + (1 - topShare) / 2);
	const middle = { xMm: insideLengthMm / 2, yMm: depthMm / 2 };
	const at = (massG: number, zMm: number): MassPart => ({ massG, ...middle, zMm });
	const parts = [
		at(weights.gloveG, Math.min(coatMm, stackMm)),
		at(weights.shellG, Math.min(coatMm + thicknessMm / 2, stackMm)),
		at(weights.frameG, Math.min(frame.frame.heightMm / 2, stackMm))
	];
	const emptyG = weights.gloveG + weights.shellG + weights.frameG;
	const casting = at(Math.max(0, weights.filledG - emptyG), heightMm / 2);
	const lift = (index: number, what: string, all: readonly MassPart[], isTurned: boolean) =>
		liftOf(draft, { index, what, parts: all, isTurned, depthMm, stackMm, limit });
	return {
		recommendedG: limit.rwlG,
		forbidden: limit.forbidden,
		horizontalMm: limit.horizontalMm,
		lifts: [
			lift(0, 'The empty mold as it was built', parts, false),
			lift(1, 'The empty mold, turned over', parts, true),
			lift(2, 'The mold with a set part in it', [...parts, casting], true)
		],
		caution: LIFT_CAUTION
	};
}
