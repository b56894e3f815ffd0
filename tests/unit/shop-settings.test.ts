import { describe, expect, test } from 'vitest';
import { mayChange, rolesToGive } from '$lib/screen/people/people-rights';
import { readShop, tidyDraft } from '$lib/screen/shop/read-shop';
import { draftOfShop } from '$lib/screen/shop/shop-draft';
import { demo } from '$lib/server/demo-content';

const shop = demo.shop;

describe('the shop’s settings', () => {
	test.each(['SI', 'US'] as const)('what is shown in %s reads back as the same shop', (units) => {
		const kept = { ...shop, units };
		const { shop: read } = readShop(tidyDraft(draftOfShop(kept)), kept.isDemo);
		expect(read?.shifts).toEqual(kept.shifts);
		expect(read?.roomTemperatureC).toBeCloseTo(kept.roomTemperatureC, 9);
		read?.cupVolumesMl.forEach((ml, i) => expect(ml).toBeCloseTo(kept.cupVolumesMl[i] ?? 0, 6));
	});

	test('a change of units does not change what was typed in the old ones', () => {
		const { shop: read } = readShop({ ...draftOfShop(shop), units: 'US' }, true);
		expect(read?.units).toBe('US');
		expect(read?.roomTemperatureC).toBe(shop.roomTemperatureC);
	});

	test.each([
		['roomHumidityPct', '0', 'too small'],
		['roomTemperatureC', 'warm', 'not a number'],
		['laborPerHour', '1e308', 'too large'],
		['scaleReadabilityG', '-1', 'too small'],
		['currency', 'dollars', 'ISO 4217'],
		['zone', 'Mars/Olympus', 'IANA'],
		['name', 'x'.repeat(10_000), '120'],
		['brushingGPerMin', '', 'Nothing']
	])('%s as "%s" is refused under its own field', (field, typed, says) => {
		const { shop: read, errors } = readShop({ ...draftOfShop(shop), [field]: typed }, true);
		expect(read).toBeNull();
		expect(errors?.[field]).toContain(says);
	});

	test('spans of a day follow one another', () => {
		const draft = draftOfShop(shop);
		draft.days[0] = [
			{ from: '07:00', to: '12:00' },
			{ from: '11:00', to: '15:00' }
		];
		expect(readShop(draft, true).errors?.['days.0.1']).toContain('12:00 or later');
		draft.days[0] = [{ from: '12:00', to: '' }];
		expect(readShop(draft, true).errors?.['days.0.0']).toContain('both times');
		draft.days = draft.days.map(() => []);
		expect(readShop(draft, true).errors?.shifts).toContain('one day');
	});

	test('a cup left blank is taken out; with none left the shelf is refused', () => {
		const draft = { ...draftOfShop(shop), cupVolumesMl: ['', '250', ' '] };
		expect(readShop(tidyDraft(draft), true).shop?.cupVolumesMl).toEqual([250]);
		const none = tidyDraft({ ...draft, cupVolumesMl: ['', ''] });
		expect(readShop(none, true).errors?.cupVolumesMl).toContain('one size');
	});
});

describe('who may change whom', () => {
	const person = (id: string, role: 'apprentice' | 'supervisor' | 'owner', retired = false) => ({
		id,
		role,
		retired
	});
	const ada = person('ada', 'supervisor');
	const bo = person('bo', 'supervisor');
	const cy = person('cy', 'apprentice');
	const owner = person('own', 'owner');

	test('no supervisor gets at the PIN of another who signs', () => {
		const people = [ada, bo, cy, owner];
		expect(mayChange(ada, bo, people)).toBe(false);
		expect(mayChange(ada, owner, people)).toBe(false);
		expect(mayChange(ada, ada, people)).toBe(true);
		expect(mayChange(ada, cy, people)).toBe(true);
		expect(mayChange(owner, bo, people)).toBe(true);
		expect(mayChange(cy, cy, people)).toBe(false);
	});

	test('nor adds one, where there is an owner', () => {
		expect(rolesToGive(ada, [ada, owner])).toEqual(['apprentice', 'mold maker']);
		expect(rolesToGive(ada, [ada, person('old', 'owner', true)])).toContain('supervisor');
		expect(rolesToGive(cy, [cy])).toEqual([]);
	});
});
