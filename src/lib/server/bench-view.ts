import type { UnitSystem } from '$lib/core/quantity/display';
import { ENTRY_LABELS } from '$lib/core/process/entry-labels';
import { openDeviations } from '$lib/core/process/changes/deviations';
import { benchStep } from '$lib/core/process/bench-step';
import { eventSchema } from '$lib/core/process/events';
import { contextOf } from '$lib/core/process/job';
import type { Act } from '$lib/core/process/step';
import { undoable } from '$lib/core/process/undo';
import { statePath } from '$lib/core/process/state-path';
import { jobSummary } from '$lib/core/process/summary';
import { TROUBLES } from '$lib/core/process/troubles';
import { sectionOfJob } from '$lib/core/process/section-of-job';
import { newActId } from './act-id';
import { cupAtScale } from './bench-cup';
import { withBriefingTitles } from './briefing-titles';
import { hurtsOf } from './bench-hurts';
import { stepFigures } from './bench-figures';
import { briefings, steps, troubles } from './content';
import type { JobFile } from './job-file';

/** Acts that photos may go with. */
const PHOTO_TYPES = eventSchema.options
	.filter(({ shape }) => 'photos' in shape)
	.map(({ shape }): string => shape.type.value);

interface Looking {
	viewer: { id: string; name: string; role: string };
	names: Record<string, string>;
	at: string;
	zone: string;
	system: UnitSystem;
}

/** Everything the bench shows of a job to one person at one instant. */
export function benchView(job: JobFile, { viewer, names, at, zone, system }: Looking) {
	const { state } = job;
	const c = contextOf(state);
	const step = benchStep(state, { by: viewer.id, at });
	const text = steps.get(step.slug);
	const { status } = jobSummary(state);
	const last = state.snapshot.status === 'active' ? undoable(state, viewer.id) : null;

	return {
		chrome: 'bench' as const,
		jobId: job.id,
		title: state.title,
		seq: job.headSeq,
		/** One id for each act this page may post, so that a double tap is one entry. */
		actId: newActId(),
		now: at,
		zone,
		system,
		viewer,
		names,
		status,
		isDemo: job.plan.inputs.shop.isDemo,
		step: { ...step, acts: step.acts.map((act) => inWords(act, names)) },
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
		hurts: hurtsOf(step.slug, c.phase, job.plan),
		text: text && {
			slug: text.slug,
			title: text.title,
			html: text.html,
			tools: text.tools,
			checks: text.checks,
			wrongSigns: text.wrongSigns
		},
		cup: cupAtScale(state, step),
		figures: stepFigures(state, step),
		readabilityG: job.plan.inputs.shop.scaleReadabilityG,
		briefings: briefingsFor(job, viewer.id),
		room: c.room && {
			at: c.room.at,
			temperatureC: c.room.temperatureC,
			humidityPct: c.room.humidityPct,
			extractionOn: c.room.extractionOn
		},
		dimensions: (['length', 'width', 'height'] as const).map((name) => ({
			name: `Overall ${name}`,
			plannedMm: Math.round(job.plan.surface[`${name}Mm`] * 10) / 10
		})),
		trouble: c.trouble && { ...c.trouble, ...troubleText(c.trouble.id) },
		sentBack: c.sentBack,
		openDeviations: openDeviations(c.deviations),
		section: sectionOfJob(c),
		photoTypes: PHOTO_TYPES,
		undo: last && { id: last.id, label: ENTRY_LABELS[last.event.type], at: last.event.at }
	};
}

export type BenchView = ReturnType<typeof benchView>;

/** People and briefings by name, wherever an act asks for one. */
function inWords(act: Act, names: Record<string, string>): Act {
	if (act.blocked !== null) return { ...act, blocked: withBriefingTitles(act.blocked) };
	if (!act.fields.some(({ name }) => name === 'mixedBy')) return act;
	const fields = act.fields.map((field) => ({
		...field,
		...(field.choices
			? { choices: field.choices.map((c) => ({ ...c, label: names[c.value] ?? c.label })) }
			: {})
	}));
	return { ...act, fields };
}

/** The briefings this mold asks for, with their text while this person has not read them all. */
function briefingsFor(job: JobFile, personId: string) {
	const read = contextOf(job.state).briefingsRead[personId] ?? [];
	const isOpen = job.plan.briefings.some((slug) => !read.includes(slug));
	return job.plan.briefings.flatMap((slug) => {
		const text = briefings.get(slug);
		if (!text) return [];
		const { title, summary, readMin, signs, html, hash } = text;
		const isRead = read.includes(slug);
		return [
			{ slug, title, summary, readMin, signs, hash, isRead, html: isOpen && !isRead ? html : '' }
		];
	});
}

function troubleText(id: keyof typeof TROUBLES) {
	const text = troubles.get(id);
	return {
		title: text?.title ?? '',
		sign: text?.sign ?? '',
		act: text?.act ?? '',
		severity: text?.severity ?? 'stop',
		html: text?.html ?? '',
		needsAnother: TROUBLES[id].needsAnother
	};
}
