import { coatAtWork, type ProcessContext } from '../context';
import { secondsBetween } from '../instant';
import { rules } from './rule';

/** Hours for which a reading of the room is taken as true; common practice, no source. */
const ROOM_READING_S = 12 * 3600;

function roomFault(c: ProcessContext, at: string): string | null {
	if (!c.room) return 'read the room first: temperature, humidity, extraction';
	if (secondsBetween(c.room.at, at) > ROOM_READING_S)
		return 'the room was read over 12 hours ago: read it again';
	if (!c.room.extractionOn) return 'switch the extraction on, then read the room again';
	const { materials } = c.plan.inputs;
	const coating = coatAtWork(c)?.kind === 'detail' ? materials.detail : materials.build;
	const range = (c.phase === 'shell' ? materials.shell : coating)?.useTemperature;
	const roomC = c.room.temperatureC;
	return range && (roomC < range.minC || roomC > range.maxC)
		? `the room is ${roomC} °C; the data sheet asks for ${range.minC} to ${range.maxC} °C`
		: null;
}

/** The room: read, ventilated, within the data sheet's range. */
export const ROOM = rules({
	roomFits: {
		holds: (c, e) => roomFault(c, e.at) === null,
		says: (c, e) => roomFault(c, e.at) ?? ''
	}
});
