import { ENGLISH, type Words } from '../language/words';
import { flawsOf } from './changes/findings';
import type { ProcessEvent } from './events';

/** What an entry says beyond its label, in one line; empty when the label says it all. Lengths in mm, temperatures in °C. */
export function entryWords(event: ProcessEvent, w = ENGLISH): string {
	const said = w.log;
	switch (event.type) {
		case 'job.opened':
			return event.decided ? said.planDecided(event.decided.reason) : '';
		case 'briefing.read':
			return event.briefing;
		case 'room.read':
			return said.room(event);
		case 'cup.weighed':
			return Object.entries(event.massesG)
				.map(([part, massG]) => `${part} ${massG} g`)
				.join(', ');
		case 'hold.requested':
		case 'hold.signed':
			return [w.titles.holds[event.hold], event.note].filter(Boolean).join(': ');
		case 'hold.sentBack':
			return said.backTo({ phase: w.titles.phases[event.to], reason: event.reason });
		case 'tack.tested':
			return [said.results[event.result], event.place].filter(Boolean).join(', ');
		case 'thickness.measured':
			return said.points({
				n: event.points.length,
				thinnestMm: Math.min(...event.points.map((p) => p.thicknessMm))
			});
		case 'trouble.reported':
			return [w.titles.troubles[event.trouble], event.note].filter(Boolean).join(': ');
		case 'frame.fitted':
			return said.gap(Number(event.gapMm.toFixed(1)));
		case 'mold.inspected':
			return [said.verdicts[event.verdict], flawsOf(event, said).join(', '), event.note]
				.filter(Boolean)
				.join(': ');
		case 'mold.repaired':
			return event.done;
		case 'test.judged':
			return [`${said.tests[event.kind]} ${said.results[event.result]}`, event.note]
				.filter(Boolean)
				.join(': ');
		case 'mold.marked':
			return [event.mark, event.keys && said.keys(event.keys)].filter(Boolean).join('; ');
		case 'trouble.mended':
		case 'trouble.decided':
			return event.how;
		case 'deviation.decided':
			return `${event.accepted ? said.accepted : said.notYet}: ${event.note}`;
		default:
			return lineOf(event, w);
	}
}

function lineOf(event: ProcessEvent, w: Words): string {
	if ('result' in event) return w.log.results[event.result];
	if ('reason' in event) return event.reason;
	if ('shortReason' in event && event.shortReason) return event.shortReason;
	return 'note' in event ? (event.note ?? '') : '';
}
