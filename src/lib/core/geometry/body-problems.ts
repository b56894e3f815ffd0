import { meshBodyProblems } from './mesh-body';
import { lieOn, widestFoot } from './overhang';
import type { Body, Solid } from './pattern';
import { BOARD, measuresIn, stackOf, type Stack } from './solid-stack';

/** Share of its foot on which a solid is taken to stand; choice of ours. */
const LEAST_CARRIED = 1 / 3;

const millimeters = (mm: number): string => `${Number(mm.toPrecision(3))} mm`;

export interface BodyProblem {
	/** Where in the body, for example "solids.2.on". */
	path: string;
	message: string;
	/** A "note" can be lived with; with a "refuse" nothing can be computed. */
	severity: 'refuse' | 'note';
}

type Found = Omit<BodyProblem, 'path'> & { field: string };

const refuse = (field: string, message: string): Found => ({ field, message, severity: 'refuse' });
const noted = (field: string, message: string): Found => ({ field, message, severity: 'note' });

/** What is wrong with a body whose fields are each in range; empty when all is well. */
export function bodyProblems(body: Body): BodyProblem[] {
	if (body.kind === 'measured') return measuredProblems(body).map(at(''));
	if (body.kind === 'mesh') {
		return meshBodyProblems(body).map(({ field, message }) => at('')(refuse(field, message)));
	}
	const { solids } = body;
	const stack = stackOf(solids);
	return solids.flatMap((solid, index) =>
		[
			...nameProblems(solid, index, solids),
			...shapeProblems(solid),
			...supportProblems(solid, solids, stack),
			...againstProblems(solid, solids, stack)
		].map(at(`solids.${index}.`))
	);
}

const at =
	(prefix: string) =>
	({ field, message, severity }: Found): BodyProblem => ({
		path: prefix + field,
		message,
		severity
	});

function measuredProblems(body: Extract<Body, { kind: 'measured' }>): Found[] {
	const { exposedAreaCm2, volumeMl, lengthMm, widthMm, heightMm } = body;
	const boxMl = (lengthMm * widthMm * heightMm) / 1000;
	const leastCm2 = Math.max((volumeMl * 10) / heightMm, leastCoverCm2(volumeMl));
	const outlineCm2 = (Math.PI * lengthMm * widthMm) / 400;
	const found: Found[] = [];
	if (volumeMl > boxMl * 1.000001) {
		found.push(
			refuse(
				'volumeMl',
				`The volume, ${volumeMl} mL, is more than the box around the pattern holds: ${boxMl.toPrecision(4)} mL at most.`
			)
		);
	} else if (exposedAreaCm2 < leastCm2 * 0.999999) {
		found.push(
			refuse(
				'exposedAreaCm2',
				`The area, ${exposedAreaCm2} cm², is too small for this volume and height; accepted: at least ${leastCm2.toPrecision(4)} cm².`
			)
		);
	} else if (exposedAreaCm2 < outlineCm2) {
		found.push(
			noted(
				'exposedAreaCm2',
				`The area, ${exposedAreaCm2} cm², is less than what the pattern is taken to stand on, ${outlineCm2.toPrecision(4)} cm²: only one that is much narrower than its length and width say, such as a cross, has so little. Measure again.`
			)
		);
	}
	return found;
}

/** The least area that covers a volume on a board: a hemisphere’s (Dido’s problem in space). */
const leastCoverCm2 = (volumeMl: number): number => Math.cbrt(18 * Math.PI * volumeMl ** 2);

function nameProblems(solid: Solid, index: number, solids: readonly Solid[]): Found[] {
	if (solid.id === BOARD)
		return [refuse('id', '"board" is the mold board; name the solid otherwise.')];
	return solids.findIndex(({ id }) => id === solid.id) < index
		? [refuse('id', `Two solids are called "${solid.id}"; each needs its own id.`)]
		: [];
}

