import type { Coat, ShellRound } from '../plan/plan';
import { batchAtWork, coatAtWork, mixersBeside, type ProcessContext } from './context';
import { secondsBetween } from './instant';
import { layersPlanned } from './layers';
import { cupAfter } from './next-cup';
import { act, waiting, wobble, type RehearsedAct } from './rehearsal-act';

/** Largest deviation of a careful hand at the scale, as a part of the mass. */
const HAND_FRACTION = 0.002;
/** Part of the working time after which a careful crew has laid a cup. */
const IN_TIME_FRACTION = 0.7;

function rounded(massG: number, stepG: number): number {
	return Number((Math.round(massG / stepG) * stepG).toFixed(3));
}

/** No cup is laid sooner. */
const LEAST_LAYING_S = 20;
/** Weighing the next cup while this one is laid, and by which part of that it is mixed. */
const NEXT_WEIGHED_S = 60;
const NEXT_MIXED_FRACTION = 0.8;

/** What a careful hand weighs into the next cup; `factors` pours more or less of a part, by name. */
export function weighing(
	context: ProcessContext,
	factors: Record<string, number> = {}
): RehearsedAct {
	const batch = batchAtWork(context);
	const cup = batch?.cups[Math.min(context.cupsLaid, batch.cups.length - 1)];
	if (!batch || !cup) throw new RangeError('no batch is at work; expected a coat or a shell round');
	const stepG = context.plan.inputs.shop.scaleReadabilityG;
	const massesG = Object.fromEntries(
		cup.parts.map(({ part, massG }, i) => [
			part,
			rounded(massG * (factors[part] ?? 1 + HAND_FRACTION * wobble(context, i)), stepG)
		])
	);
	const lots = Object.fromEntries(
		cup.parts.map(({ part }) => [part, `INVENTED-${part.slice(0, 8).toUpperCase()}-07`])
	);
	return act({ type: 'cup.weighed', massesG, lots }, 150);
}

/** Acts that may come next while the glove is coated or the shell is laid, likeliest first. */
export function cupActs(context: ProcessContext): RehearsedAct[] {
	const batch = batchAtWork(context);
	const { cup } = context;
	if (!batch) return [];
	if (cup?.mixedAt) return layingActs(context, batch, cup.mixedAt);
	if (cup) return [act({ type: 'cup.mixed' }, batch.mixS)];
	if (context.cupsLaid < batch.cups.length) return [weighing(context)];
	const layers = layersPlanned(context);
	return [act({ type: 'coat.finished', ...(layers > 0 ? { layersLaid: layers } : {}) }, 40)];
}

/** A cup is laid; where there are two at work, the next one is weighed and mixed meanwhile. */
function layingActs(
	context: ProcessContext,
	batch: Coat | ShellRound,
	mixedAt: string
): RehearsedAct[] {
	const { plan, cup, cupAhead, cupsLaid, laidAt, lastAt, phase } = context;
	const massG = Object.values(cup?.massesG ?? {}).reduce((sum, part) => sum + part, 0);
	const { brushingGPerMin, pastingGPerMin } = plan.inputs.shop;
	const paceGPerMin = phase === 'shell' ? pastingGPerMin : brushingGPerMin;
	const layS = Math.max(
		LEAST_LAYING_S,
		Math.min((massG / paceGPerMin) * 60, IN_TIME_FRACTION * batch.workingS)
	);
	// A cup prepared meanwhile waits till the one before it is on.
	const begunAt = laidAt !== null && laidAt > mixedAt ? laidAt : mixedAt;
	const spentS = secondsBetween(begunAt, lastAt);
	const leftS = Math.round(Math.max(LEAST_LAYING_S, layS - spentS));
	const laid = act({ type: 'cup.applied' }, leftS);

	const hasNext = plan.people >= 2 && cupAfter(context) !== null;
	if (hasNext && cupAhead === null && NEXT_WEIGHED_S + LEAST_LAYING_S <= layS) {
		const next = weighing({ ...context, cupsLaid: cupsLaid + 1 });
		return [{ ...next, tookS: NEXT_WEIGHED_S }, laid];
	}
	// A small cup is on before the next one can be mixed: that one then follows, weighed.
	if (cupAhead?.mixedAt === null && NEXT_WEIGHED_S + batch.mixS <= layS) {
		const untilS = Math.round(NEXT_MIXED_FRACTION * layS - spentS);
		const [mixedBy] = mixersBeside(context, context.worker ?? '');
		if (!mixedBy) return [laid];
		return [act({ type: 'cup.mixed', mixedBy }, Math.max(batch.mixS, untilS)), laid];
	}
	return [laid];
}

/** Acts of the coating phases, likeliest first: brush back, test, then the next cup, then the gauge. */
export function coatingActs(context: ProcessContext): RehearsedAct[] {
	const { finishedAt } = context;
	const coat = coatAtWork(context);
	const tested = act({ type: 'tack.tested', result: 'almost tack-free' }, 90);
	return [
		...cupActs(context),
		waiting(act({ type: 'coat.brushedBack' }, 240), finishedAt, (coat?.brushBackS ?? 0) + 30),
		waiting(tested, finishedAt, (coat?.tackTestS ?? 0) + 60),
		act({ type: 'thickness.measured', points: gaugePoints(context) }, 480),
		act(
			{
				type: 'surface.abraded',
				grit: 'P120',
				wiped: true,
				dried: true,
				reason: 'The recoat window had closed.'
			},
			1500
		)
	];
}

function gaugePoints({ plan }: ProcessContext) {
	const places = ['North wall', 'East wall', 'South wall', 'West wall', 'Top, middle', 'Flange'];
	return places.map((place, i) => ({
		place,
		thicknessMm: Number((plan.glove.thicknessMm * (1.03 + 0.05 * Math.sin(i * 2.1))).toFixed(1))
	}));
}
