import type { UnitSystem } from '../quantity/display';
import { deviationText } from '../process/deviation-words';
import { openDeviations } from '../process/changes/deviations';
import { benchStep } from '../process/bench-step';
import { isOverdue } from '../process/cup-life';
import { isHotCup } from '../process/cup-mass';
import { eventSchema } from '../process/events';
import type { ProcessContext } from '../process/context';
import { contextOf, type JobState } from '../process/job';
import type { Plan } from '../plan/plan';
import type { Act } from '../process/step';
import { undoable } from '../process/undo';
import { statePath } from '../process/state-path';
import { jobSummary } from '../process/summary';
import { sectionOfJob } from '../process/section-of-job';
import { cupAtScale, saidAtScale } from './bench-cup';
import { ENGLISH, type Words } from '../language/words';
import {
	expiryIn,
	handlesIsocyanate,
	outOfDateWords,
	type Expiries
} from '../training/asked-training';
import { withBriefingTitles } from './briefing-titles';
import { containersOf } from './container-facts';
import { takenHazards } from '../materials/usual-hazards';
import { briefingsFor as slugsFor, isHazard } from '../materials/hazards';
import { hurtsOf } from './bench-hurts';
import { stepFigures } from './bench-figures';
import type { BenchTexts } from './bench-texts';
import { openTroubles, troubleText, withInstructions } from './trouble-texts';

/** Acts that are about no work a camera could see; whoever signs does so on another page. */
const WITHOUT_PHOTO = ['job.opened', 'briefing.read', 'job.takenOver', 'job.resumed', 'act.undone'];
/** Acts that the bench asks for a photo with, should there be one. */
const PHOTO_TYPES = eventSchema.options
	.map(({ shape }): string => shape.type.value)
	.filter((type) => !WITHOUT_PHOTO.includes(type));

/** A job as far as the bench needs it. */
interface BenchJob {
	id: string;
	plan: Plan;
	headSeq: number;
	state: JobState;
}

interface Looking {
	viewer: { id: string; name: string; role: string };
	names: Record<string, string>;
	at: string;
	zone: string;
	system: UnitSystem;
	texts: BenchTexts;
	/** This person's training on isocyanates, under their id, when the shop asks for it in date; else null. */
	training: Expiries | null;
	/** The reader's language; English when left out. */
	words?: Words;
	/** One id for the act that comes next, so that a double tap is one entry. */
	actId: string;
}

/** Everything the bench shows of a job to one person at one instant. */
export function benchView(
	job: BenchJob,
	{ viewer, names, at, zone, system, texts, training, words: w = ENGLISH, actId }: Looking
) {
	const { state } = job;
	const c = contextOf(state);
	const step = benchStep(state, { by: viewer.id, at }, w);
	const cup = cupAtScale(state, step);
	const isAtScale = step.slug === 'weigh-and-mix' && !isOverdue(c, at);
	const text = texts.steps[step.slug];
	const { status } = jobSummary(state);
	const last = state.snapshot.status === 'active' ? undoable(state, viewer.id) : null;

	return {
		chrome: 'bench' as const,
		/** The whole page speaks the reader's language. */
		isTranslated: true as const,
		textLang: texts.lang,
		jobId: job.id,
		title: state.title,
		seq: job.headSeq,
		actId,
		now: at,
		zone,
		system,
		viewer: { ...viewer, locale: w.locale },
		names,
		status,
		isDemo: job.plan.inputs.shop.isDemo,
		step: {
			...step,
			what: (isAtScale && saidAtScale(cup, w)) || step.what,
			acts: step.acts.map((act) =>
				inWords(
					asked(
						withInstructions(act, texts.troubles),
						c,
						training && outOfDateWords(expiryIn(training, viewer.id), at, w)
					),
					names,
					texts.briefings,
					w
				)
			)
		},
		/** Changes when the work moves on; what was typed belongs to one step. */
		stepKey: [
			statePath(state.snapshot),
			c.coatIndex,
			c.roundIndex,
			c.cupsLaid,
			c.sealerCoats,
			c.waxCoats,
			c.filmPasses,
			c.cup?.weighedAt ?? '',
			c.cupAhead?.mixedAt ?? c.cupAhead?.weighedAt ?? ''
		].join(' '),
		worker: c.worker,
		hurts: hurtsOf(text, c.phase, job.plan, w, isHotCup(c)),
		text: text && {
			slug: text.slug,
			title: text.title,
			html: text.html,
			tools: text.tools,
			checks: text.checks,
			wrongSigns: text.wrongSigns
		},
		cup,
		figures: stepFigures(state, step, w),
		readabilityG: job.plan.inputs.shop.scaleReadabilityG,
		briefings: briefingsFor(job, viewer.id, texts.briefings, w),
		room: c.room && {
			at: c.room.at,
			temperatureC: c.room.temperatureC,
			humidityPct: c.room.humidityPct,
			extractionOn: c.room.extractionOn
		},
		dimensions: (['length', 'width', 'height'] as const).map((name) => ({
			name: w.fields.inspect.overall[name],
			plannedMm: Math.round(job.plan.surface[`${name}Mm`] * 10) / 10
		})),
		trouble: c.trouble && {
			...c.trouble,
			...troubleText(c.trouble.id, c, texts.troubles)
		},
		/** That one and others that wait too, what hurts first. */
		openTroubles: openTroubles(c, texts.troubles, w),
		sentBack: c.sentBack,
		openDeviations: openDeviations(c.deviations).map((deviation) => ({
			at: deviation.at,
			what: deviationText(deviation, w)
		})),
		section: sectionOfJob(c, w),
		photoTypes: PHOTO_TYPES,
		undo: last && { id: last.id, label: w.entries[last.event.type], at: last.event.at }
	};
}

