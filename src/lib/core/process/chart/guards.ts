import type { PhaseId } from '../../content/vocabulary';
import { coatAtWork, isOpenOrder, isSince, type ProcessContext } from '../context';
import type { ProcessEvent } from '../events';
import type { RuleName } from '../rules';
import { sealerCoatsOf } from '../sealing';
import { finding, type Finding, type Tested } from './finding';
import { holdAll, only } from './obey';

interface Asked {
	context: ProcessContext;
	event: ProcessEvent;
}
interface Ruled {
	rules: RuleName[];
}
type Ahead = 'mixed' | 'weighed' | 'none';

function passed(event: ProcessEvent): boolean {
	return 'result' in event && ['cured', 'hard', 'good'].includes(event.result);
}

function destination(event: ProcessEvent): string | null {
	if (event.type === 'hold.sentBack') return event.to;
	return event.type === 'trouble.mended' || event.type === 'trouble.decided' ? event.wayBack : null;
}

const stateOf = (cup: ProcessContext['cup']): Ahead =>
	cup === null ? 'none' : cup.mixedAt === null ? 'weighed' : 'mixed';
const aheadOf = ({ cupAhead }: ProcessContext): Ahead => stateOf(cupAhead);

const namesNext = (event: ProcessEvent) => event.type === 'cup.discarded' && event.cup === 'next';

/** Which way the chart goes on: what is left to do, and what an event says beyond obeying its rules. */
export const guards = {
	obeys: ({ context, event }: Asked, { rules }: Ruled) => holdAll(rules, context, event),
	obeysAndFound: (
		{ context, event }: Asked,
		{ rules, found, of }: Ruled & { found: Finding; of: Tested }
	) => holdAll(rules, context, event) && finding(context, only(event, 'tack.tested'), of) === found,
	troubleLeft: ({ context }: Asked) => context.trouble !== null,
	sealed: ({ context }: Asked) => context.sealerCoats >= sealerCoatsOf(context),
	releaseDone: ({ context: { plan, waxCoats, filmPasses } }: Asked) =>
		!plan.release.needed ||
		(waxCoats >= plan.release.waxCoats && filmPasses >= plan.release.filmPasses),
	waxLeft: ({ context: { plan, waxCoats } }: Asked) => waxCoats < plan.release.waxCoats,
	brushesBack: ({ context }: Asked) => coatAtWork(context)?.brushBackS != null,
	moreCoats: ({ context }: Asked) => context.coatIndex + 1 < context.coats.length,
	lastRoundDone: ({ context }: Asked) => context.roundIndex >= context.rounds.length,
	obeysAndOrdered: ({ context, event }: Asked, { rules, to }: Ruled & { to: PhaseId }) =>
		holdAll(rules, context, event) && isOpenOrder(context, to),
	obeysAndThick: ({ context, event }: Asked, { rules }: Ruled) =>
		holdAll(rules, context, event) &&
		Math.min(...only(event, 'thickness.measured').points.map((p) => p.thicknessMm)) >=
			context.plan.glove.leastMm,
	obeysAndAccepted: ({ context, event }: Asked, { rules }: Ruled) =>
		holdAll(rules, context, event) && only(event, 'deviation.decided').accepted,
	obeysAndPassed: ({ context, event }: Asked, { rules }: Ruled) =>
		holdAll(rules, context, event) && passed(event),
	obeysAndMovesUp: ({ context, event }: Asked, { rules, next }: Ruled & { next: Ahead }) =>
		holdAll(rules, context, event) && !namesNext(event) && aheadOf(context) === next,
	obeysAndDropsNext: ({ context, event }: Asked, { rules }: Ruled) =>
		holdAll(rules, context, event) && namesNext(event),
	/** The cup in hand is set aside, and the surface no longer takes the next one, mixed already. */
	obeysAndStrandsNext: ({ context, event }: Asked, { rules }: Ruled) =>
		holdAll(rules, context, event) &&
		!namesNext(event) &&
		aheadOf(context) === 'mixed' &&
		!holdAll(['surfaceTakesNext'], context, event),
	obeysAndGoesTo: ({ context, event }: Asked, { rules, to }: Ruled & { to: string }) =>
		holdAll(rules, context, event) && destination(event) === to,
	/** The cup in hand when the trouble came was set aside meanwhile: work goes on with `cup`, or a new one. */
	obeysAndGoesOnWithout: (
		{ context, event }: Asked,
		{ rules, cup, inShell }: Ruled & { cup: Ahead; inShell: boolean }
	) =>
		holdAll(rules, context, event) &&
		destination(event) === 'resume' &&
		context.isCupAside &&
		stateOf(context.cup) === cup &&
		(context.phase === 'shell') === inShell,
	/** The mold had a trouble after it was inspected, so it is inspected anew. */
	obeysAndReinspects: ({ context, event }: Asked, { rules }: Ruled) =>
		holdAll(rules, context, event) &&
		destination(event) === 'resume' &&
		context.phase === 'inspect' &&
		context.inspection === null &&
		isSince(context, 3),
	obeysAndRedoes: ({ context, event }: Asked, { rules, inShell }: Ruled & { inShell: boolean }) =>
		holdAll(rules, context, event) &&
		destination(event) === 'redo coat' &&
		(context.phase === 'shell') === inShell
};
