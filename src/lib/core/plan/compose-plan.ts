import { readingS } from '../content/reading-time';
import { briefingsFor, hazardsOf, ppeFor } from '../materials/hazards';
import { worstFirst } from '../materials/pair-problem';
import { shellReleaseNeed } from '../materials/release-need';
import type { Sheet } from '../materials/sheet';
import { blockPlan } from './block-plan';
import { calendarPlan } from './calendar-plan';
import { coatsPlan } from './coats-plan';
import { costPlan } from './cost-plan';
import { curePlan } from './cure-plan';
import { DEFAULTS } from './defaults';
import { warnOfForm } from './form-warnings';
import { framePlan } from './frame-plan';
import { gloveBuild } from './glove-build';
import { warnOfAssumedHazards } from './hazard-warnings';
import { mayGetHot } from './may-get-hot';
import { orderPlan } from './order-plan';
import { throughNights } from './night-cures';
import { PROCESS_VERSION, type Plan, type PlanWarning } from './plan';
import { planSections } from './plan-sections';
import { pourPlan } from './pour-plan';
import { releasePlan, spreadG } from './release-plan';
import { warnOfRoom } from './room-warnings';
import { warnOfSheetGaps } from './sheet-gaps';
import { shellPlan } from './shell-plan';
import { shellThicknessPlan } from './shell-thickness-plan';
import { surfacePlan } from './surface-plan';
import type { Draft } from './trace';
import { washing, weightsPlan } from './weights-plan';
import { workList } from './work-list';

