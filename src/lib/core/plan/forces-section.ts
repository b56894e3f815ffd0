import { frameBoardBending, frameBoardLaw } from '../laws/beam';
import { curvedShell, curvedShellLaw } from '../laws/curved-shell';
import { plateBending, plateDeflectionLaw } from '../laws/plate';
import { strapForceLaw, strapForceN } from '../laws/strap';
import { boardUpliftLaw, boardUpliftN, coreUplift, coreUpliftLaw } from '../laws/uplift';
import { DEFAULTS, defaultInput } from './defaults';
import type { FramePlan } from './frame-plan';
import type { Plan } from './plan';
import type { ShellThicknessPlan } from './shell-thickness-plan';
import { computed, fromSheet, traced, warn, type Draft } from './trace';
import { withinLaw } from './within-law';

type ForcesSection = NonNullable<Plan['forces']>;

/** What liquids do to frame, shell, lid and pattern. */
export function forcesSection(
	draft: Draft,
	frame: FramePlan,
	shell: ShellThicknessPlan,
	gloveMm: number
): ForcesSection {
	return {
		frameBoard: frameBoard(draft, frame, shell, gloveMm),
		shellWall: shellWall(draft, shell),
		roundWall: roundWall(draft, shell, gloveMm),
		lid: lid(draft, frame),
		pattern: patternUplift(draft)
	};
}

const modulusPa = (draft: Draft): number =>
	Math.max(1e6, (draft.inputs.materials.shell.modulusMPa ?? DEFAULTS.shellModulusMPa.value) * 1e6);
const modulusInput = ({ inputs }: Draft) =>
	inputs.materials.shell.modulusMPa
		? fromSheet('E', 'stiffness, MPa', inputs.materials.shell.modulusMPa, 'count')
		: defaultInput('E', 'shellModulusMPa');

function frameBoard(
	draft: Draft,
	{ frame }: FramePlan,
	shell: ShellThicknessPlan,
	gloveMm: number
): ForcesSection['frameBoard'] {
	const spanMm = Math.max(frame.insideLengthMm, frame.insideWidthMm);
	const densityGPerMl = Math.max(0.1, draft.inputs.materials.shell.mixedDensityGPerMl);
	const headMm = Math.min(frame.heightMm, gloveMm + shell.thicknessMm);
	const inputs = [
		fromSheet('ρ', 'density of the wet shell', densityGPerMl, 'g/mL'),
		computed('h', 'glove and shell at the flange', headMm, 'mm'),
		computed('L', 'longest side inside the frame', spanMm, 'mm'),
		computed('H', 'height of the board', frame.heightMm, 'mm'),
		defaultInput('t', 'boardMm'),
		defaultInput('E', 'boardModulusMPa')
	];
	return withinLaw(draft, 'frame', 'Bulge of the frame', () => {
		const { deflectionMm, stressPa } = frameBoardBending({
			densityGPerMl,
			headMm,
			spanMm,
			boardHeightMm: frame.heightMm,
			boardMm: DEFAULTS.boardMm.value,
			modulusPa: DEFAULTS.boardModulusMPa.value * 1e6
		});
		const law = frameBoardLaw;
		return {
			spanMm,
			deflectionMm: traced(draft, 'forces.frameBoard.deflectionMm', {
				label: 'Bulge of the longest frame board',
				value: deflectionMm,
				unit: 'mm',
				law,
				inputs
			}),
			stressPa: traced(draft, 'forces.frameBoard.stressPa', {
				label: 'Bending stress in the longest frame board',
				value: stressPa,
				unit: 'Pa',
				law,
				inputs
			})
		};
	});
}

function shellWall(draft: Draft, shell: ShellThicknessPlan): ForcesSection['shellWall'] {
	const { lengthMm, widthMm } = draft.surface;
	const wallMm = Math.max(lengthMm, widthMm);
	const shortMm = Math.max(1, Math.min(shell.headMm, wallMm));
	const longMm = Math.max(shortMm, shell.headMm, wallMm);
	const inputs = [
		computed('q', 'pressure', shell.pressurePa, 'Pa', 'pour.pressurePa'),
		computed('a', 'short side', shortMm, 'mm'),
		computed('b', 'long side', longMm, 'mm'),
		computed('t', 'shell', shell.thicknessMm, 'mm', 'shell.thicknessMm'),
		modulusInput(draft)
	];
	return withinLaw(draft, 'shell', 'Bulge of the shell', () => {
		const { deflectionMm, stressPa, warnings } = plateBending({
			support: 'simple',
			load: 'uniform',
			pressurePa: shell.pressurePa,
			shortMm,
			longMm,
			thicknessMm: shell.thicknessMm,
			modulusPa: modulusPa(draft)
		});
		for (const text of warnings) warn(draft, 'note', 'law-limit', 'shell', text);
		const base = {
			law: plateDeflectionLaw,
			inputs,
			note: ['Flat and unribbed; a curved wall is stiffer.', ...warnings].join(' ')
		};
		return {
			deflectionMm: traced(draft, 'forces.shellWall.deflectionMm', {
				...base,
				label: 'Bulge of the flattest shell wall',
				value: deflectionMm,
				unit: 'mm'
			}),
			stressPa: traced(draft, 'forces.shellWall.stressPa', {
				...base,
				label: 'Bending stress in the flattest shell wall',
				value: stressPa,
				unit: 'Pa'
			})
		};
	});
}

