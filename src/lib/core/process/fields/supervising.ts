import { HOLDS } from '../holds';
import { PHASE_TITLES } from '../titles';
import { choice, longText, note, type FieldMakers } from './field';

/** Hold points and decisions. */
export const SUPERVISING: FieldMakers = {
	'hold.requested': () => [longText('note', 'Anything the supervisor should look at', false)],
	'hold.sentBack': (c) => [
		choice(
			'to',
			'Send back to',
			c.hold ? HOLDS[c.hold].sendBack.map((to): [string, string] => [to, PHASE_TITLES[to]]) : []
		),
		longText('reason', 'What has to be put right', true)
	],
	'hold.signed': () => [note],
	'mold.rejected': () => [longText('reason', 'Why the mold cannot be used', true)],
	'deviation.decided': () => [
		choice('accepted', 'Decision', [
			['true', 'Accept: work goes on'],
			['false', 'Not yet: to be put right']
		]),
		longText('note', 'Reason', true)
	]
};