/** Puts the parts of a plan together; every part leaves its trace and its warnings in the draft. */
export function composePlan(draft: Draft): Plan {
	const { inputs, temperatureC } = draft;
	const { materials, people } = inputs;
	const build = gloveBuild(draft);
	const shellThickness = shellThicknessPlan(draft);
	const frame = framePlan(draft, build.thicknessMm, shellThickness.thicknessMm);
	const surface = surfacePlan(draft, frame);
	const coats = coatsPlan(draft, build, frame);
	const usesDetail = build.detailMm.length > 0;
	const first = usesDetail && materials.detail ? materials.detail : materials.build;
	const release = releasePlan(draft, frame, first);
	const shell = shellPlan(draft, build.thicknessMm, shellThickness.thicknessMm, frame);
	const backNeed = shellReleaseNeed(materials.build, materials.shell);
	const backCoats = materials.wax ? DEFAULTS.shellWaxCoats.value : 0;
	const shellRelease = {
		...backNeed,
		waxCoats: backCoats,
		waxG: spreadG(draft, {
			path: 'shellRelease.waxG',
			label: 'Wax on the back of the glove',
			sheet: materials.wax,
			fallback: 'waxSpread',
			coats: backCoats,
			areaCm2: surface.coatedAreaCm2
		})
	};
	const cures = curePlan(draft);
	const pour = pourPlan(draft, shellThickness, build.thicknessMm);
	const weights = weightsPlan(draft, {
		gloveG: coats.gloveG,
		shellG: shell.shellG,
		frameG: frame.frameG
	});
	const used = usedSheets(draft, usesDetail);
	const asked = {
		// Whether a cup gets hot is known only later: time is kept for its briefing too.
		readS: readingS(briefingsFor(hazardsOf(used, ['hot-cup']))),
		people,
		exposedAreaCm2: surface.exposedAreaCm2,
		coatedAreaCm2: surface.coatedAreaCm2,
		release,
		sealerDryS: release.sealerDryS ?? 0,
		coats,
		gloveCureS: cures.gloveCure.testS,
		shellRelease,
		shell,
		shellCureS: cures.shellCure.testS,
		meltS: pour.melt?.meltS ?? 0,
		pourS: pour.batches?.spanS ?? 0,
		pourPeople: Math.min(people, pour.batches?.count ?? 1),
		castingS: Math.max(cures.castingS, pour.melt?.solidS ?? 0)
	};
	const { facts, night } = throughNights(draft, asked);
	const calendar = calendarPlan(draft, workList(facts));
	const order = orderPlan(
		draft,
		[
			...coats.coats.map(({ kind, massG }) => ({
				sheet: kind === 'detail' ? materials.detail : materials.build,
				massG
			})),
			...shell.rounds.flatMap(({ massG, reinforcementG }) => [
				{ sheet: materials.shell, massG },
				{ sheet: materials.reinforcement, massG: reinforcementG }
			]),
			{ sheet: materials.wax, massG: release.waxG + shellRelease.waxG },
			{ sheet: materials.film, massG: release.filmG },
			{ sheet: materials.sealer, massG: release.sealerG },
			{ sheet: materials.casting, massG: pour.massG, isPoured: true }
		],
		calendar.finishAt
	);
	warnOfAssumedHazards(draft, used);
	warnOfSheetGaps(draft, usesDetail);
	warnOfRoom(draft, used, hazardsOf(used));
	warnOfForm(draft, build.thicknessMm);
	const { cost, life } = costPlan(draft, order, pour, calendar);
	const { block, process, at, evenAt } = blockPlan(draft, {
		gloveMl: coats.gloveMl,
		gloveG: coats.gloveG,
		shellG: shell.shellG,
		gloveMm: build.thicknessMm,
		shellMm: shellThickness.thicknessMm,
		gapMm: frame.frame.gapMm,
		calendar
	});
	const sections = planSections(draft, {
		used,
		build,
		frame,
		coats,
		shell,
		shellThickness,
		release,
		shellRelease,
		sealerDryS: facts.sealerDryS,
		castingSoonestS: cures.castingSoonestS,
		pour,
		weights,
		life,
		process,
		estimateAt: at,
		evenAt,
		night,
		calendar: calendar.calendar
	});
	const hazards = hazardsOf(used, mayGetHot(sections, used) ? ['hot-cup'] : []);
	return {
		format: 'glovewright.plan.1',
		processVersion: PROCESS_VERSION,
		title: `${inputs.pattern.name}: glove mold`.slice(0, 120),
		inputs,
		surface,
		roomTemperatureC: temperatureC,
		roomHumidityPct: draft.humidityPct,
		release,
		frame: frame.frame,
		detail: build.detail,
		coats: coats.coats,
		glove: {
			thicknessMm: build.thicknessMm,
			leastMm: build.leastMm,
			shoreA: materials.build.shoreA ?? null
		},
		gloveCure: throughNight(cures.gloveCure, facts.gloveCureS, night?.temperatureC),
		shellRelease,
		shell: {
			thicknessMm: shellThickness.thicknessMm,
			why: shellThickness.why,
			rounds: shell.rounds
		},
		shellCure: throughNight(cures.shellCure, facts.shellCureS, night?.temperatureC),
		pour,
		washing: washing(release.filmPasses > 0),
		weights,
		order,
		cost,
		calendar: calendar.calendar,
		betterStartAt: calendar.betterStartAt,
		...(calendar.betterFinishAt === null ? {} : { betterFinishAt: calendar.betterFinishAt }),
		finishAt: calendar.finishAt,
		people,
		ppe: ppeFor(hazards),
		hazards,
		briefings: briefingsFor(hazards),
		block,
		...sections,
		warnings: distinct(draft.warnings).toSorted(worstFirst),
		figures: draft.figures
	};
}

/** A long cure as the nights leave it; its reason then says that it was counted through them. */
function throughNight(
	cure: Plan['gloveCure'],
	testS: number,
	nightC: number | undefined
): Plan['gloveCure'] {
	const why =
		nightC === undefined ? cure.why : `${cure.why} Counted through nights of ${nightC} °C.`;
	return { ...cure, testS, why };
}

/** What the job really takes: materials chosen but not needed raise no hazards and no warnings. */
function usedSheets({ inputs }: Draft, usesDetail: boolean): Sheet[] {
	const { detail, build, shell, reinforcement, wax, film, sealer, casting } = inputs.materials;
	const seals = inputs.pattern.porosity === 'porous' ? sealer : undefined;
	return [
		usesDetail ? detail : undefined,
		build,
		shell,
		reinforcement,
		wax,
		film,
		seals,
		casting
	].filter((sheet) => sheet !== undefined);
}

/** A limit that two parts of the plan run into is said once. */
function distinct(warnings: readonly PlanWarning[]): PlanWarning[] {
	return [...new Map(warnings.map((warning) => [warning.text, warning])).values()];
}
