import { processChoiceLaw } from '../laws/process-choice';
import { processEstimateLaw, type ProcessEstimate } from '../laws/process-estimate';
import { DAYS_NOTE, type EstimateFollows, type EstimateKey } from './block-ranges';
import type { Plan } from './plan';
import { inherited, traced, type Draft } from './trace';

/** Leaves the trace of what a solid block takes, and the glove beside it. */
export function traceBlock(
	draft: Draft,
	gloveG: number,
	glove: ProcessEstimate,
	block: ProcessEstimate,
	followsOf: EstimateFollows
): Omit<Plan['block'], 'better' | 'why'> {
	const number = (
		key: string,
		label: string,
		value: number,
		unit: 'mL' | 'g' | 'currency' | 'count',
		way: ProcessEstimate,
		of: EstimateKey
	): number => {
		const follows = followsOf(way.process, of);
		return traced(draft, `block.${key}`, {
			label,
			value,
			unit,
			law: unit === 'currency' ? processChoiceLaw : processEstimateLaw,
			inputs: follows.inputs,
			...inherited(draft, follows.inputs, follows.of),
			...(of === 'daysCount' ? { note: DAYS_NOTE } : {})
		});
	};
	const inBlock = 'Rubber in a solid block';
	return {
		rubberMl: number('rubberMl', inBlock, block.rubberMl, 'mL', block, 'rubberMl'),
		rubberG: number('rubberG', inBlock, block.rubberG, 'g', block, 'rubberG'),
		gloveRubberG: number('gloveRubberG', 'Rubber in the glove', gloveG, 'g', glove, 'rubberG'),
		cost: number(
			'cost',
			'Solid block: rubber used and labor',
			block.totalPrice,
			'currency',
			block,
			'totalPrice'
		),
		gloveCost: number(
			'gloveCost',
			'Glove: rubber and shell used, and labor',
			glove.totalPrice,
			'currency',
			glove,
			'totalPrice'
		),
		days: number('days', 'Days for a solid block', block.daysCount, 'count', block, 'daysCount'),
		gloveDays: number(
			'gloveDays',
			'Days for the glove mold',
			glove.daysCount,
			'count',
			glove,
			'daysCount'
		)
	};
}
