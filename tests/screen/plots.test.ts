import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { barLayout } from '../../src/lib/screen/plot/bar-layout';
import { dodged } from '../../src/lib/screen/plot/dodge';
import { marginLayout } from '../../src/lib/screen/plot/margin-layout';
import type { TimePlotData } from '../../src/lib/screen/plot/plot-data';
import { plotDomain, plotLayout } from '../../src/lib/screen/plot/plot-layout';
import { timeAxis } from '../../src/lib/screen/plot/time-axis';

const plot = (over: Partial<TimePlotData> = {}): TimePlotData => ({
	series: [
		{
			label: 'level',
			stroke: 'solid',
			pieces: [
				[
					{ x: 0, y: 2 },
					{ x: 600, y: 30 }
				]
			]
		}
	],
	levels: [{ label: 'limit', value: 50, stroke: 'dashed' }],
	spans: [],
	untilS: 3600,
	unit: 'ppm',
	isFromZero: true,
	summary: '',
	table: { head: [], rows: [] },
	...over
});

describe('the axes of a plot', () => {
	it('take in every point and every level, from zero where amounts are shown', () => {
		expect(plotDomain(plot())).toEqual([0, 50]);
		expect(plotDomain(plot({ isFromZero: false, levels: [] }))).toEqual([2, 30]);
	});

	it('reach as far as asked, so that plots beside each other compare', () => {
		expect(plotDomain(plot({ reach: 110 }))).toEqual([0, 110]);
	});

	it('keep a height where all values are the same', () => {
		expect(plotDomain(plot({ series: [], levels: [] }))).toEqual([0, 1]);
	});

	it('put larger values higher and later times farther right, inside the drawing', () => {
		const { x, y, box, width } = plotLayout(plot(), 600, 260);
		expect(y(50)).toBeLessThan(y(0));
		expect(x(0)).toBe(box.left);
		expect(x(3600)).toBe(box.right);
		expect(y(50)).toBeGreaterThanOrEqual(box.top);
		expect(box.right).toBeLessThan(width);
	});

	it('leave room for a plot on a narrow phone', () => {
		const { box } = plotLayout(plot(), 240, 260);
		expect(box.right - box.left).toBeGreaterThan(90);
	});

	test.each([
		[2400, 8, 'min', ['0', '5', '10', '15', '20', '25', '30', '35', '40']],
		[7200, 4, 'min', ['0', '30', '60', '90', '120']],
		[97_564, 5, 'h', ['0', '6', '12', '18', '24']],
		[40, 4, 's', ['0', '10', '20', '30', '40']]
	])('ticks up to %d s stand at the steps of a clock', (untilS, most, unit, texts) => {
		const axis = timeAxis(untilS, most);
		expect(axis.unit).toBe(unit);
		expect(axis.ticks.map(({ text }) => text)).toEqual(texts);
	});

	it('never have more ticks than fit, nor ticks past the end', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1, max: 1e9, noNaN: true }),
				fc.integer({ min: 1, max: 12 }),
				(untilS, most) => {
					const { ticks } = timeAxis(untilS, most);
					expect(ticks.length).toBeLessThanOrEqual(most + 1);
					for (const { atS } of ticks) expect(atS).toBeLessThanOrEqual(untilS * 1.001);
				}
			)
		);
	});
});

describe('labels beside a plot', () => {
	it('keep apart, in order, and inside as long as they fit', () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: -50, max: 350, noNaN: true }), { maxLength: 12 }),
				(wanted) => {
					const places = dodged(wanted, 17, 20, 260);
					const sorted = [...places].sort((a, b) => a - b);
					sorted.forEach((place, i) => {
						expect(place).toBeGreaterThanOrEqual(20 - 1e-9);
						expect(place).toBeLessThanOrEqual(260 + 1e-9);
						const before = sorted[i - 1];
						if (before !== undefined) expect(place - before).toBeGreaterThanOrEqual(17 - 1e-9);
					});
					wanted.forEach((want, i) =>
						wanted.forEach((other, k) => {
							if (want < other) expect(places[i]).toBeLessThan(places[k] ?? -Infinity);
						})
					);
				}
			)
		);
	});

	it('stay where they want to be when nothing is in the way', () => {
		expect(dodged([40, 200, 100], 17, 20, 260)).toEqual([40, 200, 100]);
	});
});

describe('bars', () => {
	const bar = (label: string, value: number) => ({ label, value, text: '', isChosen: false });

	it('begin at zero, so that twice the amount is twice the length', () => {
		const { rows } = barLayout([bar('a', 20), bar('b', 40), bar('c', 0)], 500);
		expect(rows[1]?.lengthPx).toBeCloseTo(2 * (rows[0]?.lengthPx ?? 0), 6);
		expect(rows[2]?.lengthPx).toBe(0);
	});

	it('stay inside the drawing, even when there is nothing to show', () => {
		expect(barLayout([bar('a', 0)], 300).rows[0]?.lengthPx).toBe(0);
		expect(barLayout([bar('a', 997)], 300).rows[0]?.lengthPx).toBeLessThan(300);
	});
});

describe('the scale of the dew point', () => {
	test.each([
		{ dew: 10.5, lowest: 13.5, surface: 22 },
		{ dew: 10.5, lowest: 13.5, surface: 4 },
		{ dew: 50.9, lowest: 56.3, surface: 51 }
	])('shows dew $dew, least $lowest and surface $surface in their order', (temperatures) => {
		const { dewX, lowestX, surfaceX } = marginLayout(temperatures, 300);
		expect(dewX).toBeLessThan(lowestX);
		expect(surfaceX < dewX).toBe(temperatures.surface < temperatures.dew);
		for (const x of [dewX, lowestX, surfaceX]) {
			expect(x).toBeGreaterThan(0);
			expect(x).toBeLessThan(300);
		}
	});
});
