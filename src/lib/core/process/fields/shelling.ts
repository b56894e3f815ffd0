import { SHELL_FRACTION } from '../rules/laid';
import { choice, confirm, note, number, type FieldMakers } from './field';

/** From the cured glove to the hard shell. */
export const SHELLING: FieldMakers = {
	'glove.tested': (c) => [
		choice('result', 'The glove is', [
			['cured', 'Cured: springs back, no dent stays'],
			['soft', 'Still soft or tacky']
		]),
		{
			...number('shoreA', 'Shore A, if you have a gauge', 'Shore A', 0, 100, false),
			...(c.plan.glove.shoreA === null ? {} : { hint: `the sheet says ${c.plan.glove.shoreA}` })
		}
	],
	'glove.trimmed': () => [
		confirm('edgeSquare', 'Glove edge is square and clean: nothing to pinch'),
		confirm('frameClean', 'Frame is scraped and sanded clean')
	],
	'glove.waxed': (c) => [
		confirm('wholeBack', 'Wax covers the whole back, corners and walls too'),
		{
			...number('coats', 'Coats of wax', '', 1, 6),
			hint: `planned ${c.plan.shellRelease.waxCoats}`
		}
	],
	'frame.refitted': () => [
		choice('tight', 'The frame went back', [
			['true', 'Tight: little shrinkage'],
			['false', 'Loose: the glove has shrunk']
		]),
		note
	],
	'shell.finished': (c) => [
		{
			...number('thicknessMm', 'Thickness at the thinnest place', 'mm', 0, 200),
			hint: `planned ${Math.round(c.plan.shell.thicknessMm)} mm; at least ${(SHELL_FRACTION * c.plan.shell.thicknessMm).toFixed(1)} mm`
		},
		confirm('cornersFull', 'Corners and walls are full'),
		confirm('feetLevel', 'Feet are built: it will stand level upside down')
	],
	'shell.tested': () => [
		choice('result', 'The shell is', [
			['hard', 'Hard: a nail leaves no mark, it rings'],
			['soft', 'Still soft or warm']
		])
	]
};
