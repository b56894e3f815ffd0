import { entries } from '../language/en/entries';
import type { EventType } from './events';

/** What an entry is called in English once it stands in the log; the types hold it to the events there are. */
export const ENTRY_LABELS: Readonly<Record<EventType, string>> = entries;
