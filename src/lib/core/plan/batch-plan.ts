import { BRUSH_LOSS_G, coatLossesLaw, CUP_LOSS_G, mixedMassG } from '../laws/coat-losses';
import { FILL_LIMIT_FRACTION } from '../laws/correction';
import { otherPartLaw } from '../laws/proportioning';
import { readableSplitLaw } from '../laws/readable-split';
import { displayQuantity } from '../quantity/display';
import { roundedOutward } from '../quantity/range';
import { roundTo } from '../quantity/rounding';
import { ratioText } from '../materials/mix-ratio';
import type { Sheet } from '../materials/sheet';
import { batchPace } from './batch-pace';
import { partFractions, splitCup, toleranceOf, type SplitCup } from './cup-parts';
import { cupLives, type CupLifeRow } from './cup-lives';
import { DEFAULTS } from './defaults';
import { largestCup } from './largest-cup';
import type { Cup } from './plan';
import { PlanError } from './plan-error';
import { traceCup } from './cup-trace';
import { computed, constant, entered, fromSheet, traced, warn, type Draft } from './trace';

export interface BatchPlan {
	materialId: string;
	materialName: string;
	massG: number;
	fractions: { part: string; fraction: number }[];
	toleranceFraction: number;
	cups: Cup[];
	largestCupG: number;
	mixS: number;
	workingS: number;
	cupLives?: CupLifeRow[];
}

export interface Batch extends BatchPlan {
	/** From the first cup's mixing to the last cup's being empty. */
	paceS: number;
}

/** The law of cups counts no further; numerical choice. */
const MOST_CUPS = 500;
/** Cups of one batch beyond which a plan says how to get fewer; choice of the plan. */
const MANY_CUPS = 10;
/** Rounding to the scale may push a cup over the largest; a cup more cures it. */
const TRIES = 12;

export interface Wanted {
	/** Path of the coat or round in the plan, for example "coats.0". */
	path: string;
	/** Field of the inputs that the sheet stands in, for messages. */
	place: string;
	title: string;
	sheet: Sheet;
	laidG: number;
	rateGPerMin: number;
	/** How long the laid material takes a fresh cup. */
	bondWindowS: number;
}

/**
 * What is mixed for one coat or round: cups that can be laid before they turn, in masses that the
 * scale can show, on ratio, and no larger than the shelf's cups.
 *
 * @throws PlanError when the pot life, the scale or the shelf allows no cup at all
 */
export function batchPlan(draft: Draft, wanted: Wanted): Batch {
	const { path, sheet, title, laidG } = wanted;
	const { shop, people } = draft.inputs;
	const { largestG, mixS, workingS } = largestCup(draft, wanted);
	const cups = cupsOf(draft, wanted, largestG);
	const massG = roundTo(
		cups.reduce((sum, cup) => sum + cup.massG, 0),
		shop.scaleReadabilityG
	);
	traced(draft, `${path}.massG`, {
		label: `${title}: mass to mix`,
		value: massG,
		unit: 'g',
		law: coatLossesLaw,
		inputs: [
			computed('m_laid', 'laid on the mold', laidG, 'g'),
			computed('n_cups', 'cups', cups.length, 'count'),
			constant('m_cup', 'left in a cup (common practice, no source)', CUP_LOSS_G, 'g'),
			entered('n_brushes', 'brushes, one a person', people, 'count'),
			constant('m_brush', 'left in a brush (common practice, no source)', BRUSH_LOSS_G, 'g'),
			entered('d', 'smallest step of the scale', shop.scaleReadabilityG, 'g')
		],
		...roundedOutward(
			{
				low: Math.max(0, massG - 2 * DEFAULTS.spreadFraction.value * laidG),
				high: massG + 2 * DEFAULTS.spreadFraction.value * laidG
			},
			shop.scaleReadabilityG
		),
		note: 'Rounded up to what the scale shows in every cup, on ratio.'
	});
	if (cups.length > MANY_CUPS) warnOfManyCups(draft, wanted, cups);
	const lives = cupLives(draft, sheet, { plannedG: cups[0]?.massG ?? 0, mixS, workingS });
	const fractions = partFractions(sheet);
	traceParts(draft, wanted, fractions, cups);
	return {
		materialId: sheet.id,
		materialName: sheet.name,
		massG,
		fractions,
		toleranceFraction: toleranceOf(sheet),
		cups,
		largestCupG: largestG,
		mixS,
		workingS,
		...(lives && { cupLives: lives }),
		paceS: batchPace(draft, wanted, { cups, mixS, workingS })
	};
}