/** Only where every solid is round, so that the shell closes on itself. */
function roundWall(
	draft: Draft,
	shell: ShellThicknessPlan,
	gloveMm: number
): ForcesSection['roundWall'] {
	const { body } = draft.inputs.pattern;
	const isRound =
		body.kind === 'solids' &&
		body.solids.every(({ shape, on }) => on === 'board' || shape !== 'box') &&
		body.solids.every(({ shape }) => ['cylinder', 'frustum', 'dome'].includes(shape));
	const radiusMm = Math.max(draft.surface.lengthMm, draft.surface.widthMm) / 2 + gloveMm;
	if (!isRound || shell.thicknessMm > radiusMm / 10) return null;
	const inputs = [
		computed('p', 'pressure', shell.pressurePa, 'Pa', 'pour.pressurePa'),
		computed('r', 'radius', radiusMm, 'mm'),
		computed('t', 'shell', shell.thicknessMm, 'mm', 'shell.thicknessMm'),
		modulusInput(draft)
	];
	return withinLaw(draft, 'shell', 'Growth of the round shell', () => {
		const { growthMm, stressPa } = curvedShell({
			form: 'cylinder',
			pressurePa: shell.pressurePa,
			radiusMm,
			thicknessMm: shell.thicknessMm,
			modulusPa: modulusPa(draft)
		});
		const law = curvedShellLaw;
		return {
			radiusMm,
			growthMm: traced(draft, 'forces.roundWall.growthMm', {
				label: 'Growth of the round shell’s radius',
				value: growthMm,
				unit: 'mm',
				law,
				inputs
			}),
			stressPa: traced(draft, 'forces.roundWall.stressPa', {
				label: 'Hoop stress in the round shell',
				value: stressPa,
				unit: 'Pa',
				law,
				inputs
			})
		};
	});
}

function lid(draft: Draft, { frame }: FramePlan): ForcesSection['lid'] {
	const { casting } = draft.inputs.materials;
	const board = frame.boards.find(({ name }) => name === 'Mold board');
	const lidMassG = board
		? ((board.lengthMm * board.widthMm * board.thicknessMm) / 1000) * DEFAULTS.boardGPerMl.value
		: 0;
	const riserMm = DEFAULTS.riserMm.value;
	const straps = DEFAULTS.straps.value;
	const { footprintCm2 } = draft.surface;
	return withinLaw(draft, 'pour', 'Uplift of a lid', () => {
		const upliftN = traced(draft, 'forces.lid.upliftN', {
			label: 'Uplift on the mold board as a lid',
			value: boardUpliftN({
				densityGPerMl: Math.max(0.1, casting.mixedDensityGPerMl),
				headMm: riserMm,
				areaCm2: footprintCm2
			}),
			unit: 'N',
			law: boardUpliftLaw,
			inputs: [
				fromSheet('ρ', 'density of the casting', casting.mixedDensityGPerMl, 'g/mL'),
				defaultInput('h', 'riserMm'),
				computed('A', 'footprint', footprintCm2, 'cm2', 'surface.footprintCm2')
			],
			note: 'Only when the mold is closed and filled through a riser.'
		});
		return {
			riserMm,
			straps,
			upliftN,
			strapN: traced(draft, 'forces.lid.strapN', {
				label: 'Tension that each strap must hold',
				value: strapForceN({ upliftN, lidMassG, straps }),
				unit: 'N',
				law: strapForceLaw,
				inputs: [
					computed('F', 'uplift', upliftN, 'N', 'forces.lid.upliftN'),
					computed('m', 'lid', lidMassG, 'g'),
					defaultInput('n', 'straps')
				]
			})
		};
	});
}

function patternUplift(draft: Draft): ForcesSection['pattern'] {
	const { build } = draft.inputs.materials;
	const { volumeMl } = draft.surface;
	return withinLaw(draft, 'pattern', 'Uplift of the pattern', () => {
		const { netUpliftN, immersedFraction } = coreUplift({
			volumeMl,
			massG: 0,
			liquidGPerMl: Math.max(0.1, build.mixedDensityGPerMl)
		});
		return {
			upliftN: traced(draft, 'forces.pattern.upliftN', {
				label: 'Uplift of the pattern in a poured block or layer',
				value: netUpliftN,
				unit: 'N',
				law: coreUpliftLaw,
				inputs: [
					computed('V', 'volume of the pattern', volumeMl, 'mL', 'surface.volumeMl'),
					fromSheet('ρ', 'density of the rubber', build.mixedDensityGPerMl, 'g/mL')
				],
				note: 'As if the pattern were hollow and weighed nothing: fix it from below.'
			}),
			immersedFraction
		};
	});
}
