import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { detailInputs, testInputs, testSheet } from '../fixtures/materials';

const withPeople = (people: number) => makePlan(detailInputs({ people }));

describe('the pace of a crew', () => {
	test('of two: one lays while the other mixes the next cup, so that laying never waits', () => {
		const plan = withPeople(2);
		const batches = [...plan.coats, ...plan.shell.rounds];
		for (const [i, { cups, mixS, paceS = 0 }] of plan.coats.entries()) {
			const layS = (60 * (cups[0]?.massG ?? 0)) / plan.inputs.shop.brushingGPerMin;
			// By hand: the first cup is mixed, then the slower of laying and mixing sets the beat.
			const beats = (cups.length - 1) * Math.max(layS, mixS);
			expect(paceS, `coat ${i}`).toBeCloseTo(mixS + beats + layS, 6);
		}
		expect(batches.some(({ cups }) => cups.length > 1)).toBe(true);
	});

	test('of one: each cup waits for its mixing', () => {
		for (const { cups, mixS, paceS = 0 } of withPeople(1).coats) {
			const layS = (60 * (cups[0]?.massG ?? 0)) / withPeople(1).inputs.shop.brushingGPerMin;
			expect(paceS).toBeCloseTo(cups.length * (mixS + layS), 6);
		}
	});

	test('opens: who lays, who mixes, and the gap between two cups', () => {
		const figure = withPeople(2).figures['coats.0.paceS'];
		expect(figure?.law.id).toBe('cup-pace');
		expect(figure?.inputs.find(({ symbol }) => symbol === 'n_lay')).toMatchObject({
			value: 1,
			label: 'of them lay, one mixes ahead'
		});
	});
});

test('a coat laid so long that its first place shuts before its last can be tested is warned of', () => {
	const { materials } = testInputs();
	const closingAfter = (minutes: number) => {
		const build = { ...testSheet('brush-80'), recoatCloses: { timeS: 60 * minutes, atC: 23 } };
		const plan = makePlan(testInputs({ people: 1, materials: { ...materials, build } }));
		return plan.warnings.filter(({ code }) => ['window-short', 'window-shut'].includes(code));
	};
	expect(closingAfter(600)).toEqual([]);
	const [coat] = makePlan(testInputs({ people: 1 })).coats;
	const neededS = (coat?.paceS ?? 0) + (coat?.tackTestS ?? 0);
	const [short] = closingAfter(Math.floor(neededS / 60));
	expect(short).toMatchObject({ code: 'window-short', severity: 'warn' });
	expect(short?.text).toMatch(/laying it takes .* Lay it with more people/);
	expect(closingAfter(50)[0]).toMatchObject({ code: 'window-shut', severity: 'refuse' });
});

test('the calendar shuts a window when it shuts for the first place laid', () => {
	const plan = makePlan(testInputs({ people: 1 }));
	const [coat] = plan.coats;
	const wait = plan.calendar.find(({ id }) => id === 'coat-1-tack');
	const openS = (Date.parse(wait?.closesAt ?? '') - Date.parse(wait?.startAt ?? '')) / 1000;
	expect(coat?.paceS).toBeGreaterThan(0);
	expect(openS).toBeCloseTo((coat?.windowClosesS ?? 0) - (coat?.paceS ?? 0), 0);
});

test('a coat may be tack-free sooner than its first test is due', () => {
	for (const { tackSoonestS, tackTestS } of makePlan(testInputs()).coats) {
		expect(tackSoonestS).toBeGreaterThan(0);
		expect(tackSoonestS).toBeLessThan(tackTestS);
	}
});

test('the next shell round waits until the one below has stiffened at the latest', () => {
	const plan = makePlan(testInputs());
	const wait = plan.calendar.find(({ id }) => id === 'round-1-gel');
	const waitS = (Date.parse(wait?.endAt ?? '') - Date.parse(wait?.startAt ?? '')) / 1000;
	const figure = plan.figures['shell.rounds.0.workingS'];
	expect(figure?.high).toBeGreaterThan(figure?.value ?? 0);
	expect(waitS).toBeCloseTo(figure?.high ?? 0, 0);
});