function cupsOf(draft: Draft, wanted: Wanted, largestG: number): Cup[] {
	const { place, sheet, laidG, title } = wanted;
	const { shop, people } = draft.inputs;
	const brushesG = people * BRUSH_LOSS_G;
	let count = Math.ceil((laidG + brushesG) / (largestG - CUP_LOSS_G));
	if (count > MOST_CUPS) {
		throw new PlanError([
			{
				path: place,
				message: `${title} would take ${count} cups of ${sheet.name}; accepted: ${MOST_CUPS} at most. Take a material with a longer pot life or a faster way to lay it.`
			}
		]);
	}
	for (const end = count + TRIES; count <= end; count += 1) {
		const eachG = mixedMassG({ laidG, cups: count, brushes: people }) / count;
		const split = splitCup(sheet, eachG, shop.scaleReadabilityG);
		if (!split) break;
		const cupVolumeMl = smallestCupMl(split, sheet, shop.cupVolumesMl);
		if (split.massG > largestG + 1e-6 || cupVolumeMl === null) continue;
		return Array.from({ length: count }, () => ({ ...split, cupVolumeMl }));
	}
	throw new PlanError([
		{
			path: 'shop.scaleReadabilityG',
			message: `A scale that reads ${shop.scaleReadabilityG} g is too coarse to weigh cups of ${sheet.name} on ratio; a finer one is needed.`
		}
	]);
}

function smallestCupMl(cup: SplitCup, sheet: Sheet, shelfMl: readonly number[]): number | null {
	const neededMl = cup.massG / sheet.mixedDensityGPerMl / FILL_LIMIT_FRACTION;
	const fitting = shelfMl.filter((volumeMl) => volumeMl >= neededMl - 1e-9);
	return fitting.length > 0 ? Math.min(...fitting) : null;
}

function traceParts(
	draft: Draft,
	{ path, sheet, title }: Wanted,
	fractions: BatchPlan['fractions'],
	cups: readonly Cup[]
): void {
	const ratio = sheet.ratioByWeight ?? sheet.ratioByVolume ?? [1];
	fractions.forEach(({ part, fraction }, index) => {
		traced(draft, `${path}.fractions.${index}.fraction`, {
			label: `${title}: share of ${part} by weight`,
			value: fraction,
			unit: 'fraction',
			law: otherPartLaw,
			inputs: [
				fromSheet(
					'r',
					sheet.ratioByWeight ? 'ratio by weight' : 'ratio by volume',
					ratioText(sheet, ratio),
					'text'
				)
			]
		});
	});
	const [cup] = cups;
	if (cup) traceCup(draft, { path, title, sheet, cup, count: cups.length });
	cup?.parts.forEach(({ part, massG }, index) => {
		const share = fractions.findIndex((fraction) => fraction.part === part);
		traced(draft, `${path}.cups.0.parts.${index}.massG`, {
			label: `${title}: ${part} in each cup`,
			value: massG,
			unit: 'g',
			law: readableSplitLaw,
			inputs: [
				computed('M', 'cup', cup.massG, 'g', `${path}.cups.0.massG`),
				computed(
					'r',
					`share of ${part}`,
					fractions[share]?.fraction ?? 0,
					'fraction',
					`${path}.fractions.${share}.fraction`
				),
				entered('d', 'smallest step of the scale', draft.inputs.shop.scaleReadabilityG, 'g')
			]
		});
	});
}

/** Why a batch takes so many cups, and how it would take fewer. */
function warnOfManyCups(
	draft: Draft,
	{ title, sheet, path, place }: Wanted,
	cups: readonly Cup[]
): void {
	const { people, shop } = draft.inputs;
	const cupG = displayQuantity(cups[0]?.massG ?? 0, 'g', shop.units);
	const why = draft.figures[`${path}.largestCupG`]?.note ?? '';
	const hands =
		people > 1 ? '' : ' With more people one mixes while another lays, which saves time, not cups.';
	const text = `${title}: ${cups.length} cups of ${cupG}. ${why} Fewer: a slower grade of ${sheet.name}, or a cooler room within what its data sheet allows.${hands}`;
	warn(draft, 'note', 'many-cups', place, text);
}
