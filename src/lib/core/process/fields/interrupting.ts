import { ENGLISH } from '../../language/words';
import type { ProcessContext } from '../context';
import { troublesIn, waysBackFrom, type WayBack } from '../troubles';
import { choice, longText, note, text, type FieldMakers } from './field';

/** A way back from the trouble at hand, as a person chooses it. */
export function wayBackLabel(
	way: WayBack,
	{ trouble }: Pick<ProcessContext, 'trouble'>,
	{ fields: { trouble: said }, titles } = ENGLISH
): string {
	if (trouble?.id === 'recoat-missed') return said.abradeThenOn;
	if (way === 'resume') return said.resume;
	return way === 'redo coat' ? said.redo : said.backTo(titles.phases[way]);
}

/** What can come in between at any time. */
export const INTERRUPTING: FieldMakers = {
	'trouble.reported': (c, { fields: { trouble }, titles }) => [
		choice(
			'trouble',
			trouble.what,
			troublesIn(c.phase).map((id): [string, string] => [id, titles.troubles[id]])
		),
		text('place', trouble.where, false),
		longText('note', trouble.see, false, trouble.seeHint)
	],
	'test.judged': (_c, w) => {
		const { trouble } = w.fields;
		return [
			choice('kind', trouble.made, [
				['test cup', trouble.cup],
				['test patch', trouble.patch]
			]),
			choice('result', trouble.shows, [
				['good', trouble.good],
				['bad', trouble.bad]
			]),
			note(w)
		];
	},
	'trouble.mended': (c, w) => [
		longText('how', w.fields.trouble.done, true),
		choice(
			'wayBack',
			w.fields.trouble.wayBack,
			waysBackFrom(c).map((way): [string, string] => [way, wayBackLabel(way, c, w)])
		)
	],
	'job.paused': (_c, { fields }) => [longText('reason', fields.why, true)],
	'job.takenOver': (_c, w) => [note(w)],
	'job.abandoned': (_c, { fields }) => [longText('reason', fields.whyAbandoned, true)],
	'act.undone': (_c, { bench }) => [longText('reason', bench.whyUndone, true)]
};
