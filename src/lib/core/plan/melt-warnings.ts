import { displayQuantity, wholeDegrees } from '../quantity/display';
import type { Sheet } from '../materials/sheet';
import { DEFAULTS } from './defaults';
import type { Plan } from './plan';
import { warn, type Draft } from './trace';

/**
 * Says before the start that the casting is poured molten, and what keeps people from burning. What one
 * person cannot carry in one go, and what a glove may not stand, waits for a supervisor.
 */
export function warnOfMelt(
	draft: Draft,
	{ massG, batches }: Omit<Plan['pour'], 'melt'>,
	solidS: number | undefined
): void {
	const { casting, detail, build } = draft.inputs.materials;
	const { units } = draft.inputs.shop;
	const about = (c: number) => wholeDegrees(c, units);
	const { meltsAtC, poursAtC } = casting;
	const isKnown = meltsAtC !== undefined && poursAtC !== undefined;
	const sentences = [
		`${displayQuantity(massG, 'g', units)} of ${casting.name} is poured molten${poursAtC === undefined ? '' : `, at ${about(poursAtC)}`}: it burns, sticks to skin, and catches fire when it is overheated.`,
		'Melt it in a water bath or a melter with a thermostat, never over an open flame and never alone, with a thermometer in it and a lid at hand.',
		'No water into hot wax and none on burning wax: lid on, heat off, and an extinguisher for burning liquids (class B) within reach.',
		'Face shield, long sleeves, dry heat-proof gloves.',
		batches && batches.count > 1
			? `Carry it in ${batches.count} pails of up to ${displayQuantity(batches.largestG, 'g', units)}, never full, with nobody in the way.`
			: '',
		isKnown
			? ''
			: 'Its data sheet gives no temperature to melt and pour it at: ask the maker, for its flash point too.',
		solidS === undefined
			? 'Nobody can say here how long its core stays liquid: wait until it is cold to the hand all over.'
			: `Its core may stay liquid for up to ${displayQuantity(solidS, 's', units)}: opened sooner, hot wax runs out. A hollow or layered pour is solid sooner.`
	];
	const isHeavy = massG > DEFAULTS.pourBucketG.value;
	warn(draft, isHeavy ? 'decide' : 'warn', 'hot-wax', 'pour', sentences.filter(Boolean).join(' '));
	warnOfGlove(draft, [...new Set([detail, build])], casting);
}

/** Whether the glove stands the wax, as far as the two sheets say. */
function warnOfGlove(draft: Draft, gloves: readonly (Sheet | undefined)[], casting: Sheet): void {
	const { units } = draft.inputs.shop;
	const { poursAtC } = casting;
	for (const glove of gloves) {
		if (!glove) continue;
		const { heatLimitC, name } = glove;
		if (heatLimitC !== undefined && poursAtC !== undefined) {
			if (poursAtC <= heatLimitC) continue;
			const text = `${casting.name} is poured at ${wholeDegrees(poursAtC, units)}; ${name} stands ${wholeDegrees(heatLimitC, units)}: the glove softens, tears or ages early. Pour cooler, or choose another pair.`;
			warn(draft, 'decide', 'wax-too-hot', 'materials', text);
			continue;
		}
		const silent = [
			...(heatLimitC === undefined ? [`how much heat ${name} stands`] : []),
			...(poursAtC === undefined ? [`how hot ${casting.name} is poured`] : [])
		];
		const text = `The data sheets do not say ${silent.join(' nor ')}: ask the makers whether this glove takes molten wax.`;
		warn(draft, 'warn', 'wax-heat-unknown', 'materials', text);
	}
}
