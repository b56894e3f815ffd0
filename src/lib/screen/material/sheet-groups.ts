import type { KindField } from './kind-fields';
import type { SheetDraft } from './sheet-draft';

/** Fields that hold one number and nothing else. */
type PlainKey = {
	[Key in keyof SheetDraft]: SheetDraft[Key] extends string ? Key : never;
}[keyof SheetDraft];

interface PlainField<Key extends PlainKey> {
	key: Key;
	label: string;
	hint?: string;
}

export const CURED: readonly PlainField<PlainKey & KindField>[] = [
	{ key: 'shoreA', label: 'Shore A', hint: 'Rubbers' },
	{ key: 'shoreD', label: 'Shore D', hint: 'Hard shells' },
	{ key: 'linearShrinkagePct', label: 'Linear shrinkage' },
	{ key: 'elongationPct', label: 'Elongation at break' },
	{ key: 'tearNPerMm', label: 'Tear strength' },
	{ key: 'modulusMPa', label: 'Young’s modulus', hint: 'Shells' },
	{ key: 'heatLimitC', label: 'Stands heat up to', hint: 'For molten castings' },
	{ key: 'meltsAtC', label: 'Melts at', hint: 'Waxes' },
	{ key: 'poursAtC', label: 'Poured at', hint: 'Waxes' }
];

export const COVERAGE: readonly PlainField<PlainKey & KindField>[] = [
	{ key: 'spreadGPerM2', label: 'One coat takes', hint: 'Wax, film, sealer' },
	{ key: 'arealG', label: 'Mass per area', hint: 'Cloth or mat' }
];

export const MIXED: readonly PlainField<(PlainKey & KindField) | 'mixedDensityGPerMl'>[] = [
	{ key: 'mixedDensityGPerMl', label: 'Mixed density' },
	{ key: 'mixedViscosityPaS', label: 'Mixed viscosity', hint: 'Free-flowing materials' },
	{
		key: 'yieldStressPa',
		label: 'Yield stress',
		hint: 'Thixotropic materials: what keeps them on a wall'
	},
	{ key: 'mixS', label: 'Mixing time' },
	{
		key: 'ratioToleranceFraction',
		label: 'Ratio may be off by',
		hint: 'The data sheet’s tolerance; 2% when left blank'
	}
];

export const WAITS = [
	{ key: 'tackFree', label: 'Almost tack-free', hint: 'When the next coat may go on' },
	{ key: 'recoatCloses', label: 'Recoat window shuts', hint: 'Counted from laying' },
	{ key: 'demold', label: 'Demold', hint: 'Cure before it is moved' },
	{ key: 'dry', label: 'Hazes or dries', hint: 'Between coats of a release or sealer' }
] as const;

const LABELS: Record<string, string> = {
	name: 'Name',
	maker: 'Maker',
	kind: 'Used as',
	family: 'Family',
	body: 'Body',
	parts: 'Parts',
	ratioByWeight: 'Ratio by weight',
	ratioByVolume: 'Ratio by volume',
	potLife: 'Pot life',
	kits: 'Kits',
	shelfLifeDays: 'Shelf life',
	useTemperature: 'Room temperature',
	hazardStatements: 'Hazard statements',
	hazards: 'Hazards',
	sdsExcludesUsual: 'Usual hazards excluded',
	inhibitedBy: 'Inhibited by',
	note: 'Note',
	volatiles: 'What evaporates',
	substance: 'substance',
	fraction: 'share',
	heatJPerG: 'Heat of reaction',
	specificHeatJPerGK: 'Heat capacity',
	part: 'name',
	densityGPerMl: 'density',
	viscosityPaS: 'viscosity',
	timeS: 'time',
	atC: 'temperature',
	massG: 'mass',
	price: 'price',
	second: 'second point',
	minC: 'lowest',
	maxC: 'highest',
	...Object.fromEntries([...CURED, ...COVERAGE, ...MIXED, ...WAITS].map((f) => [f.key, f.label]))
};

/** What a field of the data sheet's form is called: "Parts 2, density". */
export function sheetLabel(path: string): string {
	return path
		.split('.')
		.map((key) => (/^\d+$/.test(key) ? String(Number(key) + 1) : (LABELS[key] ?? key)))
		.join(', ')
		.replace(/, (\d)/g, ' $1');
}