function shapeProblems(solid: Solid): Found[] {
	return solid.shape === 'ring' && solid.innerDiameterMm >= solid.outerDiameterMm
		? [
				refuse(
					'innerDiameterMm',
					`The hole, ${solid.innerDiameterMm} mm, must be narrower than the ring, ${solid.outerDiameterMm} mm.`
				)
			]
		: [];
}

function supportProblems(solid: Solid, solids: readonly Solid[], stack: Stack): Found[] {
	if (solid.on === BOARD) return [];
	const below = solids.find(({ id }) => id === solid.on);
	if (!below) {
		const known = [BOARD, ...solids.map(({ id }) => id).filter((id) => id !== solid.id)];
		return [
			refuse(
				'on',
				`Nothing is called "${solid.on}"; accepted: ${known.map((id) => `"${id}"`).join(', ')}.`
			)
		];
	}
	if (standsOnItself(solid, solids)) {
		return [
			refuse(
				'on',
				`"${solid.id}" stands on itself; one solid of the circle must stand on the board.`
			)
		];
	}
	const { standingCm2 } = measuresIn(stack, below.id);
	const { bottomCm2 } = measuresIn(stack, solid.id);
	if (standingCm2 === 0) {
		return [refuse('on', `"${below.id}" ends in a point; nothing can stand on it.`)];
	}
	const notes: Found[] = [];
	const { carriedCm2, overhangMm } = lieOn(solid, below);
	if (carriedCm2 < bottomCm2 * LEAST_CARRIED) {
		const { field, mostMm } = widestFoot(solid, below);
		return [
			refuse(
				field,
				`"${solid.id}" reaches ${millimeters(overhangMm)} beyond "${below.id}" below it, which carries less than a third of its foot; accepted: a third at least, or up to ${millimeters(mostMm)} to be carried all round.`
			)
		];
	}
	if (overhangMm > 1e-6 && carriedCm2 < bottomCm2 * 0.999999) {
		notes.push(
			noted(
				'on',
				`"${solid.id}" reaches ${millimeters(overhangMm)} beyond "${below.id}" below it: the overhang is an undercut, and its underside is counted.`
			)
		);
	}
	if (below.shape === 'dome' || below.shape === 'wedge') {
		notes.push(
			noted('on', `"${below.id}" is not flat on top; the area hidden there is an estimate.`)
		);
	}
	return notes;
}

function standsOnItself(solid: Solid, solids: readonly Solid[]): boolean {
	const seen = new Set<string>();
	for (let now: Solid | undefined = solid; now;) {
		if (seen.has(now.id)) return true;
		seen.add(now.id);
		const support: string = now.on;
		now = support === BOARD ? undefined : solids.find(({ id }) => id === support);
	}
	return false;
}

function againstProblems(solid: Solid, solids: readonly Solid[], stack: Stack): Found[] {
	return solid.against.flatMap(({ id, areaCm2 }, index) => {
		const field = `against.${index}`;
		if (id === solid.id) return [refuse(`${field}.id`, `"${id}" can't be pressed against itself.`)];
		if (!solids.some((other) => other.id === id)) {
			return [refuse(`${field}.id`, `Nothing is called "${id}".`)];
		}
		const mostCm2 = Math.min(wallCm2(solid.id, stack), wallCm2(id, stack));
		return areaCm2 > mostCm2 * 1.000001
			? [
					refuse(
						`${field}.areaCm2`,
						`The area pressed together, ${areaCm2} cm², is more than the smaller of the two has on its sides: ${mostCm2.toPrecision(4)} cm² at most.`
					)
				]
			: [];
	});
}

function wallCm2(id: string, stack: Stack): number {
	const { sideCm2, topCm2, standingCm2 } = measuresIn(stack, id);
	// A dome has no side of its own: its surface is all top.
	return sideCm2 > 0 ? sideCm2 : Math.max(topCm2, standingCm2);
}
