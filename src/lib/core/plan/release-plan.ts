import { filmDryingLaw } from '../laws/drying';
import { roundUpTo } from '../quantity/rounding';
import { releaseNeed } from '../materials/release-need';
import type { Sheet } from '../materials/sheet';
import { DEFAULTS, defaultInput, type DefaultKey } from './defaults';
import type { FramePlan } from './frame-plan';
import type { Plan } from './plan';
import { roomTime } from './room-time';
import { filmDryingBand } from './room-section';
import { computed, fromSheet, traced, tradeLaw, warn, type Draft } from './trace';

const spreadLaw = tradeLaw(
	'spread',
	'Wax, film or sealer for an area',
	'm = n · A · s',
	'thin even coats by cloth or brush; the spread of the data sheet, else of common practice'
);

interface Spread {
	path: string;
	label: string;
	sheet: Sheet | undefined;
	fallback: DefaultKey;
	coats: number;
	areaCm2: number;
}

/** Mass of so many thin coats over an area; 0 when nothing is chosen. */
export function spreadG(
	draft: Draft,
	{ path, label, sheet, fallback, coats, areaCm2 }: Spread
): number {
	if (!sheet || coats === 0) return 0;
	const spread = sheet.spreadGPerM2 ?? DEFAULTS[fallback].value;
	return traced(draft, path, {
		label,
		value: (coats * areaCm2 * spread) / 10_000,
		unit: 'g',
		law: spreadLaw,
		inputs: [
			computed('n', 'coats', coats, 'count'),
			computed('A', 'area', areaCm2, 'cm2'),
			sheet.spreadGPerM2
				? fromSheet('s', 'grams for a square meter', spread, 'g')
				: defaultInput('s', fallback)
		]
	});
}

/** Sealing, waxing and filming before the first coat, or the reason why there is none. */
export function releasePlan(
	draft: Draft,
	{ frame, flangeAreaCm2 }: FramePlan,
	first: Sheet
): Plan['release'] {
	const { pattern, materials } = draft.inputs;
	const { exposedAreaCm2 } = draft.surface;
	const sealer = pattern.porosity === 'porous' ? materials.sealer : undefined;
	const sealerCoats = sealer ? DEFAULTS.sealerCoats.value : 0;
	const need = releaseNeed(pattern, first);
	const isPorous = pattern.porosity !== 'dense';
	const insideFrameCm2 = (2 * (frame.insideLengthMm + frame.insideWidthMm) * frame.heightMm) / 100;
	const releasedCm2 = exposedAreaCm2 + flangeAreaCm2 + insideFrameCm2;
	const waxCoats = need.needed && materials.wax ? (isPorous ? 4 : 3) : 0;
	const filmPasses = need.needed && materials.film ? (isPorous ? 3 : 2) : 0;
	return {
		needed: need.needed,
		why: need.why,
		sealerG: spreadG(draft, {
			path: 'release.sealerG',
			label: 'Sealer on the pattern',
			sheet: sealer,
			fallback: 'sealerSpread',
			coats: sealerCoats,
			areaCm2: exposedAreaCm2
		}),
		sealerCoats,
		sealerDryS: dryS(draft, 'release.sealerDryS', sealer, 'sealerDryS', sealerCoats),
		waxCoats,
		waxG: spreadG(draft, {
			path: 'release.waxG',
			label: 'Wax on pattern, board and frame',
			sheet: materials.wax,
			fallback: 'waxSpread',
			coats: waxCoats,
			areaCm2: releasedCm2
		}),
		waxHazeS: dryS(draft, 'release.waxHazeS', materials.wax, 'hazeS', waxCoats),
		filmPasses,
		filmG: spreadG(draft, {
			path: 'release.filmG',
			label: 'Parting film on pattern, board and frame',
			sheet: materials.film,
			fallback: 'filmSpread',
			coats: filmPasses,
			areaCm2: releasedCm2
		}),
		filmDryS: filmPasses === 0 ? 0 : filmDryS(draft)
	};
}

/**
 * The sheet's drying time, but no sooner than the water can leave in this air; without a sheet's
 * time, the end of the band.
 */
function filmDryS(draft: Draft): number {
	const { film } = draft.inputs.materials;
	const statedS = dryS(draft, 'release.filmDryS', film, 'filmDryS', 1);
	const band = filmDryingBand(draft);
	if (!band) {
		const text = `At ${draft.temperatureC} °C and ${draft.humidityPct}% no drying time of the parting film can be computed: dry or move the air, and go by touch.`;
		warn(draft, 'warn', 'film-drying', 'release', text);
		return statedS;
	}
	const bandS = roundUpTo(film?.dry ? band.lowS : band.highS, 60);
	if (film?.dry && bandS <= statedS) return statedS;
	return traced(draft, 'release.filmDryS', {
		label: 'Drying of each pass of film',
		value: bandS,
		unit: 's',
		law: filmDryingLaw,
		inputs: [
			computed('t_low', 'earliest in this air', band.lowS, 's', 'room.filmDrying.lowS'),
			computed('t_high', 'latest in this air', band.highS, 's', 'room.filmDrying.highS')
		],
		low: band.lowS,
		high: band.highS,
		note: film?.dry
			? 'The data sheet’s time is shorter than this air allows: touch decides.'
			: 'The data sheet gives no time: the latest end of the band.'
	});
}

const DRYING = {
	hazeS: { label: 'Haze of each coat of wax', short: 'wax hazes', fallback: 'hazeS' },
	filmDryS: { label: 'Drying of each pass of film', short: 'film dries', fallback: 'filmDryS' },
	sealerDryS: {
		label: 'Drying of each coat of sealer',
		short: 'sealer dries',
		// A thin brushed coat without a stated time is given as long as a pass of film.
		fallback: 'filmDryS'
	}
} as const;

function dryS(
	draft: Draft,
	path: string,
	sheet: Sheet | undefined,
	what: keyof typeof DRYING,
	coats: number
): number {
	if (coats === 0) return 0;
	const { label, short, fallback } = DRYING[what];
	const dry = roomTime({
		label: short,
		sheet: sheet?.dry,
		fallback,
		temperatureC: draft.temperatureC,
		spreadK: draft.inputs.shop.roomSpreadK,
		safe: 'later'
	});
	return traced(draft, path, {
		label,
		value: dry.timeS,
		unit: 's',
		law: dry.law,
		inputs: dry.inputs,
		...dry.range,
		note: 'Damp air dries slower: touch decides.'
	});
}
