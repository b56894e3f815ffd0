import { log } from './log';

type Verdict = keyof typeof log.verdicts;
type Flaw = keyof typeof log.flaws;

/** What an inspection found, before it is put into words. */
export interface Found {
	verdict: Verdict;
	flaws: ReadonlyArray<{ flaw: Flaw; count: number }>;
	/** Dimensions that differ from the plan's, in mm. */
	sizes: ReadonlyArray<{ name: string; measuredMm: number; plannedMm: number }>;
	note: string;
	/** Earlier versions ended each in a full stop, whatever came before it. */
	alwaysStop: boolean;
}

/** What was done or found otherwise than planned, as the record keeps it. `title` is a coat's or a round's. */
export const deviations = {
	windowMissed: ({ hadCup }: { hadCup: boolean }) =>
		`The recoat window was missed: the surface is hard and takes no print.${hadCup ? ' The cup weighed for it was set aside.' : ''}`,
	abraded: ({ grit, reason }: { grit: string; reason: string }) =>
		`The surface was abraded with ${grit}, wiped and dried: ${reason}`,
	roundAdded: ({ reason }: { reason: string }) => `A shell round was added: ${reason}`,
	mixedLate: () => 'A further cup was mixed after the recoat window had closed.',
	mixedFast: ({ tookS, mixS }: { tookS: number; mixS: number }) =>
		`A cup was mixed for ${tookS} s; the data sheet asks for ${mixS} s.`,
	largeCup: ({ massG, plannedG }: { massG: number; plannedG: number }) =>
		`A cup of ${massG} g was mixed; planned ${plannedG} g. It heats more and turns sooner.`,
	mixerNotInDate: () =>
		'A cup was mixed by a person whose training on isocyanates was not in date.',
	nextDropped: () =>
		'The next cup was mixed already and set aside too: the surface below no longer takes it.',
	laidOnShut: ({ min }: { min: number }) =>
		`A cup was laid ${min} min after the recoat window of the surface below had closed: what was bare there does not bond.`,
	laidPastWindow: ({ min }: { min: number }) =>
		`A cup mixed inside the recoat window was laid ${min} min after it had closed.`,
	laidPastPotLife: ({ min, mostMin }: { min: number; mostMin: number }) =>
		`A cup was laid ${min} min after its parts met; its pot life is ${mostMin} min.`,
	laidPastWorking: ({ min, mostMin }: { min: number; mostMin: number }) =>
		`A cup was laid ${min} min after mixing; its working time is ${mostMin} min.`,
	short: ({ title, reason }: { title: string; reason: string }) =>
		`${title} stayed short: ${reason}`,
	fewLayers: (given: { title: string; laid: number; planned: number; reason: string }) =>
		`${given.title} has ${given.laid} of ${given.planned} layers of reinforcement: ${given.reason}`,
	over: ({ title, laidG, plannedG }: { title: string; laidG: number; plannedG: number }) =>
		`${title} took more than planned: ${laidG} g, planned ${plannedG} g.`,
	notBrushedBack: () => 'The thin coat was not brushed back before it gelled.',
	testedEarly: (given: { title: string; tookMin: number; expectedMin: number }) =>
		`${given.title} was found almost tack-free after ${given.tookMin} min; the data sheet lets expect ${given.expectedMin} min.`,
	testedTooSoon: (given: { title: string; tookMin: number; soonestMin: number }) =>
		`${given.title} was found tack-free after ${given.tookMin} min; its data sheet lets expect that after ${given.soonestMin} min at the soonest. The test does not count and is made again.`,
	tooThin: ({ thinnestMm, leastMm }: { thinnestMm: number; leastMm: number }) =>
		`The glove is ${thinnestMm} mm at its thinnest point; the plan asks for ${leastMm.toFixed(1)} mm.`,
	looseFrame: ({ note }: { note: string }) =>
		`The frame went back loose: the glove shrank more than planned. ${note}`.trim(),
	torn: ({ note }: { note: string }) => `The glove did not come off whole. ${note}`.trim(),
	gap: (given: { gapMm: number; plannedMm: number; toleranceMm: number }) =>
		`The frame stands ${given.gapMm} mm clear of the pattern; planned ${given.plannedMm} mm, give or take ${given.toleranceMm} mm.`,
	found: (found: Found) =>
		foundText(found, `The inspection found it ${log.verdicts[found.verdict]}`, log),
	foundAnew: ({ before, now }: { before: Verdict; now: Verdict }) =>
		`Inspected anew with no repair logged: first found ${log.verdicts[before]}, now ${log.verdicts[now]}.`,
	roomOff: (given: { roomC: number; humidityPct: number; plannedC: number; plannedPct: number }) =>
		`The room was read at ${given.roomC} °C and ${given.humidityPct}%; the plan counts on ${given.plannedC} °C and ${given.plannedPct}%. In the warm a cup sets and a window shuts sooner, in the cold later; in damp air film dries slower.`,
	roomMoist: (given: { humidityPct: number; roomC: number; plannedPct: number; leastC: number }) =>
		`The air was read at ${given.humidityPct}% and ${given.roomC} °C, planned ${given.plannedPct}%: it can make a urethane foam. Dry the room, keep part A shut, keep the pattern above ${given.leastC} °C (dew point and margin), and pour a test cup first.`,
	roomRange: (given: { name: string; roomC: number; minC: number; maxC: number }) =>
		`The room was read at ${given.roomC} °C; ${given.name} is made for ${given.minC} to ${given.maxC} °C. Bring room, parts and pattern into that range.`,
	surfaceDew: ({ surfaceC, dewC, marginK }: { surfaceC: number; dewC: number; marginK: number }) =>
		`The pattern at ${surfaceC} °C lies ${Math.abs(marginK)} °C (${(1.8 * Math.abs(marginK)).toFixed(1)} °F) ${marginK < 0 ? 'below' : 'above'} the dew point of ${dewC} °C; 3 °C (5.4 °F) above are asked for. Water can settle on it unseen: warm the pattern or dry the room, then read again.`,
	testedAnew: ({ before, now }: { before: string; now: string }) =>
		`A test was taken back and entered anew: first “${before}”, now “${now}”.`
};
export type DeviationWords = typeof deviations;

/** An inspection in one sentence, in a language's own words for flaws and sizes. */
export function foundText(
	{ flaws, sizes, note, alwaysStop }: Found,
	verdict: string,
	said: Pick<typeof log, 'flaws' | 'size'>
): string {
	const counted = flaws.map(({ flaw, count }) => `${said.flaws[flaw]} ${count}`);
	const text = [verdict, [...counted, ...sizes.map(said.size)].join(', '), note]
		.filter(Boolean)
		.join(': ');
	return !alwaysStop && text.endsWith('.') ? text : `${text}.`;
}
