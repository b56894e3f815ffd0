import type { Component } from 'svelte';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { recommendedMaterials } from '../../src/lib/core/content/demo-data';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import type { Plan } from '../../src/lib/core/plan/plan';
import { PlanError } from '../../src/lib/core/plan/plan-error';
import { fractionInches } from '../../src/lib/core/quantity/fraction-inches';
import { wholeDegrees } from '../../src/lib/core/quantity/display';
import { withCustomary } from '../../src/lib/core/quantity/with-customary';
import { fieldText, measureOf } from '../../src/lib/screen/form/measure';
import { readMeasured } from '../../src/lib/screen/form/read-measured';
import { readSetup } from '../../src/lib/screen/form/read-setup';
import { EMPTY_SETUP } from '../../src/lib/screen/form/setup-draft';
import PlanSheet from '../../src/lib/screen/plan/PlanSheet.svelte';
import ShopFacts from '../../src/lib/screen/shop/ShopFacts.svelte';
import { benchTextsFor } from '../../src/lib/server/content';
import { demo } from '../../src/lib/server/demo-content';
import { fullInputs, fullShop } from '../fixtures/full-inputs';
import InUsShop from '../fixtures/InUsShop.svelte';

/** Metric lengths, volumes and temperatures that do not stand in brackets behind customary ones. */
const STRAY =
	/(?<!\([\d.,−-]*(?: (?:to|and) )?[\d.,−-]*)(?<![\d.,−-])[−-]?\d[\d.,]*\s?(?:mm|cm|mL|L|°C|cm²|m²|m³)(?![\w/])/gu;

function stray(text: string): string[] {
	return [...text.matchAll(STRAY)].map(({ index }) =>
		text.slice(Math.max(0, index - 60), index + 30)
	);
}

/** Everything a page says, also to those who hear it. */
function said(of: unknown, given: Record<string, unknown>): string {
	const shown = of as Component<Record<string, unknown>>;
	const { body } = render(InUsShop, { props: { of: shown, given } });
	const labels = [...body.matchAll(/(?:aria-label|alt|title)="([^"]*)"/g)].map(([, text]) => text);
	return [body.replace(/<!--.*?-->/g, '').replace(/<[^>]*>/g, ' '), ...labels]
		.join(' | ')
		.replace(/\s+/g, ' ');
}

const plans: [string, Plan][] = [
	...demo.patterns.map((found): [string, Plan] => [
		found.id,
		makePlan({
			shop: { ...demo.shop, units: 'US' },
			pattern: found.pattern,
			materials: recommendedMaterials(demo, found),
			people: 1,
			startAt: '2026-11-30T13:10:00.000Z'
		})
	]),
	['all that may be said', makePlan({ ...fullInputs(), shop: { ...fullShop, units: 'US' } })]
];

test('a stray unit is seen as such, and one in brackets behind customary ones is not', () => {
	for (const text of [
		'a 5 mm gap',
		'At 22 °C',
		'12 to 15 mm',
		'to 100 mL',
		'1,200 mm',
		'x|6.8 mm|'
	]) {
		expect([text, stray(text).length]).toEqual([text, 1]);
	}
	expect(stray('0.236 in (6 mm), 64 °F to 77 °F (18 to 25 °C), 5 mmol, 3 g/mL, 5 L/min')).toEqual(
		[]
	);
});

describe('a shop in US customary units', () => {
	test.each(plans)('reads no stray metric unit in the plan of %s', (_, plan) => {
		const text = said(PlanSheet, { plan, hash: 'a'.repeat(64), isFrozen: false, briefings: {} });
		expect(text.length).toBeGreaterThan(10_000);
		expect(stray(text)).toEqual([]);
	});

	test.each(plans)('opens no number of the plan of %s to a stray one', (_, { figures }) => {
		const texts = Object.values(figures).flatMap(({ label, note = '', law, inputs }) => [
			...[label, note, law.validity, law.formula],
			...inputs.map((input) => input.label)
		]);
		expect(texts.flatMap(stray).filter((text) => !/\d L;/.test(text))).toEqual([]);
	});

	test.each(['en', 'es'] as const)('reads the texts of the bench (%s) in its units', (lang) => {
		const texts = JSON.stringify(benchTextsFor(lang, 'US'));
		expect(texts).toContain('88 °F (31 °C)');
		expect(stray(texts)).toEqual([]);
		expect(stray(JSON.stringify(benchTextsFor(lang, 'SI'))).length).toBeGreaterThan(3);
	});

	test('is told in its units why a plan cannot be made', () => {
		const cold = {
			...fullInputs(),
			shop: { ...fullShop, units: 'US' as const },
			gloveThicknessMm: 1.2
		};
		let message = '';
		try {
			makePlan(cold);
		} catch (error) {
			message = error instanceof PlanError ? error.message : '';
		}
		expect(message).not.toBe('');
		expect(stray(message)).toEqual([]);
	});

	test('starts with cups as they are sold there, and names each in few digits', () => {
		const draft = { ...EMPTY_SETUP, name: 'A shop', owner: 'Ada', units: 'US' };
		const { shop } = readSetup(draft);
		expect(shop && said(ShopFacts, { shop })).toContain('4, 8, 16, 32, 64, 128 fl oz');
		const volume = measureOf('volume', 'US');
		expect(shop?.cupVolumesMl.map((ml) => fieldText(ml, volume))).toEqual([
			'4',
			'8',
			'16',
			'32',
			'64',
			'128'
		]);
		expect(fieldText(100, volume)).toBe('100 mL');
		expect(readMeasured('100 mL', volume)).toBe(100);
		const length = measureOf('length', 'US');
		expect([fieldText(620, length), fieldText(617.22, length)]).toEqual(['620 mm', '24.3']);
		expect(readMeasured('21 °C', measureOf('temperature', 'US'))).toBe(21);
	});
});

describe('units first', () => {
	test.each([
		['18 to 25 °C', '64.4 °F to 77 °F (18 to 25 °C)'],
		['from −20 to 5 mm', 'from −0.787 in to 0.197 in (−20 to 5 mm)'],
		['16.9 fl oz (500 mL) cup', '16.9 fl oz (500 mL) cup'],
		['a 473.176473 mL cup', 'a 16 fl oz (473.2 mL) cup'],
		['3 °C (5 °F) above', '5 °F (3 °C) above'],
		['1,200 mm', '47.2 in (1,200 mm)'],
		['0.3 mmol and 25 g/mL', '0.3 mmol and 25 g/mL']
	])('%s is %s', (text, expected) => {
		expect(withCustomary(text, 'US')).toBe(expected);
		expect(withCustomary(expected, 'US')).toBe(expected);
		expect(withCustomary(text, 'SI')).toBe(text);
	});

	// 18 mm is 0.7087 in: 11/16 is 0.6875, 12/16 is 0.75.
	test.each([
		[18, '11/16 in'],
		[19.05, '3/4 in'],
		[25.4, '1 in'],
		[1160, '45 11/16 in'],
		[0.5, '0 in']
	])('%s mm is cut as %s', (mm, expected) => expect(fractionInches(mm)).toBe(expected));

	test('a peak is rounded once, in the scale it is read in', () => {
		// 191.4 °C is 376.52 °F; rounded to 191 °C first it would be 375.8, and 192 °C 377.6.
		expect(wholeDegrees(191.4, 'US')).toBe('377 °F');
		expect(wholeDegrees(191.4, 'SI')).toBe('191 °C');
	});
});
