import { ENGLISH, type Words } from '../../language/words';
import { coatAtWork, isSince, type ProcessContext } from '../context';
import { secondsBetween } from '../instant';
import { ofSurface } from '../room-check';
import { rules } from './rule';

/** Hours for which a reading of the room is taken as true; common practice, no source. */
const ROOM_READING_S = 12 * 3600;

function roomFault(c: ProcessContext, at: string, { rules: said }: Words): string | null {
	if (!c.room) return said.readRoom;
	if (secondsBetween(c.room.at, at) > ROOM_READING_S) return said.roomOld;
	if (!c.room.extractionOn) return said.extractionOff;
	if (isSince(c, 6) && ofSurface(c, c.room).length > 0) return said.surfaceCold;
	const { materials } = c.plan.inputs;
	const coating = coatAtWork(c)?.kind === 'detail' ? materials.detail : materials.build;
	const range = (c.phase === 'shell' ? materials.shell : coating)?.useTemperature;
	const roomC = c.room.temperatureC;
	return range && (roomC < range.minC || roomC > range.maxC)
		? said.roomOutside({ roomC, minC: range.minC, maxC: range.maxC })
		: null;
}

/** The room: read, ventilated, within the data sheet's range. */
export const ROOM = rules({
	roomFits: {
		holds: (c, e) => roomFault(c, e.at, ENGLISH) === null,
		says: (c, e, w) => roomFault(c, e.at, w) ?? ''
	},
	/** The first coat goes on a pattern that somebody has laid a thermometer to. From version 6 on. */
	roomSurfaceRead: {
		holds: (c, e) =>
			c.hold !== 'readyToCoat' ||
			!isSince(c, 6) ||
			(c.room?.surfaceC !== undefined && secondsBetween(c.room.at, e.at) <= ROOM_READING_S),
		says: (_c, _e, { rules: said }) => said.readSurface
	}
});
