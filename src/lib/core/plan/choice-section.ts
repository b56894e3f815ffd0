import { liftAdvice } from '../laws/lifting-advice';
import type { LiftingLimit } from '../laws/lifting';
import type { ProcessChoice } from '../laws/process-choice';
import { processChoiceLaw } from '../laws/process-choice';
import { processEstimateLaw } from '../laws/process-estimate';
import { processScaleLaw } from '../laws/process-scale';
import { displayQuantity, type UnitSystem } from '../quantity/display';
import type { Plan } from './plan';
import { DAYS_NOTE, type EstimateFollows, type Follows } from './block-ranges';
import { computed, highEnd, inherited, traced, type Draft } from './trace';

type ChoiceSection = NonNullable<Plan['choice']>;

interface ChoiceFacts {
	process: ProcessChoice;
	estimateAt: EstimateFollows;
	evenAt: Follows;
}

/** Glove, solid block and poured layer side by side, and where each stops making sense. */
export function choiceSection(
	draft: Draft,
	{ process: choice, estimateAt, evenAt }: ChoiceFacts,
	recommended: Pick<LiftingLimit, 'rwlG' | 'forbidden'>
): ChoiceSection {
	const { surface } = draft;
	const longestMm = Math.max(surface.lengthMm, surface.widthMm, surface.heightMm);
	const { units } = draft.inputs.shop;
	const estimates = choice.estimates.map((way, i) => {
		const number = (
			key: 'rubberG' | 'shellG' | 'moldG' | 'totalPrice' | 'laborS' | 'daysCount',
			label: string,
			unit: 'g' | 'currency' | 's' | 'count'
		): number => {
			const { inputs, of } = estimateAt(way.process, key);
			return traced(draft, `choice.estimates.${i}.${key}`, {
				label: `${way.process}: ${label}`,
				value: way[key],
				unit,
				law: unit === 'currency' ? processChoiceLaw : processEstimateLaw,
				inputs,
				...inherited(draft, inputs, of),
				...(key === 'daysCount' ? { note: DAYS_NOTE } : {})
			});
		};
		const moldG = number('moldG', 'rubber and shell', 'g');
		return {
			process: way.process,
			rubberG: number('rubberG', 'rubber', 'g'),
			shellG: number('shellG', 'shell', 'g'),
			moldG,
			materialPrice: way.materialPrice,
			laborS: number('laborS', 'hands on it', 's'),
			totalPrice: number('totalPrice', 'materials used and labor', 'currency'),
			daysCount: number('daysCount', 'working days', 'count'),
			way: liftAdvice({
				massG: highEnd(draft, `choice.estimates.${i}.moldG`, moldG),
				limit: recommended,
				holdsLiquid: false
			}).way
		};
	});
	const { evenScale } = choice;
	if (evenScale !== null) {
		traced(draft, 'choice.evenScale', {
			label: 'Size, as a multiple of this pattern, from which a glove costs less than a block',
			value: evenScale,
			unit: 'count',
			law: processScaleLaw,
			inputs: evenAt.inputs,
			...inherited(draft, evenAt.inputs, evenAt.of)
		});
	}
	return {
		estimates,
		chosen: choice.chosen,
		reason: choice.reason,
		evenScale,
		evenLengthMm: evenScale === null ? null : evenLength(draft, evenScale, longestMm),
		limits: limitsOf(estimates, evenScale, longestMm, units)
	};
}

function evenLength(draft: Draft, evenScale: number, longestMm: number): number {
	const inputs = [
		computed('s', 'size, as a multiple', evenScale, 'count', 'choice.evenScale'),
		computed('L', 'longest side of the pattern', longestMm, 'mm')
	];
	return traced(draft, 'choice.evenLengthMm', {
		label: 'Length from which a glove costs less than a block',
		value: evenScale * longestMm,
		unit: 'mm',
		law: { ...processScaleLaw, formula: `${processScaleLaw.formula}; L_even = s · L` },
		inputs,
		...inherited(draft, inputs, (scale = 0, longest = 0) => scale * longest)
	});
}

function limitsOf(
	estimates: ChoiceSection['estimates'],
	evenScale: number | null,
	longestMm: number,
	units: UnitSystem
): ChoiceSection['limits'] {
	const [glove, block, layer] = estimates;
	if (!glove || !block || !layer) return [];
	const even =
		evenScale === null
			? block.totalPrice < glove.totalPrice
				? 'A block costs less at every size of this shape, from a tenth to ten times.'
				: 'A glove costs less at every size of this shape, from a tenth to ten times.'
			: `A glove costs less than a block once a pattern of this shape is longer than about ${displayQuantity(Math.round(evenScale * longestMm), 'mm', units)}.`;
	return [
		{
			process: 'glove',
			text: `${even} It asks for a rigid shell and for days of short, timed work.`
		},
		{
			process: 'solid block',
			text: `A block of this pattern weighs about ${displayQuantity(block.moldG, 'g', units)} and is turned over with ${block.way}. It can't be laid on a standing face.`
		},
		{
			process: 'poured layer',
			text: `A poured layer needs a blanket and a shell before the rubber, ${layer.daysCount} days in all; it pays where the layer must be even and many molds are made from one pattern.`
		}
	];
}
