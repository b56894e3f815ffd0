import { flawsOf, VERDICTS } from './changes/findings';
import type { ProcessEvent } from './events';
import { HOLDS } from './holds';
import { PHASE_TITLES, TROUBLE_TITLES } from './titles';

/** What an entry says beyond its label, in one line; empty when the label says it all. Lengths in mm, temperatures in °C. */
export function entryWords(event: ProcessEvent): string {
	switch (event.type) {
		case 'briefing.read':
			return event.briefing;
		case 'room.read':
			return `${event.temperatureC} °C, ${event.humidityPct}%, extraction ${event.extractionOn ? 'on' : 'off'}`;
		case 'cup.weighed':
			return Object.entries(event.massesG)
				.map(([part, massG]) => `${part} ${massG} g`)
				.join(', ');
		case 'hold.requested':
		case 'hold.signed':
			return [HOLDS[event.hold].title, event.note].filter(Boolean).join(': ');
		case 'hold.sentBack':
			return `Back to ${PHASE_TITLES[event.to]}: ${event.reason}`;
		case 'tack.tested':
			return [event.result, event.place].filter(Boolean).join(', ');
		case 'thickness.measured':
			return `${event.points.length} places, thinnest ${Math.min(...event.points.map((p) => p.thicknessMm))} mm`;
		case 'trouble.reported':
			return [TROUBLE_TITLES[event.trouble], event.note].filter(Boolean).join(': ');
		case 'frame.fitted':
			return `gap ${Number(event.gapMm.toFixed(1))} mm`;
		case 'mold.inspected':
			return [VERDICTS[event.verdict], flawsOf(event).join(', '), event.note]
				.filter(Boolean)
				.join(': ');
		case 'mold.repaired':
			return event.done;
		case 'test.judged':
			return [`${event.kind} ${event.result}`, event.note].filter(Boolean).join(': ');
		case 'mold.marked':
			return [event.mark, event.keys && `keys: ${event.keys}`].filter(Boolean).join('; ');
		case 'trouble.mended':
		case 'trouble.decided':
			return event.how;
		case 'deviation.decided':
			return `${event.accepted ? 'Accepted' : 'Not yet'}: ${event.note}`;
		default:
			return lineOf(event);
	}
}

function lineOf(event: ProcessEvent): string {
	if ('result' in event) return event.result;
	if ('reason' in event) return event.reason;
	if ('shortReason' in event && event.shortReason) return event.shortReason;
	return 'note' in event ? (event.note ?? '') : '';
}
