import type { ProcessChoice } from '../laws/process-choice';
import type { Sheet } from '../materials/sheet';
import { additionsSection } from './additions-section';
import { airSection } from './air-section';
import { airUses } from './air-uses';
import { placedBatches } from './batch-paths';
import { choiceSection } from './choice-section';
import type { EstimateFollows, Follows } from './block-ranges';
import type { CoatsPlan } from './coats-plan';
import { cureSection } from './cure-section';
import { forcesSection } from './forces-section';
import type { FramePlan } from './frame-plan';
import type { GloveBuild } from './glove-build';
import { handlingSection } from './handling-section';
import { liftingSection } from './lifting-section';
import { mixedUses } from './mixed-uses';
import type { Plan } from './plan';
import { plasterSection } from './plaster-section';
import { roomSection } from './room-section';
import type { ShellPlan } from './shell-plan';
import type { ShellThicknessPlan } from './shell-thickness-plan';
import { sizesSection } from './sizes-section';
import type { Draft } from './trace';
import { wallsSection } from './walls-section';
import { wasteSection } from './waste-section';
import { weighingSection } from './weighing-section';

export interface SectionFacts {
	used: readonly Sheet[];
	build: GloveBuild;
	frame: FramePlan;
	coats: CoatsPlan;
	shell: ShellPlan;
	shellThickness: ShellThicknessPlan;
	release: Plan['release'];
	shellRelease: Plan['shellRelease'];
	sealerDryS: number;
	castingSoonestS: number;
	pour: Plan['pour'];
	weights: Plan['weights'];
	life: NonNullable<Plan['life']>;
	process: ProcessChoice;
	estimateAt: EstimateFollows;
	evenAt: Follows;
	night: NonNullable<Plan['cure']>['night'];
	calendar: Plan['calendar'];
}

/** Everything a plan says beyond what is done: room, air, heat, forces, lifting, sizes, choice and waste. */
export function planSections(draft: Draft, facts: SectionFacts) {
	const { build, frame, coats, shell, shellThickness, pour, weights, life } = facts;
	const gloveMm = build.thicknessMm;
	const batches = placedBatches(coats.coats, shell.rounds);
	const lifting = liftingSection(draft, frame, weights, gloveMm + shellThickness.thicknessMm);
	const plaster = plasterSection(draft, pour);
	const handling = handlingSection(draft, build);
	const additions = additionsSection(draft, batches, pour);
	return {
		room: roomSection(draft, facts.used),
		walls: wallsSection(draft, build, coats.coats),
		cure: cureSection(draft, mixedUses(draft, facts), pour, facts.night),
		air: airSection(draft, airUses(draft, facts), facts.used, facts.calendar),
		lifting,
		...(build.bridging && { bridging: build.bridging }),
		...(handling && { handling }),
		forces: forcesSection(draft, frame, shellThickness, gloveMm),
		sizes: sizesSection(draft),
		...(plaster && { plaster }),
		choice: choiceSection(draft, facts, {
			rwlG: lifting.recommendedG,
			forbidden: lifting.forbidden
		}),
		life,
		waste: wasteSection(draft, batches, { weights, life, pour }),
		weighing: weighingSection(draft, batches),
		...(additions && { additions })
	} satisfies Partial<Plan>;
}
