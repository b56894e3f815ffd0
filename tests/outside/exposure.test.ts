import {
	eightHourPpm,
	exposurePpmS,
	type EndingRelease
} from '../../src/lib/core/laws/exposure-dose';
import { outsideCase } from './outside-case';

const CASES: [what: string, release: EndingRelease, fromS: number][] = [
	['work of 1.1 h in a room without a fan', room(6, 60, 0.332, 1.1, null), 0],
	['work of 4 h in a room with a fan', room(300, 80, 0.06, 4, null), 0],
	['work of 12 h, its last eight hours', room(30, 60, 0.01, 12, null), 4 * 3600],
	['work of 6 h that saturates the air', room(12, 60, 0.1, 6, 1500), 0],
	['what lingers from work that ended long before', room(6, 60, 0.03, 2, null), 9 * 3600]
];

function room(
	effectiveM3PerH: number,
	roomM3: number,
	vaporM3PerH: number,
	releaseH: number,
	ceilingPpm: number | null
): EndingRelease {
	// Whole seconds, so that the last step of the work ends with it.
	const releaseS = Math.round(releaseH * 3600);
	return { effectiveM3PerH, roomM3, vaporM3PerH, releaseS, ceilingPpm, sensitizer: false };
}

/**
 * V dC/dt = G − Q′ · C by Heun's method in steps of a second, the level held at saturation while the
 * work goes on; its integral by the trapezoid rule. Nothing of the closed form is used.
 */
function integratedPpmS({ effectiveM3PerH: q, roomM3, ...given }: EndingRelease, untilS: number) {
	const { vaporM3PerH, releaseS, ceilingPpm } = given;
	let ppm = 0;
	let sum = 0;
	for (let atS = 0; atS < untilS; atS += 1) {
		const slope = (level: number) =>
			((atS < releaseS ? vaporM3PerH * 1e6 : 0) - q * level) / 3600 / roomM3;
		const first = slope(ppm);
		const next = Math.min(ppm + (first + slope(ppm + first)) / 2, ceilingPpm ?? Infinity);
		sum += (ppm + next) / 2;
		ppm = next;
	}
	return sum;
}

const HEUN = 'Mass balance of a mixed room, integrated step by step with Heun’s method (any text)';
for (const [what, release, fromS] of CASES) {
	const toS = fromS + 8 * 3600;
	outsideCase({
		what: `average over eight hours, ${what}`,
		source: HEUN,
		unit: 'ppm',
		expected: (integratedPpmS(release, toS) - integratedPpmS(release, fromS)) / 28_800,
		got: () => eightHourPpm(release, fromS),
		// Steps of a second against time constants of minutes and more.
		tolerance: { fraction: 2e-4 }
	});
}
outsideCase({
	what: 'all that is ever breathed of 1 m³ of vapor in 100 m³/h: released over Q′',
	source: 'Mass balance: what comes in goes out, worked by hand',
	unit: 'ppm·h',
	expected: 1e4,
	got: () => exposurePpmS(room(100, 50, 0.5, 2, null), 400 * 3600) / 3600,
	tolerance: 1e-6
});