export type BenchView = ReturnType<typeof benchView>;

/** The act with what keeps a person from it whose training is not in date: the words, or null when it is. */
function asked(act: Act, c: ProcessContext, outOfDate: string | null): Act {
	if (outOfDate === null || !handlesIsocyanate(act.type, c)) return act;
	return {
		...act,
		blocked: [act.blocked, outOfDate].filter((words) => words !== null).join('; '),
		why: [...act.why, 'trainingInDate']
	};
}

/** People and briefings by name, wherever an act asks for one. */
function inWords(
	act: Act,
	names: Record<string, string>,
	briefings: BenchTexts['briefings'],
	w: Words
): Act {
	if (act.blocked !== null)
		return { ...act, blocked: withBriefingTitles(act.blocked, briefings, w) };
	if (!act.fields.some(({ name }) => name === 'mixedBy')) return act;
	const fields = act.fields.map((field) => ({
		...field,
		...(field.choices
			? { choices: field.choices.map((c) => ({ ...c, label: names[c.value] ?? c.label })) }
			: {})
	}));
	return { ...act, fields };
}

/** The briefings this mold asks for; with text and labels while this person has not read them. */
function briefingsFor(
	job: BenchJob,
	personId: string,
	briefings: BenchTexts['briefings'],
	w: Words
) {
	const read = contextOf(job.state).briefingsRead[personId] ?? [];
	const isOpen = job.plan.briefings.some((slug) => !read.includes(slug));
	const containers = isOpen ? containersOf(job.plan, w.containers) : [];
	return job.plan.briefings.flatMap((slug) => {
		const text = briefings[slug];
		if (!text) return [];
		const { title, summary, readMin, signs, html, hash } = text;
		const isRead = read.includes(slug);
		const list = isRead ? [] : containers.filter(({ id }) => isTold(id, slug, job.plan));
		return [
			{
				slug,
				title,
				summary,
				readMin,
				signs,
				hash,
				isRead,
				html: isOpen && !isRead ? html : '',
				containers: list.length > 0 && {
					title: w.containers.title,
					how: w.containers.how,
					list
				}
			}
		];
	});
}

/** Does this briefing tell of what the material does? First aid tells of all of them, and so of none. */
function isTold(materialId: string, slug: string, { inputs }: Plan): boolean {
	const sheet = Object.values(inputs.materials).find(({ id }) => id === materialId);
	return (
		sheet !== undefined &&
		slug !== 'first-aid-and-spill' &&
		slugsFor(takenHazards(sheet).filter(isHazard)).some((told) => told === slug)
	);
}
