import type { PatternDraft } from './pattern-draft';
import { SHAPE_FORMS } from './shape-fields';

const LABELS: Record<string, string> = {
	name: 'Name',
	material: 'Pattern material',
	porosity: 'Porosity',
	undercutMm: 'Undercut',
	purpose: 'Purpose',
	partsWanted: 'Parts wanted',
	'detail.narrowestRecessMm': 'Narrowest recess',
	'detail.deepestRecessMm': 'Deepest recess',
	'detail.finestLineMm': 'Finest line',
	'body.solids': 'Solids',
	'body.mesh': 'Mesh',
	'body.exposedAreaCm2': 'Exposed area',
	'body.volumeMl': 'Volume',
	'body.lengthMm': 'Length',
	'body.widthMm': 'Width',
	'body.heightMm': 'Height',
	'body.steepestWallDeg': 'Steepest wall'
};

const PARTS: Record<string, string> = {
	name: 'name',
	on: 'stands on',
	against: 'touches',
	shape: 'shape',
	...Object.fromEntries(
		SHAPE_FORMS.flatMap(({ sizes }) => sizes.map(({ key, label }) => [key, label.toLowerCase()]))
	)
};

/** What a field of the pattern's form is called, with the name of the solid it belongs to. */
export function patternLabel(path: string, { body }: PatternDraft): string {
	const [, index, key = ''] = /^body\.solids\.(\d+)\.(\w+)/.exec(path) ?? [];
	if (index === undefined) return LABELS[path] ?? path;
	const name = body.solids[Number(index)]?.name.slice(0, 60) || `Solid ${Number(index) + 1}`;
	return `${name}, ${PARTS[key] ?? key}`;
}
