import { createContext } from 'svelte';
import type { Attachment } from 'svelte/attachments';
import type { CupAtScale } from '$lib/core/process/cup-advice';
import type { Figure } from '$lib/core/quantity/figure';
import type { UnitSystem } from '$lib/core/quantity/display';

/** What became of the last act that was not written. */
export interface Answer {
	type: string;
	label: string;
	refusal: string | null;
	values: Record<string, string>;
	errors: Record<string, string>;
	/** What is asked before it is entered all the same. */
	question?: string | null;
}

/** What every form of the bench needs from its page. Read through functions, so that it stays current. */
export interface Bench {
	jobId: string;
	seq: () => number;
	/** Goes with each act, so that a double tap is one entry. */
	actId: () => string;
	stepKey: () => string;
	now: () => string;
	zone: string;
	/** The units in which this shop types lengths and temperatures. */
	system: UnitSystem;
	cup: () => CupAtScale | null;
	/** How a part's target was found, where the plan has its trace. */
	figureOf: (part: string) => Figure | undefined;
	dimensions: () => Array<{ name: string; plannedMm: number }>;
	/** The refused answer to an act of this type, while it still belongs to the step in view. */
	answerTo: (type: string) => Answer | null;
	/** Posts the form without leaving the page, where the device can. */
	enhance: Attachment<HTMLFormElement>;
	/** Lets go of a refused answer, and of what was typed with it. */
	letGo: () => void;
	isSending: () => boolean;
	draft: (type: string) => Record<string, string> | null;
	keepDraft: (type: string, values: Record<string, string>) => void;
	/** Whether photos may go with an act of this type. */
	takesPhotos: (type: string) => boolean;
	sendPhoto: (file: File) => Promise<{ ok: true; hash: string } | { ok: false; reason: string }>;
}

export const [getBench, setBench] = createContext<Bench>();
