import { frameBoardBending, frameBoardLaw } from '../laws/beam';
import { curvedShell, curvedShellLaw } from '../laws/curved-shell';
import { plateBending, plateDeflectionLaw } from '../laws/plate';
import { around } from '../quantity/range';
import { lidUplift, patternUplift } from './forces-uplift';
import { boardInput, boardThicknessMm } from './board-thickness';
import { DEFAULTS, defaultInput } from './defaults';
import type { FramePlan } from './frame-plan';
import type { Plan } from './plan';
import type { ShellThicknessPlan } from './shell-thickness-plan';
import { computed, fromSheet, inherited, traced, warn, type Draft } from './trace';
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
		lid: lidUplift(draft, frame),
		pattern: patternUplift(draft)
	};
}

/** The least that the laws of walls take. */
const modulusPa = (modulusMPa: number): number => Math.max(1e6, modulusMPa * 1e6);
const modulusMPaOf = ({ inputs }: Draft): number =>
	inputs.materials.shell.modulusMPa ?? DEFAULTS.shellModulusMPa.value;
const modulusInput = ({ inputs }: Draft) =>
	inputs.materials.shell.modulusMPa
		? fromSheet('E', 'stiffness, MPa', inputs.materials.shell.modulusMPa, 'count')
		: defaultInput('E', 'shellModulusMPa');

/** A wall that is laid by hand is as uneven as a brushed coat. */
const laidInput = ({ thicknessMm }: ShellThicknessPlan) => ({
	...computed('t', 'shell', thicknessMm, 'mm', 'shell.thicknessMm'),
	...around(thicknessMm, 2 * DEFAULTS.spreadFraction.value)
});

function frameBoard(
	draft: Draft,
	{ frame }: FramePlan,
	shell: ShellThicknessPlan,
	gloveMm: number
): ForcesSection['frameBoard'] {
	const spanMm = Math.max(frame.insideLengthMm, frame.insideWidthMm);
	const densityGPerMl = Math.max(0.1, draft.inputs.materials.shell.mixedDensityGPerMl);
	const headMm = Math.min(frame.heightMm, gloveMm + shell.thicknessMm);
	const loaded = [
		fromSheet('ρ', 'density of the wet shell', densityGPerMl, 'g/mL'),
		computed('h', 'glove and shell at the flange', headMm, 'mm'),
		computed('L', 'longest side inside the frame', spanMm, 'mm'),
		computed('H', 'height of the board', frame.heightMm, 'mm'),
		boardInput(draft)
	];
	const inputs = [...loaded, defaultInput('E', 'boardModulusMPa')];
	return withinLaw(draft, 'frame', 'Bulge of the frame', () => {
		const bent = (modulusMPa: number) =>
			frameBoardBending({
				densityGPerMl,
				headMm,
				spanMm,
				boardHeightMm: frame.heightMm,
				boardMm: boardThicknessMm(draft),
				modulusPa: modulusMPa * 1e6
			});
		const { deflectionMm, stressPa } = bent(DEFAULTS.boardModulusMPa.value);
		const law = frameBoardLaw;
		return {
			spanMm,
			deflectionMm: traced(draft, 'forces.frameBoard.deflectionMm', {
				label: 'Bulge of the longest frame board',
				value: deflectionMm,
				unit: 'mm',
				law,
				inputs,
				...inherited(draft, inputs, (...values) => bent(values.at(-1) ?? NaN).deflectionMm)
			}),
			stressPa: traced(draft, 'forces.frameBoard.stressPa', {
				label: 'Bending stress in the longest frame board',
				value: stressPa,
				unit: 'Pa',
				law,
				// Load and section alone: the same in a stiffer board.
				inputs: loaded
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
		laidInput(shell),
		modulusInput(draft)
	];
	return withinLaw(draft, 'shell', 'Bulge of the shell', () => {
		const bent = (thicknessMm: number, modulusMPa: number) =>
			plateBending({
				support: 'simple',
				load: 'uniform',
				pressurePa: shell.pressurePa,
				shortMm,
				longMm,
				thicknessMm,
				modulusPa: modulusPa(modulusMPa)
			});
		const { deflectionMm, stressPa, warnings } = bent(shell.thicknessMm, modulusMPaOf(draft));
		const over = (key: 'deflectionMm' | 'stressPa') =>
			inherited(draft, inputs, (...[, , , t = 0, e = 0]) => bent(t, e)[key]);
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
				unit: 'mm',
				...over('deflectionMm')
			}),
			stressPa: traced(draft, 'forces.shellWall.stressPa', {
				...base,
				label: 'Bending stress in the flattest shell wall',
				value: stressPa,
				unit: 'Pa',
				...over('stressPa')
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
		laidInput(shell),
		modulusInput(draft)
	];
	return withinLaw(draft, 'shell', 'Growth of the round shell', () => {
		const stretched = (thicknessMm: number, modulusMPa: number) =>
			curvedShell({
				form: 'cylinder',
				pressurePa: shell.pressurePa,
				radiusMm,
				thicknessMm,
				modulusPa: modulusPa(modulusMPa)
			});
		const { growthMm, stressPa } = stretched(shell.thicknessMm, modulusMPaOf(draft));
		const over = (key: 'growthMm' | 'stressPa') =>
			inherited(draft, inputs, (...[, , t = 0, e = 0]) => stretched(t, e)[key]);
		const law = curvedShellLaw;
		return {
			radiusMm,
			growthMm: traced(draft, 'forces.roundWall.growthMm', {
				label: 'Growth of the round shell’s radius',
				value: growthMm,
				unit: 'mm',
				law,
				inputs,
				...over('growthMm')
			}),
			stressPa: traced(draft, 'forces.roundWall.stressPa', {
				label: 'Hoop stress in the round shell',
				value: stressPa,
				unit: 'Pa',
				law,
				inputs,
				...over('stressPa')
			})
		};
	});
}
