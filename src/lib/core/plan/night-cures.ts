import {
	equivalentTimeLaw,
	equivalentTimeS,
	reachedAfterS,
	type ProfilePoint
} from '../laws/cure-profile';
import { cureRateFrom } from '../laws/cure-rate';
import { roundDownTo, roundUpTo } from '../quantity/rounding';
import type { Sheet } from '../materials/sheet';
import { endOfTaskMs } from './calendar-plan';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { likelyRates } from './room-time';
import { workingTimes } from './shift-hours';
import { entered, fromSheet, traced, type Draft } from './trace';
import { withinLaw } from './within-law';
import { workList, type WorkFacts } from './work-list';

/** Work list whose two long cures are counted through the nights, and what they then take. */
export function throughNights(
	draft: Draft,
	facts: WorkFacts
): { facts: WorkFacts; night: NonNullable<Plan['cure']>['night'] } {
	const { build, shell } = draft.inputs.materials;
	const nightC = draft.inputs.shop.nightTemperatureC;
	if (nightC === undefined) return { facts, night: null };
	const gloveS = nightCureS(draft, {
		path: 'gloveCure.testS',
		label: 'Glove cured after the last coat, through the nights',
		sheet: build,
		fromMs: endOfTaskMs(draft, workList(facts), `coat-${facts.coats.coats.length}`),
		nightC
	});
	const withGlove = { ...facts, gloveCureS: gloveS ?? facts.gloveCureS };
	const shellS = nightCureS(draft, {
		path: 'shellCure.testS',
		label: 'Shell cured after the last round, through the nights',
		sheet: shell,
		fromMs: endOfTaskMs(draft, workList(withGlove), `round-${facts.shell.rounds.length}`),
		nightC
	});
	return {
		facts: { ...withGlove, shellCureS: shellS ?? facts.shellCureS },
		night: {
			temperatureC: nightC,
			gloveS,
			shellS,
			gloveShareFraction: shareByThen(draft, facts, nightC)
		}
	};
}

/** How far the glove is cured through the nights when a room as warm as by day would have cured it. */
function shareByThen(draft: Draft, facts: WorkFacts, nightC: number): number | null {
	const { build } = draft.inputs.materials;
	const { at, rate } = cureOf(build);
	const fromMs = endOfTaskMs(draft, workList(facts), `coat-${facts.coats.coats.length}`);
	return withinLaw(draft, 'cure', 'Glove by the time of a warm room', () =>
		traced(draft, 'cure.night.gloveShareFraction', {
			label: 'Glove: cured so far when a warm room would have done it',
			value: Math.min(
				1,
				equivalentTimeS(nightProfile(draft, fromMs, nightC), facts.gloveCureS, {
					referenceC: at.atC,
					rate
				}) / at.timeS
			),
			unit: 'fraction',
			law: equivalentTimeLaw,
			inputs: [
				fromSheet('t_e', 'demold', at.timeS, 's'),
				entered('T_night', 'room outside the shifts', nightC, 'C')
			]
		})
	);
}

/** The demold time of a sheet, or common practice's, and its rate. */
function cureOf({ demold }: Sheet) {
	const at = demold ?? { timeS: DEFAULTS.demoldS.value, atC: DEFAULTS.referenceC.value };
	const points = [at, ...(demold?.second ? [demold.second] : [])];
	return {
		at,
		rate: cureRateFrom(points.map(({ timeS, atC }) => ({ timeS, temperatureC: atC })))
	};
}

/** Days of the room’s temperature that are laid out, after which it stays; choice of the plan. */
const PROFILE_DAYS = 21;

/**
 * The room's temperature from an instant on: the room's own in the shifts, the night's outside them,
 * with a straight line of two hours between. Seconds count from `fromMs`.
 */
