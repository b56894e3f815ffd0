import type { MeshHandling } from '$lib/core/geometry/mesh-handling';
import { displayQuantity, type UnitSystem } from '$lib/core/quantity/display';
import type { Unit } from '$lib/core/quantity/unit';
import { placeSpot } from './place-spot';
import { puddleSign } from './marks';

export interface HandlingWords {
	key: 'shell' | 'undercut' | 'peel' | 'keys' | 'puddles' | 'center';
	title: string;
	lines: string[];
	/** Something has to be decided or done about it. */
	isHard: boolean;
}

interface Asked {
	handling: MeshHandling;
	system: UnitSystem;
	/** Of the glove material at break; null when its sheet does not say, left out while none is chosen. */
	elongation?: { name: string; fraction: number | null };
}

/** Share of its elongation that a glove takes again and again; the plan's own, common practice, no source. */
const STRETCH_SHARE = 1 / 3;
/** Within this much of upright nobody sees a lean. A choice. */
const UPRIGHT_DEG = 3;

/** How glove and shell come off, in short statements. */
export function handlingWords({ handling, system, elongation }: Asked): HandlingWords[] {
	const show = (value: number, unit: Unit): string =>
		displayQuantity(Number(value.toPrecision(3)), unit, system);
	return [
		shellWords(handling, show, system),
		undercutWords(handling, show, system, elongation),
		{
			key: 'peel',
			title: 'Where to start peeling',
			lines: [
				handling.peelAt
					? `At P: ${placeSpot(handling.peelAt, system)}, as far from undercuts as the foot allows.`
					: 'The pattern meets no board: start where the glove’s edge is thickest.'
			],
			isHard: false
		},
		keyWords(handling, show, system),
		puddleWords(handling, show, system),
		{
			key: 'center',
			title: 'Center of mass of the pattern',
			lines: [`M: ${placeSpot(handling.center, system)}.`],
			isHard: false
		}
	];
}

type Show = (value: number, unit: Unit) => string;

function shellWords(
	{ opening, gloveMm }: MeshHandling,
	show: Show,
	system: UnitSystem
): HandlingWords {
	const { isFree, direction, lockedCm2, lockedFraction, parted, freeingGloveMm } = opening;
	const title = 'Opening the shell';
	const way = leanWords(direction);
	if (isFree) {
		const line = `Over a glove of ${show(gloveMm, 'mm')} a shell in one piece leaves ${way} without locking.`;
		return { key: 'shell', title, lines: [line], isHard: false };
	}
	const lines = [
		`Over a glove of ${show(gloveMm, 'mm')} a shell in one piece locks: even ${way}, its best direction, over ${show(lockedCm2, 'cm2')}, ${Math.round(100 * lockedFraction)}% of what it lies on.`
	];
	if (parted) {
		const left = parted.lockedCm2;
		const rest = left > 0.05 ? `; ${show(left, 'cm2')} still lock` : '; then nothing locks';
		const { third } = parted;
		const over = third
			? `, with a third piece around T over the ${show(third.areaCm2, 'cm2')} that the halves leave locked: ${placeSpot(third, system)}; it leaves ${leanWords(third.direction)}`
			: '';
		lines.push(
			`Make it in ${parted.pieces === 2 ? 'two' : 'three'} pieces: part it ${planeWords(parted, show)}${over}${rest}.`
		);
	}
	lines.push(
		freeingGloveMm === null
			? 'No glove up to four times as thick frees it.'
			: `A glove of ${show(freeingGloveMm, 'mm')} is the least that frees it in one piece.`
	);
	return { key: 'shell', title, lines, isHard: true };
}

function leanWords([x, y, z]: readonly [number, number, number]): string {
	const leanDeg = (Math.atan2(Math.hypot(x, y), z) * 180) / Math.PI;
	if (leanDeg < UPRIGHT_DEG) return 'straight up';
	const side = Math.abs(x) > Math.abs(y) ? (x > 0 ? 'right' : 'left') : y > 0 ? 'back' : 'front';
	return leanDeg > 80 ? `sideways, to the ${side}` : `${Math.round(leanDeg)}° to the ${side}`;
}

