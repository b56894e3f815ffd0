import type { AirStep } from './air-plot';

/** Kinds of limits as a person reads them. */
export const LIMIT_KINDS: Readonly<Record<AirStep['limits'][number]['kind'], string>> = {
	average: 'eight-hour average',
	short: 'short time',
	ceiling: 'never above'
};
