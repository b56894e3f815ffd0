import type { NumberFields } from '../form/read-entries';

/** Number fields of the pattern's form and how each is typed. */
export const PATTERN_NUMBERS: NumberFields = {
	undercutMm: 'length',
	partsWanted: 'count',
	'detail.narrowestRecessMm': 'length',
	'detail.deepestRecessMm': 'length',
	'detail.finestLineMm': 'length',
	'body.exposedAreaCm2': 'area',
	'body.volumeMl': 'volume',
	'body.lengthMm': 'length',
	'body.widthMm': 'length',
	'body.heightMm': 'length',
	'body.steepestWallDeg': 'degrees',
	'body.solids.*.lengthMm': 'length',
	'body.solids.*.widthMm': 'length',
	'body.solids.*.heightMm': 'length',
	'body.solids.*.diameterMm': 'length',
	'body.solids.*.bottomDiameterMm': 'length',
	'body.solids.*.topDiameterMm': 'length',
	'body.solids.*.outerDiameterMm': 'length',
	'body.solids.*.innerDiameterMm': 'length',
	'body.solids.*.against.*.areaCm2': 'area'
};
