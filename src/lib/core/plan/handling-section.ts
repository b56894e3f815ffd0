import type { MeshHandling } from '../geometry/mesh-handling';
import { drainingAreaCm2 } from '../mesh/draining';
import { sagLaw } from '../laws/sag';
import type { GloveBuild } from './glove-build';
import type { Plan } from './plan';
import { computed, fromSheet, traced, warn, type Draft } from './trace';
import { withinLaw } from './within-law';

type HandlingSection = NonNullable<Plan['handling']>;

/** Share of its elongation that a glove takes again and again without tearing; common practice, no source. */
const STRETCH_SHARE = 1 / 3;
/** A glove as thick as the one that was computed with, or a hair less, is the same; a choice. */
const SAME_MM = 0.05;

/** How glove and shell come off by the mesh, with what has to be said about it; null without one. */
export function handlingSection(draft: Draft, build: GloveBuild): HandlingSection | null {
	const { body } = draft.inputs.pattern;
	if (body.kind !== 'mesh' || body.handling === undefined) return null;
	const { handling } = body;
	const { build: sheet } = draft.inputs.materials;
	const shell = shellOver(handling, build.thicknessMm);
	const section: HandlingSection = {
		shell,
		pieces: shell === 'locks' ? (handling.opening.parted?.pieces ?? null) : null,
		lockedCm2: shell === 'leaves' ? 0 : handling.opening.lockedCm2,
		freeingGloveMm: handling.opening.freeingGloveMm,
		stretchFraction: handling.stretch.fraction,
		elongationFraction: sheet.elongationPct === undefined ? null : sheet.elongationPct / 100,
		runsOffCm2: runsOff(draft, handling, Math.max(...build.buildMm))
	};
	warnOfShell(draft, section, handling, build.thicknessMm);
	warnOfStretch(draft, section, handling);
	if (!handling.keying.isKeyed) {
		const text = `Nothing in the pattern’s shape keys glove and shell: set ${handling.keying.keysAt.length} keys into the flange, as the plan shows, so that they go together one way only.`;
		warn(draft, 'note', 'keys-needed', 'shell', text);
	}
	return section;
}

/** A thicker glove rounds off more; one thinner than the computed one may lock where that did not. */
function shellOver(
	{ gloveMm, opening }: MeshHandling,
	plannedMm: number
): HandlingSection['shell'] {
	const { isFree, freeingGloveMm } = opening;
	if (freeingGloveMm !== null && plannedMm >= freeingGloveMm - SAME_MM) return 'leaves';
	return isFree || plannedMm > gloveMm + SAME_MM ? 'not computed' : 'locks';
}

function runsOff(draft: Draft, { slopeAreasCm2 }: MeshHandling, wetMm: number): number | null {
	const { build } = draft.inputs.materials;
	const { yieldStressPa, mixedDensityGPerMl: densityGPerMl } = build;
	if (yieldStressPa === undefined) return null;
	return withinLaw(draft, 'coats', 'Walls from which the thickest coat runs off', () =>
		traced(draft, 'handling.runsOffCm2', {
			label: 'Walls from which the thickest build coat runs off',
			value: drainingAreaCm2(
				{ slopeAreasCm2: Float64Array.from(slopeAreasCm2) },
				{ wetMm, yieldStressPa, densityGPerMl }
			),
			unit: 'cm2',
			law: sagLaw,
			inputs: [
				computed('h', 'thickest build coat', wetMm, 'mm'),
				fromSheet('τ_y', 'yield stress', yieldStressPa, 'Pa'),
				fromSheet('ρ', 'density of the mix', densityGPerMl, 'g/mL'),
				computed('n', 'slopes of the mesh, in steps of 5°', slopeAreasCm2.length, 'count')
			]
		})
	);
}

const short = (mm: number): string => `${Number(mm.toPrecision(2))} mm`;

function warnOfShell(
	draft: Draft,
	{ shell, pieces, lockedCm2, freeingGloveMm }: HandlingSection,
	{ gloveMm, opening }: MeshHandling,
	plannedMm: number
): void {
	if (shell === 'leaves') return;
	if (shell === 'not computed') {
		const text = `Whether the shell leaves was computed on the mesh over a glove of ${short(gloveMm)}, not over ${short(plannedMm)}: measure the pattern again with this glove.`;
		return warn(draft, 'warn', 'shell-not-computed', 'shell', text);
	}
	const thicker =
		freeingGloveMm === null ? '' : ` A glove of ${short(freeingGloveMm)} would free it.`;
	const locks = `A shell in one piece locks over ${Number(lockedCm2.toPrecision(2))} cm² of the pattern.`;
	if (pieces === null && freeingGloveMm === null) {
		const text = `${locks} No parting was found that frees it: fill undercuts on the back of the glove, or choose another mold.`;
		return warn(draft, 'refuse', 'shell-lock', 'shell', text);
	}
	const left = opening.parted?.lockedCm2 ?? 0;
	const rest =
		left > 0.05 * lockedCm2
			? ` ${Number(left.toPrecision(2))} cm² still lock: fill the back of the glove there until it drafts.`
			: '';
	const parted =
		pieces === null
			? ''
			: ` Make it in ${pieces === 2 ? 'two' : 'three'} pieces, parted as the pattern’s page draws it.${rest}`;
	warn(draft, 'warn', 'shell-lock', 'shell', `${locks}${parted}${thicker}`);
}

function warnOfStretch(
	draft: Draft,
	{ stretchFraction, elongationFraction }: HandlingSection,
	{ undercut }: MeshHandling
): void {
	const { build } = draft.inputs.materials;
	if (undercut.depthMm === 0 || stretchFraction === 0) return;
	const pct = (fraction: number): string => `${Math.round(100 * fraction)}%`;
	if (elongationFraction === null) {
		const text = `The data sheet of ${build.name} gives no elongation, so nobody can compute whether the glove stretches over ${short(undercut.depthMm)} of undercut.`;
		return warn(draft, 'warn', 'undercut-stretch', 'pattern', text);
	}
	if (stretchFraction <= elongationFraction * STRETCH_SHARE) return;
	const isTorn = stretchFraction > elongationFraction;
	const text = `Pulled straight off, the glove stretches by ${pct(stretchFraction)} at most; ${build.name} takes ${pct(elongationFraction * STRETCH_SHARE)} again and again and tears at ${pct(elongationFraction)}. ${isTorn ? 'It comes off only where a side is open to peel from; slit it, or choose another mold.' : 'Peel it from where the plan says, slowly.'}`;
	warn(draft, 'warn', 'undercut-stretch', 'pattern', text);
}
