import type { Coat, ShellRound } from '../plan/plan';
import { batchAtWork, cupInPreparation, isLaying, isSince, type ProcessContext } from './context';
import { cupDeviationFraction, offPart, type OffPart } from './cup-check';
import { cupClosesAt, isOverdue } from './cup-life';
import { cupLife, massInCup } from './cup-mass';
import type { EventOf, LoggedEvent } from './events';
import { secondsBetween } from './instant';
import { advance, contextOf, openJob, type JobState } from './job';
import { cupToWeigh } from './next-cup';

export interface AsBuiltCup {
	/** 1-based; from version 6 on a cup keeps it, before then those set aside were not counted. */
	number: number;
	by: string;
	weighedAt: string;
	/** In pouring order; `targetG` as the scale was to show it. */
	parts: Array<{ part: string; targetG: number; actualG: number; lot: string }>;
	/** Off its ratio when it was last weighed; null when a part was missing. */
	deviationFraction: number | null;
	/** Which part that was, and whether too much or too little of it; null when nothing was off a ratio. */
	off: OffPart | null;
	/** Prepared while the cup before it was laid. */
	prepared: boolean;
	/** Weighed again before mixing, to put it back on ratio. */
	corrected: boolean;
	mixedAt: string | null;
	/** Who mixed it, when that was not whoever weighed it. */
	mixedBy: string | null;
	laidAt: string | null;
	/** From the end of mixing till it was laid, and how long it may take. */
	workedS: number | null;
	workingS: number;
	/** Until when it was to be laid; null before it is mixed. */
	closesAt: string | null;
	/** Laid when its time was over: from version 5 on that counts from when the parts met. */
	isLate: boolean;
	/** Why it was set aside, when it was not laid. */
	discarded: string | null;
}

/** One coat of the glove or one round of the shell, as laid. */
export interface AsBuiltSection {
	id: string;
	kind: 'detail' | 'build' | 'shell';
	title: string;
	materialName: string;
	/** 2 when it was laid again, after a trouble or a send-back. */
	attempt: number;
	plannedG: number;
	laidG: number;
	/** Planned thickness of a coat; a shell round has none of its own. */
	thicknessMm: number | null;
	toleranceFraction: number;
	/** Layers of cloth or strand, planned and counted; null where the plan counts none. */
	layers: { planned: number; laid: number | null } | null;
	cups: AsBuiltCup[];
	finishedAt: string | null;
	shortReason: string | null;
}

/** Every coat and round begun, with its cups, from the entries that count. */
export function batchesLaid(state: JobState): AsBuiltSection[] {
	const [first, ...rest] = state.effective;
	if (!first) return [];
	const sections: AsBuiltSection[] = [];
	let before = openJob(contextOf(state).plan, first);
	let isBroken = true;
	for (const logged of rest) {
		const { event } = logged;
		if (event.type === 'cup.weighed') weigh(sections, contextOf(before), event, isBroken);
		isBroken = event.type === 'cup.weighed' ? false : isBroken || begunAnew(logged);
		note(sections, logged, contextOf(before));
		const next = advance(before, logged);
		if (!next.ok) throw new Error(`event ${logged.seq} (${event.type}): ${next.reason}`);
		before = next.state;
		after(sections.at(-1), event, contextOf(before));
		// The one mixed meanwhile goes with the one in hand where the surface takes it no more.
		if (event.type === 'cup.discarded' && contextOf(before).cup === null) {
			for (const cup of openCups(sections.at(-1))) cup.discarded = event.reason;
		}
	}
	return sections;
}

/** After such an entry a coat of the same name is another coat. */
function begunAnew({ event }: LoggedEvent): boolean {
	return (
		event.type === 'hold.sentBack' ||
		((event.type === 'trouble.mended' || event.type === 'trouble.decided') &&
			event.wayBack !== 'resume')
	);
}

