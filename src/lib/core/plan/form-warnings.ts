import { lieOn } from '../geometry/overhang';
import type { MeshBody } from '../geometry/mesh-body';
import type { Body } from '../geometry/pattern';
import { bodyProblems } from '../geometry/solids';
import { warn, type Draft } from './trace';

/** Share of its elongation that a glove takes again and again without tearing; common practice, no source. */
const STRETCH_SHARE = 1 / 3;

/** How far solids reach beyond those that carry them, in whole tenths of a millimeter; 0 when none does. */
function overhangOf(body: Body): number {
	if (body.kind !== 'solids') return 0;
	const overhangs = body.solids.map((solid) => {
		const below = body.solids.find(({ id }) => id === solid.on);
		return below ? lieOn(solid, below).overhangMm : 0;
	});
	return Math.round(10 * Math.max(0, ...overhangs)) / 10;
}

/** What the pattern's form says against glove and shell. */
export function warnOfForm(draft: Draft, gloveMm: number): void {
	const { inputs, surface } = draft;
	for (const { path, message, severity } of bodyProblems(inputs.pattern.body)) {
		if (severity === 'note') warn(draft, 'note', 'pattern-form', `pattern.body.${path}`, message);
	}
	const { body } = inputs.pattern;
	const leastMm = Math.min(surface.lengthMm, surface.widthMm, surface.heightMm);
	if (gloveMm > leastMm) {
		const text = `The glove, ${gloveMm} mm, is thicker than the pattern's least dimension, ${Number(leastMm.toPrecision(3))} mm: it takes more rubber than the part it casts and hardly bends off it. Build it thinner, or pour a block.`;
		warn(draft, 'warn', 'glove-too-thick', 'pattern', text);
	}
	const undercutMm = Math.max(inputs.pattern.undercutMm, overhangOf(body));
	if (body.kind === 'mesh') warnOfUnreached(draft, body);
	// Where the mesh was looked at, it says more than one depth can.
	if (body.kind === 'mesh' && body.handling) return;
	if (undercutMm === 0 && surface.steepestWallDeg > 90.5) {
		const text = `A wall leans out (${Math.round(surface.steepestWallDeg)}°), but no undercut is given: measure how far it overhangs.`;
		warn(draft, 'warn', 'undercut-unknown', 'pattern', text);
	}
	if (undercutMm > 0) warnOfUndercut(draft, undercutMm, gloveMm);
	for (const solid of body.kind === 'solids' ? body.solids : []) {
		if (solid.shape === 'ring' && solid.innerDiameterMm < 4 * gloveMm) {
			const text = `The hole in "${solid.name}" is ${solid.innerDiameterMm} mm wide: ${gloveMm} mm of glove on each side leave no room for a shell in it. Fill it, or core it.`;
			warn(draft, 'warn', 'hole-closed', 'pattern', text);
		}
	}
}

/** What no brush reaches is on nobody's list unless the plan says so. */
function warnOfUnreached(draft: Draft, { unreached }: MeshBody): void {
	if (!unreached || unreached.areaCm2 === 0) return;
	const { brush, areaCm2, places, unlistedPlaces } = unreached;
	const count = places.length + unlistedPlaces;
	const [where, what, stands] =
		count === 1
			? ['in one deep narrow place', 'it', 'it stands']
			: [`in ${count} deep narrow places`, 'them', 'they stand'];
	const text = `A brush ${brush.widthMm} mm wide does not reach ${Number(areaCm2.toPrecision(2))} cm² of the pattern, ${where}: plug ${what} flush before the release goes on, or let thin material drip in until ${stands} full. The pattern’s page lists ${what}.`;
	warn(draft, 'warn', 'out-of-reach', 'pattern', text);
}

function warnOfUndercut(draft: Draft, undercutMm: number, gloveMm: number): void {
	const { build } = draft.inputs.materials;
	const widthMm = Math.min(draft.surface.lengthMm, draft.surface.widthMm);
	const stretchPct = (200 * undercutMm) / Math.max(1, widthMm - 2 * undercutMm);
	if (build.elongationPct === undefined) {
		const text = `The data sheet of ${build.name} gives no elongation, so nobody can compute whether the glove stretches over ${undercutMm} mm of undercut.`;
		warn(draft, 'warn', 'undercut-stretch', 'pattern', text);
	} else if (stretchPct > build.elongationPct * STRETCH_SHARE) {
		const isTorn = stretchPct > build.elongationPct;
		const text = `To come off ${undercutMm} mm of undercut the glove stretches by about ${Math.round(stretchPct)}%; ${build.name} takes ${Math.round(build.elongationPct * STRETCH_SHARE)}% again and again and tears at ${build.elongationPct}%.`;
		warn(draft, isTorn ? 'refuse' : 'warn', 'undercut-stretch', 'pattern', text);
	}
	if (undercutMm > gloveMm) {
		const text = `An undercut of ${undercutMm} mm is deeper than the glove (${gloveMm} mm): a shell in one piece locks under it. Build the glove thicker there, or choose another mold.`;
		warn(draft, 'refuse', 'shell-lock', 'shell', text);
	} else if (undercutMm > gloveMm / 2) {
		const text = `An undercut of ${undercutMm} mm against ${gloveMm} mm of glove: fill the back of the glove there until the shell drafts.`;
		warn(draft, 'warn', 'shell-lock', 'shell', text);
	}
}
