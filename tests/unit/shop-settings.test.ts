import { describe, expect, test } from 'vitest';
import { mayChange, rolesToGive } from '$lib/screen/people/people-rights';
import { readShop, tidyDraft } from '$lib/screen/shop/read-shop';
import { draftOfShop } from '$lib/screen/shop/shop-draft';
import { shopLabel } from '$lib/screen/shop/shop-label';
import { demo } from '$lib/server/demo-content';
import { getShop, saveShop } from '$lib/server/shop.repository';
import { testStore } from '../fixtures/test-store';

const shop = demo.shop;

describe('the shop’s settings', () => {
	test.each(['SI', 'US'] as const)('what is shown in %s reads back as the same shop', (units) => {
		const kept = { ...shop, units };
		const { shop: read } = readShop(tidyDraft(draftOfShop(kept)), kept.isDemo);
		expect(read?.shifts).toEqual(kept.shifts);
		expect(read?.roomTemperatureC).toBeCloseTo(kept.roomTemperatureC, 9);
		read?.cupVolumesMl.forEach((ml, i) => expect(ml).toBeCloseTo(kept.cupVolumesMl[i] ?? 0, 6));
	});

	/** All that a shop may say and need not. */
	const told = {
		...shop,
		nightTemperatureC: 12.5,
		roomSpreadK: 2.5,
		roomVolumeM3: 85,
		measuredFanM3PerH: 510,
		fanGrille: { meanMPerS: 2.1, areaCm2: 900, freeFraction: 0.7 },
		mixingFactor: 3,
		limitSets: ['NIOSH REL' as const, 'UK WEL' as const],
		airSpeedMPerS: 0.3,
		ventilationNote: 'Wall fan, measured at the grille in May',
		moldLifePours: 80,
		asksTraining: true,
		benchTimes: { 'poured layer': { fixedS: 21_600, perM2S: 25_200, daysCount: 5 } }
	};

	test.each(['SI', 'US'] as const)('what a shop need not say is kept in %s', async (units) => {
		const kept = { ...told, units };
		const { shop: read, errors } = readShop(tidyDraft(draftOfShop(kept)), kept.isDemo);
		expect(errors).toBeNull();
		expect(read).toEqual(kept);
		const db = await testStore();
		await saveShop(db, kept);
		expect(await getShop(db)).toEqual(kept);
		await db.destroy();
	});

	test('left blank, none of it is there', () => {
		const { shop: read } = readShop(tidyDraft(draftOfShop(shop)), shop.isDemo);
		expect(read).toEqual(shop);
	});

	test.each([
		['roomVolumeM3', '0.5', '1 m³ or more'],
		['mixingFactor', '12', '10 or less'],
		['airSpeedMPerS', 'calm', 'a number such as 12.5 m/s'],
		['measuredFanM3PerH', '-3', '0.01 m³/h or more'],
		['moldLifePours', '2.5', 'whole number'],
		['nightTemperatureC', '60', '45 °C or less'],
		['roomSpreadK', '11', '10 K or less'],
		[
			'fanGrille.meanMPerS',
			'2',
			'Nothing is entered; accepted: a number such as 12.5 cm²',
			'fanGrille.areaCm2'
		],
		['fanGrille.freeFraction', '120', '100% or less'],
		['benchTimes.solidBlock.fixedS', '-2', '0 h or more'],
		[
			'benchTimes.pouredLayer.perM2S',
			'9',
			'a number such as 12.5 d',
			'benchTimes.pouredLayer.daysCount'
		]
	])('%s as "%s" is refused in words: %s', (field, typed, says, at = field) => {
		const draft = structuredClone(draftOfShop(shop));
		const keys = field.split('.');
		const last = keys.pop() ?? '';
		Reflect.set(
			keys.reduce<object>((node, key) => Object(Reflect.get(node, key)), draft),
			last,
			typed
		);
		const { shop: read, errors } = readShop(draft, true);
		expect(read).toBeNull();
		expect(errors?.[at]).toContain(says);
		expect(shopLabel(at)).not.toContain('.');
	});

	test('a list of limits that nobody publishes is refused by name', () => {
		const draft = { ...draftOfShop(shop), limitSets: ['House rule'] };
		expect(readShop(draft, true).errors?.['limitSets.0']).toContain('OSHA PEL');
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
