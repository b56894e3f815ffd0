import { HOLDS } from '../holds';
import { choice, longText, note, type FieldMakers } from './field';

/** Hold points and decisions. */
export const SUPERVISING: FieldMakers = {
	'hold.requested': (_c, { fields }) => [longText('note', fields.hold.lookAt, false)],
	'hold.sentBack': (c, { fields: { hold }, titles }) => [
		choice(
			'to',
			hold.backTo,
			c.hold ? HOLDS[c.hold].sendBack.map((to): [string, string] => [to, titles.phases[to]]) : []
		),
		longText('reason', hold.putRight, true)
	],
	'hold.signed': (_c, w) => [note(w)],
	'mold.rejected': (_c, { fields }) => [longText('reason', fields.hold.whyRejected, true)],
	'deviation.decided': (_c, { fields: { hold } }) => [
		choice('accepted', hold.decision, [
			['true', hold.accept],
			['false', hold.notYet]
		]),
		longText('note', hold.reason, true)
	]
};
