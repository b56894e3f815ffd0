import { describe, expect, test } from 'vitest';
import { sheetContradictions } from '../../src/lib/core/materials/contradictions';
import { checkedInputs } from '../../src/lib/core/plan/check-inputs';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { PlanError, type PlanProblem } from '../../src/lib/core/plan/plan-error';
import { fullInputs } from '../fixtures/full-inputs';
import { testInputs } from '../fixtures/materials';

type Key = string | number;

/** Every value in the inputs with its path, containers too. */
function placesIn(value: unknown, path: Key[] = []): Key[][] {
	if (typeof value !== 'object' || value === null) return [path];
	const below = Array.isArray(value)
		? value.flatMap((item, i) => placesIn(item, [...path, i]))
		: Object.entries(value).flatMap(([key, item]) => placesIn(item, [...path, key]));
	return path.length === 0 ? below : [path, ...below];
}

/** One path for each field: the first entry of a list and the first material stand for the others. */
function fieldsOf(inputs: unknown): Key[][] {
	const fields = new Map<string, Key[]>();
	for (const path of placesIn(inputs)) {
		const field = path
			.map((key, i) => (typeof key === 'number' || path[i - 1] === 'materials' ? '*' : key))
			.join('.');
		if (!fields.has(field)) fields.set(field, path);
	}
	return [...fields.values()];
}

function replaced(path: readonly Key[], by: unknown): unknown {
	const inputs: unknown = structuredClone(fullInputs());
	const parent = path.slice(0, -1).reduce((at, key) => Reflect.get(Object(at), key), inputs);
	Reflect.set(Object(parent), path.at(-1) ?? '', by);
	return inputs;
}

function problemsOf(inputs: unknown): readonly PlanProblem[] {
	try {
		checkedInputs(inputs);
		return [];
	} catch (error) {
		if (error instanceof PlanError) return error.problems;
		throw error;
	}
}

const problemAt = (path: Key[], by: unknown): string | undefined =>
	problemsOf(replaced(path, by)).find((problem) => problem.path === path.join('.'))?.message;

const WRONG = [undefined, null, -1e12, 1e12, 0.5, 'x'.repeat(3000), '', {}, [], { odd: 1 }, true];

describe('a refusal of a plan’s inputs', () => {
	test('says in our own words what was given and what would be accepted, at every place', () => {
		const paths = fieldsOf(fullInputs());
		const messages = paths.flatMap((path) =>
			WRONG.flatMap((by) => problemsOf(replaced(path, by)).map(({ message }) => message))
		);
		expect(paths.length).toBeGreaterThan(100);
		expect(messages.length).toBeGreaterThan(700);
		const unclear = messages.filter(
			(message) =>
				/\b(too (small|big)|invalid|unrecognized|expected)\b|expected (string|number|int)|received|undefined|NaN/i.test(
					message
				) || !/\.$/.test(message)
		);
		expect([...new Set(unclear)]).toEqual([]);
	});

	test('names the limit, the choices or the form that was missed', () => {
		expect(problemAt(['gloveThicknessMm'], 0.2)).toBe(
			'gloveThicknessMm is 0.2; accepted: 1 or more.'
		);
		expect(problemAt(['people'], 1.5)).toBe('people is 1.5; accepted: a whole number.');
		expect(problemAt(['people'], undefined)).toBe('people is missing; accepted: a number.');
		expect(problemAt(['shop', 'units'], 'metric')).toBe('units is “metric”; accepted: SI; US.');
		expect(problemAt(['shop', 'zone'], 'Moon')).toBe(
			'zone is “Moon”; accepted: an IANA zone such as America/Chicago.'
		);
		expect(problemAt(['startAt'], 'soon')).toBe(
			'startAt is “soon”; accepted: an instant such as 2026-11-30T13:30:00Z.'
		);
		expect(problemAt(['shop', 'cupVolumesMl'], [])).toBe(
			'cupVolumesMl has 0 entries; accepted: 1 or more.'
		);
		expect(problemsOf({ ...fullInputs(), glove: 3 })).toEqual([
			{
				path: '',
				message: 'The whole has “glove”; accepted: only the fields that the API describes.'
			}
		]);
	});
});

test('a solid that reaches beyond the one below by more than the glove is thick locks the shell', () => {
	const inputs = testInputs();
	const stand = { on: 'board', against: [], name: 'Foot' };
	const plan = makePlan({
		...inputs,
		pattern: {
			...inputs.pattern,
			body: {
				kind: 'solids',
				solids: [
					{ ...stand, shape: 'box', id: 'foot', lengthMm: 300, widthMm: 200, heightMm: 50 },
					{ ...stand, shape: 'dome', id: 'dome', on: 'foot', diameterMm: 260, heightMm: 80 }
				]
			}
		}
	});
	expect(plan.warnings.filter(({ code }) => code === 'shell-lock')).toMatchObject([
		{ severity: 'refuse', text: expect.stringContaining('30 mm') }
	]);
});

test('a recoat window that shuts before it opens keeps a glove out of every plan, and the sheet says so', () => {
	const inputs = testInputs();
	const { build } = inputs.materials;
	const shut = {
		...build,
		tackFree: { timeS: 2700, atC: 23 },
		recoatCloses: { timeS: 1800, atC: 23 }
	};
	const materials = { ...inputs.materials, build: shut };
	expect(() => makePlan({ ...inputs, materials })).toThrow(/shuts before it opens/);
	expect(sheetContradictions(shut)[0]?.message).toContain('must come after it opens');
	const later = { ...shut, recoatCloses: { timeS: 7200, atC: 23 } };
	expect(
		makePlan({ ...inputs, materials: { ...materials, build: later } }).coats.length
	).toBeGreaterThan(0);
});

test('a coat of very many cups says why, and how it would take fewer', () => {
	const inputs = testInputs();
	const { build } = inputs.materials;
	const quick = { ...build, potLife: { timeS: 600, massG: 60, atC: 23 } };
	const plan = makePlan({ ...inputs, materials: { ...inputs.materials, build: quick } });
	const [first] = plan.warnings.filter(({ code }) => code === 'many-cups');
	expect(first?.text).toMatch(/\d+ cups of .*mass the pot life was measured at.*slower grade/);
	const usual = makePlan(inputs).warnings.filter(({ code }) => code === 'many-cups');
	expect(usual).toEqual([]);
});

test('a ratio is told with the names of its parts', () => {
	const inputs = testInputs();
	const input = makePlan(inputs).figures['coats.0.fractions.0.fraction']?.inputs[0];
	expect(input?.value).toMatch(/^A [\d.]+ : B [\d.]+$/);
});
