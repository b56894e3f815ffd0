import { brushSchema, NARROWEST_BRUSH, type Brush } from '$lib/core/geometry/brush';
import { displayQuantity, type UnitSystem } from '$lib/core/quantity/display';
import { fieldText, measureOf } from '../form/measure';
import { readMeasured } from '../form/read-measured';

/** The narrowest brush as typed, in the shop's unit of length. */
export interface BrushDraft {
	width: string;
	reach: string;
}

export interface BrushRead {
	/** Null while something of it is wrong. */
	brush: Brush | null;
	errors: Partial<Record<keyof BrushDraft, string>>;
}

/** The fields as they start: with the brush given, or the usual one. */
export function brushDraft(system: UnitSystem, brush: Brush = NARROWEST_BRUSH): BrushDraft {
	const length = measureOf('length', system);
	return { width: fieldText(brush.widthMm, length), reach: fieldText(brush.reachMm, length) };
}

/** The brush that is typed, or what is wrong with it. */
export function readBrush(draft: BrushDraft, system: UnitSystem): BrushRead {
	const errors: BrushRead['errors'] = {};
	const read = (key: keyof BrushDraft, field: 'widthMm' | 'reachMm'): number => {
		const mm = readMeasured(draft[key], measureOf('length', system)) ?? Number.NaN;
		const { minValue, maxValue } = brushSchema.shape[field];
		if (!(mm >= minValue! && mm <= maxValue!)) {
			const [low, high] = [minValue!, maxValue!].map((value) =>
				displayQuantity(value, 'mm', system)
			);
			errors[key] = `“${draft[key].slice(0, 40)}” is not accepted; accepted: ${low} to ${high}.`;
		}
		return mm;
	};
	const brush = { widthMm: read('width', 'widthMm'), reachMm: read('reach', 'reachMm') };
	return { brush: Object.keys(errors).length > 0 ? null : brush, errors };
}