function nightProfile(draft: Draft, fromMs: number, nightC: number): ProfilePoint[] {
	const dayC = draft.temperatureC;
	const rampS = DEFAULTS.nightRampS.value;
	const times = workingTimes(draft.inputs.shop, fromMs - 86_400_000, PROFILE_DAYS);
	const raw = times.flatMap(({ fromMs: opens, toMs: shuts }): ProfilePoint[] => {
		const [onS, offS] = [(opens - fromMs) / 1000, (shuts - fromMs) / 1000];
		// Heating is on before the shift, so that the room is warm when it begins.
		return [
			{ atS: onS - rampS, temperatureC: nightC },
			{ atS: onS, temperatureC: dayC },
			{ atS: offS, temperatureC: dayC },
			{ atS: offS + rampS, temperatureC: nightC }
		];
	});
	return fromStart(raw, nightC);
}

/** Cuts a profile at 0 and drops points that two shifts close together put out of order. */
function fromStart(points: readonly ProfilePoint[], nightC: number): ProfilePoint[] {
	const ordered: ProfilePoint[] = [];
	for (const point of points) {
		const last = ordered.at(-1);
		if (!last || point.atS >= last.atS) ordered.push(point);
	}
	const next = ordered.findIndex(({ atS }) => atS > 0);
	const after = ordered[next];
	const before = ordered[next - 1];
	if (!after) return [{ atS: 0, temperatureC: ordered.at(-1)?.temperatureC ?? nightC }];
	const share = before ? -before.atS / (after.atS - before.atS) : 0;
	const startC = before
		? before.temperatureC + share * (after.temperatureC - before.temperatureC)
		: nightC;
	return [{ atS: 0, temperatureC: startC }, ...ordered.slice(next)];
}

const shifted = (profile: readonly ProfilePoint[], byK: number): ProfilePoint[] =>
	profile.map(({ atS, temperatureC }) => ({ atS, temperatureC: temperatureC + byK }));

/**
 * How long a sheet's cure is likely to take at most from an instant on, through warm shifts and cold
 * nights, in whole minutes; null, with a warning, when it is not reached within 60 days or the night is too cold.
 */
function nightCureS(
	draft: Draft,
	given: { path: string; label: string; sheet: Sheet; fromMs: number; nightC: number }
): number | null {
	const { path, label, sheet, fromMs, nightC } = given;
	const { at, rate } = cureOf(sheet);
	const profile = nightProfile(draft, fromMs, nightC);
	const offK = draft.inputs.shop.roomSpreadK ?? DEFAULTS.thermometerK.value;
	const ends = withinLaw(draft, 'cure', label, () => {
		const cures = likelyRates(rate).flatMap((each) =>
			[-offK, offK].map((byK) =>
				reachedAfterS(shifted(profile, byK), at.timeS, { referenceC: at.atC, rate: each })
			)
		);
		const reached = cures.filter((cureS) => cureS !== null);
		if (reached.length < cures.length) return null;
		return { soonestS: Math.min(...reached), latestS: Math.max(...reached) };
	});
	if (ends === null) return null;
	return traced(draft, path, {
		label,
		value: roundUpTo(ends.latestS, 60),
		low: roundDownTo(ends.soonestS, 60),
		high: roundUpTo(ends.latestS, 60),
		unit: 's',
		law: equivalentTimeLaw,
		inputs: [
			...(sheet.demold
				? [fromSheet('t_e', 'demold', at.timeS, 's'), fromSheet('T_ref', 'at', at.atC, 'C')]
				: [defaultInput('t_e', 'demoldS'), defaultInput('T_ref', 'referenceC')]),
			entered('T_day', 'room in the shifts', draft.temperatureC, 'C'),
			entered('T_night', 'room outside the shifts', nightC, 'C'),
			draft.inputs.shop.roomSpreadK === undefined
				? defaultInput('ΔT', 'thermometerK')
				: entered('ΔT', 'how far a place may differ from it', offK, 'K'),
			...(rate.kind === 'q10' ? [defaultInput('Q10', 'q10')] : []),
			defaultInput('ramp', 'nightRampS')
		],
		note: 'The longest that is likely, counted hour by hour from the start that was asked for; the test decides.'
	});
}
