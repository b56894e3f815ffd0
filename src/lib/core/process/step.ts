import type { Mixing } from './cup-life';
import type { HoldId, EventType } from './events';
import type { StepPlaces } from './places-at-step';

/** One reading to take or thing to confirm before an act can be posted. */
export interface ActField {
	/** Key in the event's data. */
	name: string;
	label: string;
	kind:
		| 'number'
		| 'text'
		| 'long text'
		| 'confirm'
		| 'choice'
		| 'weights'
		| 'lots'
		| 'points'
		| 'dimensions';
	unit?: string;
	min?: number;
	max?: number;
	/** For "choice": value and what the person reads. */
	choices?: Array<{
		value: string;
		label: string;
		/** What to do about it, shown once it is chosen: one line, and HTML of our own. */
		more?: { act: string; html: string };
	}>;
	/** For "weights" and "lots": part names in pouring order, with the target. */
	weights?: Array<{ part: string; targetG: number }>;
	required: boolean;
	hint?: string;
	preset?: string | number | boolean;
}

/** Something the machine would take now, or will take from an instant on. */
export interface Act {
	type: EventType;
	label: string;
	/** The one act that moves the work on; the screen shows it large. */
	primary: boolean;
	/** Pressed and held, or confirmed twice. */
	irreversible: boolean;
	/** Only a supervisor other than the worker, with a PIN. */
	signature: boolean;
	/** Not before this instant. */
	fromAt: string | null;
	/** Why it can't be done, when it can't. */
	blocked: string | null;
	/** Names of what stands in its way; empty when nothing does. */
	why: string[];
	fields: ActField[];
	/** Data that goes with the act unasked, for example which hold point. */
	fixed: Record<string, unknown>;
}

/** Who looks, and when. */
export interface Viewer {
	by: string;
	at: string;
}

/** A window: wait until it opens, act before it closes. */
export interface Window {
	label: string;
	sinceAt: string;
	opensAt: string;
	closesAt: string | null;
	/** What happens if it is missed. */
	after: string;
}

export interface Amount {
	label: string;
	massG: number;
	/** Figure key in the plan, when it has one. */
	figure?: string;
}

/** The cup that is prepared while another is laid. */
export interface CupAhead {
	/** 1-based number in its coat or round, and how many that takes. */
	number: number;
	of: number;
	massG: number;
	/** Parts that are not in it yet. */
	missing: string[];
	isOnRatio: boolean;
	/** When its parts met; null while they stand apart. */
	metAt: string | null;
	mixedAt: string | null;
	/** When its pot life ends, once the parts have met. */
	closesAt: string | null;
}

/** The bench's one thing at a time: a projection of plan and state, without a clock. */
export interface BenchStep {
	phase: string;
	/** Slug of the step's text in the content. */
	slug: string;
	title: string;
	/** One line, imperative. */
	what: string;
	amounts: Amount[];
	window: Window | null;
	/** A second one that runs meanwhile. */
	windowBeside: Window | null;
	/** While the cup in hand is mixed. */
	mixing: Mixing | null;
	acts: Act[];
	ahead: CupAhead | null;
	/** What the pattern's mesh says to this step; null for most, and for patterns without one. */
	places: StepPlaces | null;
	/** Position within the whole job, for the progress drawing. */
	progress: { done: number; of: number };
	/** Titles of the next two steps. */
	next: string[];
	hold: HoldId | null;
	/** Index in plan.coats of the coat at work, or null. */
	coatIndex: number | null;
	roundIndex: number | null;
}
