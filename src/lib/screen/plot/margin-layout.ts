import { scaleLinear } from 'd3-scale';
import { numberText } from '$lib/core/quantity/display';

/** Temperatures of a surface against the dew point, all in the unit of the axis. */
export interface MarginTemperatures {
	dew: number;
	lowest: number;
	surface: number;
}

/** A scale of temperature wide enough for the three, for a drawing of this width. */
export function marginLayout({ dew, lowest, surface }: MarginTemperatures, width: number) {
	const room = (lowest - dew) * 0.8;
	const domain = [Math.min(dew, surface) - room, Math.max(lowest, surface) + room];
	const x = scaleLinear(domain, [6, width - 6]);
	return {
		dewX: x(dew),
		lowestX: x(lowest),
		surfaceX: x(surface),
		ticks: x
			.ticks(Math.max(3, Math.floor(width / 70)))
			.map((value) => ({ x: x(value), text: numberText(value) }))
	};
}

/** On which side of a mark its label stays inside the drawing. */
export function anchorAt(x: number, width: number, text: string): 'start' | 'middle' | 'end' {
	const half = (text.length * 7.4) / 2;
	if (x - half < 0) return 'start';
	return x + half > width ? 'end' : 'middle';
}
