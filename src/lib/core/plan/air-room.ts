import type { LimitSet } from '../laws/exposure-limits';
import { defaultInput } from './defaults';
import { computed, entered, type Draft } from './trace';

/** Air of the room as all steps share it. */
export interface AirRoom {
	roomM3: number;
	flowM3PerH: number;
	mixingFactor: number;
	limitSets: readonly LimitSet[];
}

export const mixingInput = ({ inputs }: Draft, { mixingFactor }: AirRoom) =>
	inputs.shop.mixingFactor === undefined
		? defaultInput('K', 'mixingFactor')
		: entered('K', 'mixing factor', mixingFactor, 'count');

export const volumeInput = ({ roomM3 }: AirRoom) =>
	computed('V', 'volume of the room', roomM3, 'm3', 'air.roomM3');

export const flowInput = ({ flowM3PerH }: AirRoom) =>
	computed('Q', 'outdoor air of the room', flowM3PerH, 'm3/h', 'air.flowM3PerH');