function planeWords(
	{ normal: [x, y, z], offsetMm }: NonNullable<MeshHandling['opening']['parted']>,
	show: Show
): string {
	const off = Math.abs(offsetMm) < 0.5 ? null : show(Math.abs(offsetMm), 'mm');
	if (Math.abs(z) > 0.7) return off ? `level, ${off} up` : 'level, at the board';
	const [a, b] = Math.abs(x) > Math.abs(y) ? ['right', 'left'] : ['back', 'front'];
	const along = Math.abs(x) > Math.abs(y) ? 'front to back' : 'left to right';
	const ahead = (Math.abs(x) > Math.abs(y) ? x : y) * offsetMm > 0;
	return off ? `${along}, ${off} ${ahead ? a : b} of the middle` : `${along}, through the middle`;
}

function undercutWords(
	{ undercut, stretch }: MeshHandling,
	show: Show,
	system: UnitSystem,
	elongation: Asked['elongation']
): HandlingWords {
	const title = 'Undercut and stretch';
	if (undercut.depthMm === 0 || !undercut.at) {
		const line = 'No undercut: the glove comes off straight up without stretching.';
		return { key: 'undercut', title, lines: [line], isHard: false };
	}
	const lines = [
		`Greatest undercut ${show(undercut.depthMm, 'mm')} at U: ${placeSpot(undercut.at, system)}; ${show(undercut.areaCm2, 'cm2')} overhang.`
	];
	if (stretch.fraction > 0) {
		lines.push(
			`Pulled straight off, the ring ${show(stretch.zMm, 'mm')} up stretches most: by ${Math.round(100 * stretch.fraction)}% at most, less when peeled from an open side.`
		);
	}
	if (!elongation) return { key: 'undercut', title, lines, isHard: true };
	const { name, fraction } = elongation;
	const usable = fraction === null ? null : fraction * STRETCH_SHARE;
	lines.push(
		usable === null
			? `The sheet of ${name} gives no elongation: nobody can compute whether it stands that.`
			: `${name} takes ${Math.round(100 * usable)}% again and again: ${stretch.fraction <= usable ? 'enough' : 'not enough'}.`
	);
	return { key: 'undercut', title, lines, isHard: usable === null || stretch.fraction > usable };
}

function keyWords({ keying }: MeshHandling, show: Show, system: UnitSystem): HandlingWords {
	const { slideMm, turnDeg, isKeyed, keysAt } = keying;
	const slide = slideMm === null ? 'slides freely' : `slides ${show(slideMm, 'mm')}`;
	const turn = turnDeg === null ? 'turns freely' : `turns ${Number(turnDeg.toPrecision(2))}°`;
	const moves = `The shell ${slide} and ${turn} on the glove before it binds`;
	return {
		key: 'keys',
		title: 'Keys',
		lines: isKeyed
			? [`${moves}: the shape keys the two by itself.`]
			: [
					`${moves}: the shape does not key the two.`,
					`Set keys into the flange at K: ${keysAt.map((spot) => placeSpot(spot, system).replace(', at the board', '')).join('; ')}. They fit one way only.`
				],
		isHard: !isKeyed
	};
}

function puddleWords(
	{ puddles, unlistedPuddles }: MeshHandling,
	show: Show,
	system: UnitSystem
): HandlingWords {
	const title = 'Puddles of thin material';
	if (puddles.length === 0) {
		const line = 'None: thin material finds its way down to the board from everywhere.';
		return { key: 'puddles', title, lines: [line], isHard: false };
	}
	const lines = puddles
		.slice(0, 6)
		.map(
			(puddle) =>
				`${puddleSign(puddle.number)}: up to ${show(puddle.depthMm, 'mm')} deep over ${show(puddle.areaCm2, 'cm2')}, ${placeSpot(puddle, system)}.`
		);
	const more = puddles.length - lines.length + unlistedPuddles;
	if (more > 0) lines.push(`${more} smaller ones.`);
	return { key: 'puddles', title, lines, isHard: false };
}
