import type { ProcessContext } from './context';
import { sealerCoatsOf } from './sealing';
import { act, bySupervisor, waiting, type RehearsedAct } from './rehearsal-act';

/** How old a reading of the room may grow before a careful crew takes it again. */
const READ_AGAIN_S = 10 * 3600;

function roomReading({ plan }: ProcessContext): RehearsedAct {
	const { roomTemperatureC: temperatureC, roomHumidityPct: humidityPct } = plan;
	return act(
		{ type: 'room.read', temperatureC, humidityPct, surfaceC: temperatureC, extractionOn: true },
		120
	);
}

/** A room reading, when there is none or it is old at `at`. */
export function roomIfDue(context: ProcessContext, at: string): RehearsedAct | null {
	const old = context.room && Date.parse(at) - Date.parse(context.room.at) < READ_AGAIN_S * 1000;
	return old ? null : roomReading(context);
}

/** Acts of the brief: what worker and mixer have not read yet, then the confirmations. */
export function briefActs(
	context: ProcessContext,
	{ worker, mixer }: { worker: string; mixer?: string },
	contentHash: (slug: string) => string
): RehearsedAct[] {
	const unreadBy = (person: string) =>
		context.plan.briefings.find((slug) => !context.briefingsRead[person]?.includes(slug));
	const readAct = (briefing: string) =>
		act({ type: 'briefing.read', briefing, contentHash: contentHash(briefing) }, 240);
	const next = unreadBy(worker);
	if (next) return [readAct(next)];
	const nextOfMixer = mixer === undefined ? undefined : unreadBy(mixer);
	if (nextOfMixer) return [{ ...readAct(nextOfMixer), who: 'mixer' }];
	return [
		act(
			{
				type: 'brief.finished',
				sdsRead: true,
				ppeOut: true,
				spillKitKnown: true,
				trainingInDate: true
			},
			420
		)
	];
}

/** Acts on the pattern, its release and its frame, likeliest first. */
export function preparingActs(context: ProcessContext): RehearsedAct[] {
	const { plan, waitSinceAt, sealerCoats } = context;
	return [
		act(
			{
				type: 'pattern.prepared',
				dry: true,
				sound: true,
				sealedOrDense: true,
				inhibitorsConsidered: true,
				fixedToBoard: true,
				footGapsFilled: true
			},
			2700
		),
		waiting(
			act({ type: 'sealer.dried', dry: true }, 120),
			waitSinceAt,
			plan.release.sealerDryS ?? 0
		),
		waiting(act({ type: 'wax.buffed' }, 300), waitSinceAt, plan.release.waxHazeS),
		waiting(act({ type: 'film.dried', unbroken: true }, 120), waitSinceAt, plan.release.filmDryS),
		...(sealerCoats < sealerCoatsOf(context) ? [act({ type: 'sealer.applied' }, 900)] : []),
		act({ type: 'wax.applied' }, 420),
		act({ type: 'film.applied' }, 300),
		act(
			{
				type: 'frame.fitted',
				gapMm: plan.frame.gapMm,
				screwedFromBelow: true,
				cornersTight: true,
				insideReleased: true
			},
			2400
		)
	];
}

/** At a hold point: ask, then a supervisor comes by and signs. */
export function holdActs({ hold, holdRequestedAt }: ProcessContext): RehearsedAct[] {
	if (!hold) return [];
	return holdRequestedAt === null
		? [act({ type: 'hold.requested', hold }, 180)]
		: [bySupervisor(act({ type: 'hold.signed', hold }, 540))];
}
