import { entryWords } from '$lib/core/process/entry-words';
import type { ProcessEvent } from '$lib/core/process/events';
import { briefings } from './content';

/** What an entry says beyond its label, in one line, with briefings by their titles. */
export function wordsOf(event: ProcessEvent): string {
	if (event.type !== 'briefing.read') return entryWords(event);
	return briefings.get(event.briefing)?.title ?? event.briefing;
}
