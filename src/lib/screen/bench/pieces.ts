import type { BenchView } from '$lib/core/bench/bench-view';

/**
 * Parts of the bench that only some steps show, each loaded with the steps that need it: a tablet on a slow line
 * should not wait for the scale while wax hazes.
 */
const WAYS = {
	weights: async () => (await import('./WeightsField.svelte')).default,
	lots: async () => (await import('./LotFields.svelte')).default,
	choice: async () => (await import('./ChoiceField.svelte')).default,
	photos: async () => (await import('./PhotoField.svelte')).default,
	rows: async () => (await import('./RowsField.svelte')).default,
	nextCup: async () => (await import('./NextCup.svelte')).default,
	briefings: async () => (await import('./BriefingList.svelte')).default,
	wait: async () => (await import('./WaitClock.svelte')).default,
	hurts: async () => (await import('./WhatHurts.svelte')).default,
	places: async () => (await import('$lib/screen/mesh/StepPlaces.svelte')).default
};

type Name = keyof typeof WAYS;
type Piece<N extends Name> = Awaited<ReturnType<(typeof WAYS)[N]>>;

const here: { [N in Name]?: Piece<N> } = {};

/** A part, at once when it was brought before; a promise of it otherwise. For `{#await}`. */
export function piece<N extends Name>(name: N): Piece<N> | Promise<Piece<N>> {
	return (here[name] as Piece<N> | undefined) ?? load(name);
}

/** Loads what a step shows, so that all of it is drawn at once. */
export async function bringPieces(view: BenchView): Promise<void> {
	await Promise.all(piecesOf(view).map((name) => load(name)));
}

/** Loads all of them, for the time the line may drop: the clock of a later step must not be missing then. */
export async function bringAll(): Promise<void> {
	await Promise.all([
		...(Object.keys(WAYS) as Name[]).map((name) => load(name)),
		import('./AnswerNote.svelte'),
		import('./MixTimer.svelte'),
		import('./ClockNote.svelte'),
		import('./KeptActs.svelte')
	]);
}

async function load<N extends Name>(name: N): Promise<Piece<N>> {
	const found = (await WAYS[name]()) as Piece<N>;
	(here as Record<Name, unknown>)[name] = found;
	return found;
}

function piecesOf({ step, briefings, status, hurts }: BenchView): Name[] {
	const kinds = new Set(step.acts.flatMap(({ fields }) => fields.map(({ kind }) => kind)));
	const isShown: Record<Name, boolean> = {
		weights: kinds.has('weights'),
		lots: kinds.has('lots'),
		choice: kinds.has('choice'),
		// Every act takes them, nearly all without.
		photos: step.acts.some(({ type }) => type === 'trouble.reported'),
		rows: kinds.has('points') || kinds.has('dimensions'),
		nextCup: step.ahead !== null || step.acts.some(({ type }) => type === 'cup.applied'),
		briefings: briefings.some(({ isRead }) => !isRead),
		wait: step.window !== null,
		hurts: status === 'open' && hurts.hazards.length + hurts.ppe.length > 0,
		places: step.places !== null
	};
	return (Object.keys(isShown) as Name[]).filter((name) => isShown[name]);
}
