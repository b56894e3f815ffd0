import { plateCoefficients } from '../laws/plate';
import { headPressureLaw, headPressurePa } from '../laws/head';
import { shellThickness, shellThicknessLaw } from '../laws/shell-thickness';
import type { Sheet } from '../materials/sheet';
import { DEFAULTS, defaultInput } from './defaults';
import { computed, constant, entered, fromSheet, traced, warn, type Draft } from './trace';

export interface ShellThicknessPlan {
	thicknessMm: number;
	why: string;
	headMm: number;
	pressurePa: number;
}

/** Thinnest and thickest even wall that is laid by hand; beyond it, ribs. Common practice, no source. */
const HAND_LAID: Readonly<
	Record<'laminate' | 'plaster' | 'paste', { leastMm: number; mostMm: number }>
> = {
	laminate: { leastMm: 4, mostMm: 12 },
	plaster: { leastMm: 20, mostMm: 50 },
	paste: { leastMm: 10, mostMm: 25 }
};

export type ShellWay = keyof typeof HAND_LAID;

/** How a shell of this material is built up. */
export function shellWay(shell: Sheet): ShellWay {
	if (shell.family === 'plaster' || shell.family === 'concrete') return 'plaster';
	return shell.body === 'liquid' || shell.body === 'free-flowing' ? 'laminate' : 'paste';
}

/** Shell thickness against the full head of the casting, in whole half millimeters, with its reason. */
export function shellThicknessPlan(draft: Draft): ShellThicknessPlan {
	const { inputs, surface } = draft;
	const { shell, casting } = inputs.materials;
	const headMm = traced(draft, 'pour.headMm', {
		label: 'Head of the casting',
		value: surface.heightMm,
		unit: 'mm',
		law: headPressureLaw,
		inputs: [computed('h', 'height of the pattern', surface.heightMm, 'mm', 'surface.heightMm')],
		note: 'The mold is filled upside down, up to the face that stood on the board.'
	});
	const densityGPerMl = Math.max(0.1, casting.mixedDensityGPerMl);
	const pressurePa = traced(draft, 'pour.pressurePa', {
		label: 'Pressure at the deepest point',
		value: headPressurePa({ densityGPerMl, headMm }),
		unit: 'Pa',
		law: headPressureLaw,
		inputs: [
			fromSheet('ρ', 'density of the casting', densityGPerMl, 'g/mL'),
			constant('g', 'standard gravity', 9.80665, 'm/s'),
			computed('h', 'head', headMm, 'mm', 'pour.headMm')
		]
	});
	const wallMm = Math.max(surface.lengthMm, surface.widthMm);
	const shortMm = Math.max(1, Math.min(headMm, wallMm));
	const longMm = Math.max(shortMm, headMm, wallMm);
	const modulusMPa = shell.modulusMPa ?? DEFAULTS.shellModulusMPa.value;
	const modulusPa = Math.max(1e6, modulusMPa * 1e6);
	const allowedMm = Math.max(0.001, shortMm * DEFAULTS.deflectionShare.value);
	const plate = { support: 'simple', load: 'uniform', pressurePa, shortMm, longMm } as const;
	const { alpha } = plateCoefficients(plate);
	const neededMm = shellThickness({
		...plate,
		modulusPa,
		allowedDeflectionMm: allowedMm
	}).thicknessMm;
	const { leastMm, mostMm } = HAND_LAID[shellWay(shell)];
	const planned = inputs.shellThicknessMm ?? Math.min(mostMm, Math.max(leastMm, up(neededMm)));
	const thicknessMm = traced(draft, 'shell.thicknessMm', {
		label: 'Thickness of the shell',
		value: planned,
		unit: 'mm',
		law: shellThicknessLaw,
		inputs: [
			...(inputs.shellThicknessMm === undefined
				? []
				: [entered('t', 'thickness asked for', inputs.shellThicknessMm, 'mm')]),
			computed('q', 'pressure', pressurePa, 'Pa', 'pour.pressurePa'),
			computed('a', 'short side of the flattest wall', shortMm, 'mm'),
			computed('b', 'long side', longMm, 'mm'),
			computed('α', 'plate coefficient', alpha, 'count'),
			shell.modulusMPa
				? fromSheet('E', 'stiffness, MPa', modulusMPa, 'count')
				: defaultInput('E', 'shellModulusMPa'),
			defaultInput('w/a', 'deflectionShare'),
			constant('t_min', 'thinnest laid by hand (common practice, no source)', leastMm, 'mm')
		],
		note: `The plate asks for ${neededMm.toFixed(1)} mm; curved walls are stiffer than this flat one.`
	});
	if (neededMm > thicknessMm * 1.001) {
		const text = `A flat wall of this size needs ${neededMm.toFixed(0)} mm of ${shell.name} to stay within a 500th of its span; ${thicknessMm} mm are planned. Brace the large faces with ribs.`;
		warn(draft, 'warn', 'shell-ribs', 'shell', text);
	}
	return {
		thicknessMm,
		why: reason(neededMm, thicknessMm, leastMm, inputs.shellThicknessMm),
		headMm,
		pressurePa
	};
}

const up = (mm: number): number => Math.ceil(mm * 2 - 1e-9) / 2;

function reason(neededMm: number, thicknessMm: number, leastMm: number, asked?: number): string {
	const plate = `against the head of the casting a flat wall needs ${neededMm.toFixed(1)} mm`;
	if (asked !== undefined) return `${asked} mm as asked for; ${plate}.`;
	if (thicknessMm < neededMm) return `${thicknessMm} mm with ribs; ${plate} without them.`;
	return thicknessMm > neededMm && thicknessMm === leastMm
		? `${thicknessMm} mm, the least that is laid by hand and stands wedging; ${plate}.`
		: `${thicknessMm} mm; ${plate}.`;
}
