import { CUP_LOSS_G } from '../laws/coat-losses';
import { FILL_LIMIT_FRACTION } from '../laws/correction';
import { largestCupG, largestCupLaw } from '../laws/cups';
import { roundDownTo } from '../quantity/rounding';
import type { FigureInput } from '../quantity/figure';
import { isSilicone } from '../materials/release-need';
import type { Sheet } from '../materials/sheet';
import { DEFAULTS, defaultInput } from './defaults';
import { PlanError } from './plan-error';
import { roomTime } from './room-time';
import { computed, entered, fromSheet, traced, type Draft } from './trace';

/**
 * The largest cup of a material: what one person lays before it is likely to turn, at the room's temperature, no
 * more than the mass its pot life was measured at (it heats itself), and no more than fits the shelf.
 *
 * @throws PlanError when no time or no room is left for a cup
 */
export function largestCup(
	draft: Draft,
	wanted: { path: string; place: string; title: string; sheet: Sheet; rateGPerMin: number }
): { largestG: number; mixS: number; workingS: number } {
	const { path, place, title, sheet, rateGPerMin } = wanted;
	const { shop } = draft.inputs;
	const mixS = sheet.mixS ?? DEFAULTS.mixS.value;
	const mixInput = sheet.mixS
		? fromSheet('t_mix', 'mixing', mixS, 's')
		: defaultInput('t_mix', 'mixS');
	const pot = roomTime({
		label: 'pot life',
		sheet: sheet.potLife,
		fallback: 'mixS',
		temperatureC: draft.temperatureC,
		safe: 'exact'
	});
	const potS = pot.range?.low ?? pot.timeS;
	const afterMixingS = (lifeS: number): number => Math.max(0, Math.floor(lifeS - mixS));
	const workingS = traced(draft, `${path}.workingS`, {
		label: `${title}: time to lay a cup after mixing`,
		value: afterMixingS(potS),
		...(pot.range && { low: afterMixingS(pot.range.low), high: afterMixingS(pot.range.high) }),
		unit: 's',
		law: pot.law,
		inputs: [...pot.inputs, mixInput],
		note: 'The shortest likely pot life at the room’s temperature less the mixing, in whole seconds.'
	});
	const shelfG = Math.max(...shop.cupVolumesMl) * FILL_LIMIT_FRACTION * sheet.mixedDensityGPerMl;
	const measuredG = isSilicone(sheet) ? Infinity : (sheet.potLife?.massG ?? Infinity);
	const byHandG = chosenCupG(draft, place) ?? Infinity;
	const limitG = Math.min(shelfG, measuredG, byHandG);
	const byTimeG = largestCupG({
		workingTimeS: Math.max(1, potS),
		mixingTimeS: mixS,
		layingRateGPerMin: rateGPerMin,
		limitG
	});
	const largestG = roundDownTo(byTimeG ?? 0, shop.scaleReadabilityG);
	if (byTimeG === null || largestG <= 2 * CUP_LOSS_G) {
		const minutes = (potS / 60).toFixed(1);
		throw new PlanError([
			{
				path: `${place}.potLife`,
				message: `At ${draft.temperatureC} °C ${sheet.name} works for ${minutes} min, and mixing takes ${(mixS / 60).toFixed(1)} min: no useful cup can be laid in time. Accepted: a cooler room, a longer pot life, a faster way to lay it or a larger cup on the shelf.`
			}
		]);
	}
	const limits: FigureInput[] = [
		computed('m_shelf', 'largest cup of the shelf, two thirds full', shelfG, 'g')
	];
	if (Number.isFinite(measuredG)) {
		limits.push(fromSheet('m_pot', 'mass the pot life was measured at', measuredG, 'g'));
	}
	if (Number.isFinite(byHandG)) {
		limits.push(entered('m_hand', 'largest cup, chosen by hand', byHandG, 'g'));
	}
	traced(draft, `${path}.largestCupG`, {
		label: `${title}: largest cup`,
		value: largestG,
		unit: 'g',
		law: largestCupLaw,
		inputs: [
			entered('q', 'laying rate of one person', rateGPerMin, 'g/min'),
			computed('t_work', 'shortest likely pot life at room temperature', potS, 's'),
			mixInput,
			...limits
		],
		note:
			byTimeG < limitG
				? 'Set by the time it takes to lay it.'
				: byHandG === limitG
					? 'Set by hand.'
					: 'Set by the cup on the shelf or by the mass the pot life was measured at, not by time.'
	});
	return { largestG, mixS, workingS };
}

/** The largest cup that was chosen by hand for the material in this place, "materials.shell". */
function chosenCupG({ inputs }: Draft, place: string): number | undefined {
	if (place === 'materials.detail') return inputs.detailCupG;
	return place === 'materials.build' ? inputs.buildCupG : inputs.shellCupG;
}
