import { acts } from '../language/en/acts';
import type { EventType } from './events';

/** What a person reads on the button of an act in English; the types hold it to the events there are. */
export const ACT_LABELS: Readonly<Record<EventType, string>> = acts;
