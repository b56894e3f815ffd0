import type { Plan } from './plan';
import { roomTime } from './room-time';
import { traced, type Draft } from './trace';

export interface CurePlan {
	gloveCure: Plan['gloveCure'];
	shellCure: Plan['shellCure'];
	castingS: number;
	/** When the first part may be set at the soonest. */
	castingSoonestS: number;
}

/** The long waits: glove, shell and first part, at the room's temperature. */
export function curePlan(draft: Draft): CurePlan {
	const { build, shell, casting } = draft.inputs.materials;
	const { temperatureC } = draft;
	const timesOf = (sheet: typeof build, fallback: 'demoldS' | 'castingS') =>
		roomTime({
			label: 'demold',
			sheet: sheet.demold,
			fallback,
			temperatureC,
			spreadK: draft.inputs.shop.roomSpreadK,
			safe: 'later'
		});
	const wait = (path: string, label: string, sheet: typeof build) => {
		const cure = timesOf(sheet, 'demoldS');
		return traced(draft, path, {
			label,
			value: cure.timeS,
			unit: 's',
			law: cure.law,
			inputs: cure.inputs,
			...cure.range,
			note: 'When to try; the test decides.'
		});
	};
	const part = timesOf(casting, 'castingS');
	const shore = build.shoreA === undefined ? '' : ` Shore A should read about ${build.shoreA}.`;
	return {
		gloveCure: {
			testS: wait('gloveCure.testS', 'Glove cured after the last coat', build),
			test: `Press a fingernail into the flange: no mark stays, nothing is sticky.${shore}`,
			why: `Demold time of ${build.name} at ${temperatureC} °C, counted from the last coat; overnight, normally.`
		},
		shellCure: {
			testS: wait('shellCure.testS', 'Shell cured after the last round', shell),
			test: 'Knock on the thickest and the thinnest place: both ring hard, and neither is warm.',
			why: `Demold time of ${shell.name} at ${temperatureC} °C, counted from the last round; overnight, normally.`
		},
		castingS: part.timeS,
		castingSoonestS: part.range?.low ?? part.timeS
	};
}
