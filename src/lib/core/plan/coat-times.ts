import { brushBackLaw, brushBackS } from '../laws/brush-back';
import { displayQuantity } from '../quantity/display';
import { roundUpTo } from '../quantity/rounding';
import type { Unit } from '../quantity/unit';
import type { Sheet } from '../materials/sheet';
import { DEFAULTS } from './defaults';
import { roomTime } from './room-time';
import { computed, fromSheet, inherited, traced, warn, type Draft } from './trace';

export interface CoatTimes {
	brushBackS: number | null;
	tackTestS: number;
	windowClosesS: number;
	tackSoonestS: number;
}

/** When a coat is brushed back, tested and out of its window, after laying, in whole minutes. */
export function coatTimes(
	draft: Draft,
	given: {
		path: string;
		title: string;
		kind: 'detail' | 'build';
		sheet: Sheet;
		thicknessMm: number;
		/** From the start of mixing the last cup to its being laid. */
		layS: number;
		/** From the first mixing to the last empty cup. */
		paceS: number;
	}
): CoatTimes {
	const { path, title, sheet, kind } = given;
	const { temperatureC } = draft;
	const inUnits = (value: number, unit: Unit) =>
		displayQuantity(value, unit, draft.inputs.shop.units);
	const tack = roomTime({
		label: 'almost tack-free',
		sheet: sheet.tackFree,
		fallback: 'tackFreeS',
		temperatureC,
		spreadK: draft.inputs.shop.roomSpreadK,
		safe: 'later'
	});
	const tackTestS = traced(draft, `${path}.tackTestS`, {
		label: `${title}: first tack test after laying`,
		value: tack.timeS,
		unit: 's',
		law: tack.law,
		inputs: tack.inputs,
		...tack.range,
		note: 'When to try; the fingertip decides.'
	});
	const tackSoonestS = traced(draft, `${path}.tackSoonestS`, {
		label: `${title}: almost tack-free after laying, at the soonest`,
		value: tack.range?.low ?? tack.timeS,
		unit: 's',
		law: tack.law,
		inputs: tack.inputs,
		...tack.range
	});
	const times = DEFAULTS.recoatTimes.value;
	const opens = sheet.tackFree ?? {
		timeS: DEFAULTS.tackFreeS.value,
		atC: DEFAULTS.referenceC.value
	};
	const closes = roomTime({
		label: sheet.recoatCloses
			? 'recoat window shuts'
			: `${times} times the opening (common practice, no source)`,
		sheet: sheet.recoatCloses ?? { timeS: opens.timeS * times, atC: opens.atC },
		fallback: 'demoldS',
		temperatureC,
		spreadK: draft.inputs.shop.roomSpreadK,
		safe: 'sooner'
	});
	const windowClosesS = traced(draft, `${path}.windowClosesS`, {
		label: `${title}: recoat window shuts after laying`,
		value: closes.timeS,
		unit: 's',
		law: closes.law,
		inputs: closes.inputs,
		...closes.range
	});
	if (windowClosesS <= tackTestS) {
		warn(
			draft,
			'refuse',
			'window-shut',
			'coats',
			`${title}: at ${inUnits(temperatureC, 'C')} the recoat window may shut before the coat is surely almost tack-free: ${inUnits(windowClosesS, 's')} against ${inUnits(tackTestS, 's')}. Ask the maker of ${sheet.name} for its times at a second temperature, or keep the room nearer to the data sheet’s.`
		);
	} else if (windowClosesS < given.paceS + tackTestS) {
		// Nobody could then lay the next coat in time wherever they began.
		const isHopeless = windowClosesS < given.paceS;
		warn(
			draft,
			isHopeless ? 'decide' : 'warn',
			'window-short',
			'coats',
			`${title}: laying it takes ${inUnits(given.paceS, 's')}, and the last cup is almost tack-free ${inUnits(tackTestS, 's')} after that; where the first cup was laid, the window has shut ${inUnits(windowClosesS, 's')} after it. Lay it with more people, or test and recoat where it was laid first.`
		);
	}
	return {
		brushBackS: kind === 'detail' ? brushBack(draft, given) : null,
		tackTestS,
		windowClosesS,
		tackSoonestS
	};
}

function brushBack(
	draft: Draft,
	given: { path: string; title: string; sheet: Sheet; thicknessMm: number; layS: number }
): number {
	const { path, title, sheet, thicknessMm, layS } = given;
	const gel = roomTime({
		label: 'pot life, taken as the gel',
		sheet: sheet.potLife,
		fallback: 'brushBackS',
		temperatureC: draft.temperatureC,
		safe: 'exact'
	});
	const viscosityPaS = sheet.mixedViscosityPaS;
	const afterMixS = (mm: number): number =>
		viscosityPaS === undefined
			? Math.min(gel.timeS, DEFAULTS.brushBackS.value)
			: brushBackS({
					thicknessMm: mm,
					viscosityPaS: Math.min(500, Math.max(0.01, viscosityPaS)),
					densityGPerMl: sheet.mixedDensityGPerMl,
					gelTimeS: gel.timeS
				});
	const afterS = (mm: number): number => roundUpTo(Math.max(60, afterMixS(mm) - layS), 60);
	const laid = computed('h', 'thickness', thicknessMm, 'mm', `${path}.thicknessMm`);
	return traced(draft, `${path}.brushBackS`, {
		label: `${title}: brushed back up after laying`,
		value: afterS(thicknessMm),
		...inherited(draft, [laid], (mm = 0) => afterS(mm)),
		unit: 's',
		law: brushBackLaw,
		inputs: [
			laid,
			fromSheet(
				'μ_0',
				'viscosity of the mix',
				viscosityPaS ?? 'not given: about 20 min',
				viscosityPaS === undefined ? 'text' : 'Pa·s'
			),
			fromSheet('ρ', 'density of the mix', sheet.mixedDensityGPerMl, 'g/mL'),
			computed('t_gel', 'pot life at room temperature', gel.timeS, 's'),
			computed('t_lay', 'mixing and laying, which count already', layS, 's')
		]
	});
}
