import type { ProcessContext } from './context';
import { placesToLookAt } from './places-to-look-at';
import { act, waiting, type RehearsedAct } from './rehearsal-act';

/** Acts from the cured glove to the closed shell, likeliest first. */
export function shellingActs(context: ProcessContext): RehearsedAct[] {
	const { plan, finishedAt } = context;
	const { shoreA } = plan.glove;
	const firm = shoreA === null ? {} : { shoreA: Math.max(0, shoreA - 1) };
	return [
		waiting(
			act({ type: 'glove.tested', result: 'cured', ...firm }, 300),
			finishedAt,
			plan.gloveCure.testS
		),
		act({ type: 'glove.trimmed', edgeSquare: true, frameClean: true }, 2700),
		act(
			{
				type: 'glove.waxed',
				wholeBack: true,
				coats: Math.max(1, Math.min(6, plan.shellRelease.waxCoats))
			},
			1500
		),
		act({ type: 'frame.refitted', tight: true }, 1200),
		waiting(act({ type: 'shell.tested', result: 'hard' }, 300), finishedAt, plan.shellCure.testS)
	];
}

/** The shell is gauged when its rounds are laid. */
export function shellFinished({ plan }: ProcessContext): RehearsedAct {
	const thicknessMm = Number((plan.shell.thicknessMm * 1.02).toFixed(1));
	return act({ type: 'shell.finished', thicknessMm, cornersFull: true, feetLevel: true }, 900);
}

/** Acts from the closed shell to the handover, likeliest first. */
export function finishingActs(context: ProcessContext): RehearsedAct[] {
	const { plan, waitSinceAt } = context;
	const { surface, glove, inputs, pour } = plan;
	const looked = placesToLookAt(context).map(({ key }) => [key, true] as const);
	const shrink = 1 - (inputs.materials.build.linearShrinkagePct ?? 0) / 100;
	const measured = (plannedMm: number) => Number((plannedMm * shrink).toFixed(1));
	return [
		act({ type: 'mold.opened', boardOff: true, wedgedEvenly: true }, 1800),
		act(
			{
				type: 'mold.marked',
				mark: 'Notch and arrow, north side',
				sameSide: true,
				partingLine: 'uneven'
			},
			300
		),
		act({ type: 'glove.peeled', whole: true }, 1200),
		act({ type: 'glove.washed', filmGone: true }, 900),
		act(
			{
				type: 'mold.inspected',
				voids: 0,
				bubbles: 0,
				tears: 0,
				thinSpots: 0,
				...(glove.shoreA === null ? {} : { shoreA: glove.shoreA }),
				dimensions: [
					{ name: 'Length', plannedMm: surface.lengthMm, measuredMm: measured(surface.lengthMm) },
					{ name: 'Width', plannedMm: surface.widthMm, measuredMm: measured(surface.widthMm) }
				],
				...(looked.length > 0 ? { lookedAt: Object.fromEntries(looked) } : {}),
				verdict: 'sound',
				note: 'Looked at in raking light, face and flange: nothing found.'
			},
			1800
		),
		act(
			{
				type: 'part.poured',
				massG: Math.max(1, Math.round(pour.massG)),
				headMm: Math.max(1, Math.round(pour.headMm)),
				lot: 'INVENTED-CAST-03'
			},
			1500
		),
		waiting(
			act({ type: 'part.released', result: 'good' }, 900),
			waitSinceAt,
			inputs.materials.casting.demold?.timeS ?? 3600
		),
		act(
			{
				type: 'mold.handedOver',
				to: 'The casting bench of the invented shop',
				storage: 'The glove rests in its shell, face up, out of the sun.',
				repair: 'Small tears: the same glove material, surface abraded and wiped.',
				wornOutWhen: 'Edges round off, or the face stays dull after washing.'
			},
			600
		)
	];
}