function weigh(
	sections: AsBuiltSection[],
	c: ProcessContext,
	event: EventOf<'cup.weighed'>,
	isBroken: boolean
): void {
	const batch = batchAtWork(c);
	if (!batch) return;
	let section = sections.at(-1);
	if (!section || isBroken || section.id !== batch.id) {
		section = {
			id: batch.id,
			kind: 'kind' in batch ? batch.kind : 'shell',
			title: batch.title,
			materialName: batch.materialName,
			attempt: 1 + sections.filter(({ id }) => id === batch.id).length,
			plannedG: batch.massG,
			laidG: 0,
			thicknessMm: 'thicknessMm' in batch ? batch.thicknessMm : null,
			toleranceFraction: batch.toleranceFraction,
			layers: layersOf(batch),
			cups: [],
			finishedAt: null,
			shortReason: null
		};
		sections.push(section);
	}
	const isAhead = isLaying(c);
	const open = openCups(section)[isAhead ? 1 : 0];
	const targets = cupToWeigh(c)?.cup.parts ?? batch.cups[0]?.parts ?? [];
	const cup: AsBuiltCup = {
		number: 0,
		by: event.by,
		weighedAt: event.at,
		parts: targets.map(({ part, massG }) => ({
			part,
			targetG: massG,
			actualG: event.massesG[part] ?? 0,
			lot: event.lots[part] ?? ''
		})),
		deviationFraction: cupDeviationFraction(batch, event.massesG),
		off: offPart(
			batch,
			event.massesG,
			targets.map(({ part }) => part)
		),
		prepared: isAhead,
		corrected: open !== undefined,
		mixedAt: null,
		mixedBy: null,
		laidAt: null,
		workedS: null,
		workingS: cupLife(batch, massInCup(event.massesG)).workingS,
		closesAt: null,
		isLate: false,
		discarded: null
	};
	if (open) section.cups.pop();
	section.cups.push(cup);
}

/** What the machine made of the entry: the number of a cup weighed, and till when one mixed was to be laid. */
function after(
	section: AsBuiltSection | undefined,
	{ type }: LoggedEvent['event'],
	c: ProcessContext
): void {
	const cups = openCups(section);
	if (type === 'cup.weighed') {
		const cup = cups.at(-1);
		if (cup) cup.number = cupInPreparation(c)?.number ?? cup.number;
	}
	if (type === 'cup.mixed') {
		const [mixed, of] =
			isLaying(c) && c.cupAhead?.mixedAt ? [cups[1], c.cupAhead] : [cups[0], c.cup];
		if (mixed) mixed.closesAt = cupClosesAt(c, of);
	}
}

function layersOf(batch: Coat | ShellRound): AsBuiltSection['layers'] {
	const planned = 'layers' in batch ? (batch.layers ?? 0) : 0;
	return planned > 0 ? { planned, laid: null } : null;
}

/** Neither laid nor set aside: the one in hand, then the one prepared meanwhile. */
function openCups(section: AsBuiltSection | undefined): AsBuiltCup[] {
	return (section?.cups ?? []).filter((cup) => cup.laidAt === null && cup.discarded === null);
}

function note(sections: AsBuiltSection[], { event }: LoggedEvent, c: ProcessContext): void {
	const section = sections.at(-1);
	if (!section) return;
	const [inHand, next] = openCups(section);
	const setAside = (why: string) => {
		for (const cup of openCups(section)) cup.discarded = why;
	};
	switch (event.type) {
		case 'cup.mixed': {
			const mixed = inHand?.mixedAt === null ? inHand : next;
			if (mixed) {
				const who = event.mixedBy ?? event.by;
				mixed.mixedAt = event.at;
				mixed.mixedBy = who === mixed.by ? null : who;
			}
			break;
		}
		case 'cup.applied':
			if (inHand) {
				inHand.isLate = isOverdue(c, event.at);
				lay(section, inHand, event.at);
			}
			break;
		case 'cup.discarded': {
			const gone = event.cup === 'next' ? next : inHand;
			if (gone) gone.discarded = event.reason;
			if (gone === inHand && next && !isSince(c, 6)) next.number -= 1;
			break;
		}
		case 'surface.abraded':
			setAside('The recoat window had closed.');
			break;
		case 'trouble.mended':
		case 'trouble.decided':
			if (event.wayBack !== 'resume') setAside('Work began anew after a trouble.');
			break;
		case 'coat.finished':
			section.finishedAt = event.at;
			section.shortReason = event.shortReason ?? null;
			if (section.layers) section.layers.laid = event.layersLaid ?? null;
			break;
	}
}

function lay(section: AsBuiltSection, cup: AsBuiltCup, at: string): void {
	cup.laidAt = at;
	cup.workedS = cup.mixedAt === null ? null : secondsBetween(cup.mixedAt, at);
	section.laidG += cup.parts.reduce((sum, { actualG }) => sum + actualG, 0);
}
