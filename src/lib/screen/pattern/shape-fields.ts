import type { SolidDraft } from './pattern-draft';

export type SizeKey = Exclude<keyof SolidDraft, 'shape' | 'id' | 'name' | 'on' | 'against'>;

export interface ShapeForm {
	value: string;
	label: string;
	sizes: { key: SizeKey; label: string }[];
}

const length = { key: 'lengthMm', label: 'Length' } as const;
const width = { key: 'widthMm', label: 'Width' } as const;
const height = { key: 'heightMm', label: 'Height' } as const;
const diameter = { key: 'diameterMm', label: 'Diameter' } as const;
const bottom = { key: 'bottomDiameterMm', label: 'Diameter at the bottom' } as const;

/** What is asked of each shape. A cone is a frustum whose top has no width. */
export const SHAPE_FORMS: readonly ShapeForm[] = [
	{ value: 'box', label: 'Box', sizes: [length, width, height] },
	{ value: 'cylinder', label: 'Cylinder', sizes: [diameter, height] },
	{
		value: 'frustum',
		label: 'Frustum (cone cut off)',
		sizes: [bottom, { key: 'topDiameterMm', label: 'Diameter at the top' }, height]
	},
	{ value: 'cone', label: 'Cone', sizes: [bottom, height] },
	{ value: 'dome', label: 'Dome', sizes: [diameter, height] },
	{ value: 'wedge', label: 'Wedge', sizes: [length, width, height] },
	{
		value: 'ring',
		label: 'Ring',
		sizes: [
			{ key: 'outerDiameterMm', label: 'Outer diameter' },
			{ key: 'innerDiameterMm', label: 'Diameter of the hole' },
			height
		]
	}
];

/** Sizes of a shape; those of the box when the shape is none of ours. */
export function sizesOf(shape: string): ShapeForm['sizes'] {
	return (SHAPE_FORMS.find(({ value }) => value === shape) ?? SHAPE_FORMS[0])?.sizes ?? [];
}
