import { SHELL_FRACTION } from '../rules/laid';
import { choice, confirm, note, number, type FieldMakers } from './field';

/** From the cured glove to the hard shell. */
export const SHELLING: FieldMakers = {
	'glove.tested': (c, { fields: { glove } }) => [
		choice('result', glove.is, [
			['cured', glove.cured],
			['soft', glove.soft]
		]),
		{
			...number('shoreA', glove.shoreA, 'Shore A', 0, 100, false),
			...(c.plan.glove.shoreA === null ? {} : { hint: glove.sheetSays(c.plan.glove.shoreA) })
		}
	],
	'glove.trimmed': (_c, { fields: { glove } }) => [
		confirm('edgeSquare', glove.edgeSquare),
		confirm('frameClean', glove.frameClean)
	],
	'glove.waxed': (c, { fields: { glove, planned } }) => [
		confirm('wholeBack', glove.wholeBack),
		{
			...number('coats', glove.coats, '', 1, 6),
			hint: planned(String(c.plan.shellRelease.waxCoats))
		}
	],
	'frame.refitted': (_c, w) => [
		choice('tight', w.fields.glove.frameBack, [
			['true', w.fields.glove.tight],
			['false', w.fields.glove.loose]
		]),
		note(w)
	],
	'shell.finished': (c, { fields: { shell } }) => [
		{
			...number('thicknessMm', shell.thinnest, 'mm', 0, 200),
			hint: shell.thinnestHint({
				plannedMm: Math.round(c.plan.shell.thicknessMm),
				leastMm: (SHELL_FRACTION * c.plan.shell.thicknessMm).toFixed(1)
			})
		},
		confirm('cornersFull', shell.corners),
		confirm('feetLevel', shell.feet)
	],
	'shell.tested': (_c, { fields: { shell } }) => [
		choice('result', shell.is, [
			['hard', shell.hard],
			['soft', shell.soft]
		])
	]
};
