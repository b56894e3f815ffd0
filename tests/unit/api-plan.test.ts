import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { planInputsSchema, type PlanInputs } from '../../src/lib/core/plan/inputs';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planSchema, type Plan } from '../../src/lib/core/plan/plan';
import { planHash } from '../../src/lib/core/plan/plan-hash';
import type { Db } from '../../src/lib/server/database';
import { openApiDocument } from '../../src/lib/server/openapi';
import { savePattern } from '../../src/lib/server/patterns.repository';
import { saveSheet } from '../../src/lib/server/sheets.repository';
import { openStore } from '../../src/lib/server/store';
import { POST } from '../../src/routes/api/plan/+server';
import { load } from '../../src/routes/jobs/new/+page.server';
import { fullInputs } from '../fixtures/full-inputs';
import { jsonSchemaPaths, schemaPaths } from '../fixtures/schema-paths';

const AT = '2026-11-01T00:00:00.000Z';
const PATTERN_ID = '00000000-0000-4000-8000-000000000001';
const given = fullInputs();
const direct = makePlan(given);

async function post(
	body: unknown
): Promise<{ status: number; answer: { plan: Plan; planHash: string } }> {
	const request = new Request('http://shop.example/api/plan', {
		method: 'POST',
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify(body)
	});
	const event = { request, locals: { requestId: 'test' } };
	const response = await POST(event as unknown as Parameters<typeof POST>[0]);
	return { status: response.status, answer: await response.json() };
}

/** The address under which the plan's page shows a mold of these inputs. */
function addressOf({ materials, lots, additions, ...inputs }: PlanInputs): URL {
	const url = new URL('http://shop.example/jobs/new');
	const set = (key: string, value: unknown) => url.searchParams.set(key, String(value));
	set('pattern', PATTERN_ID);
	for (const [slot, sheet] of Object.entries(materials)) {
		set(slot, sheet.id);
		const lot = lots?.find(({ materialId }) => materialId === sheet.id);
		if (lot) set(`made.${slot}`, lot.madeAt.slice(0, 10));
	}
	additions?.forEach((addition, i) => {
		for (const [key, value] of Object.entries(addition)) set(`additions.${i}.${key}`, value);
	});
	for (const [key, value] of Object.entries(inputs)) {
		if (typeof value === 'number') set(key, value);
	}
	set('start', '2026-12-01T08:00');
	return url;
}

describe('a plan by the API', () => {
	test('every optional field is given; a pattern’s shape aside', () => {
		const isGiven = (path: string[], value: unknown): boolean => {
			const [key, ...rest] = path;
			if (key === undefined) return value !== undefined;
			if (typeof value !== 'object' || value === null) return false;
			if (key === '*') return Object.values(value).some((item) => isGiven(rest, item));
			return isGiven(rest, (value as Record<string, unknown>)[key]);
		};
		const missing = schemaPaths(planInputsSchema)
			.filter((path) => !path.startsWith('pattern.body.'))
			// What one sheet leaves out, another has.
			.map((path) => path.replace(/^materials\.\w+\./, 'materials.*.'))
			.filter((path) => !isGiven(path.split('.'), given));
		expect(missing).toEqual([]);
	});

	test('is the one that the core makes, to the last digit, and so is its hash', async () => {
		const { status, answer } = await post(given);
		expect(status).toBe(200);
		expect(answer.plan.figures).toEqual(direct.figures);
		expect(answer.plan).toEqual(JSON.parse(JSON.stringify(direct)));
		expect(answer.planHash).toBe(planHash(direct));
		expect(planSchema.safeParse(answer.plan).error).toBeUndefined();
	});

	test('is the same from the inputs that it carries', async () => {
		const { answer } = await post(given);
		expect((await post(answer.plan.inputs)).answer).toEqual(answer);
	});

	test('each choice moves something: none of them is read and dropped', async () => {
		const { shop, ...rest } = given;
		const without = [
			...Object.keys(given)
				.filter(
					(key) => planInputsSchema.shape[key as keyof PlanInputs].safeParse(undefined).success
				)
				.map((key) => ({ key, body: { ...given, [key]: undefined } })),
			...['nightTemperatureC', 'roomSpreadK', 'moldLifePours', 'benchTimes', 'roomVolumeM3']
				.concat(['measuredFanM3PerH', 'mixingFactor', 'limitSets', 'airSpeedMPerS'])
				.map((key) => ({ key, body: { ...rest, shop: { ...shop, [key]: undefined } } }))
		];
		expect(without.length).toBeGreaterThan(15);
		for (const { key, body } of without) {
			const { answer } = await post(body);
			expect(answer.plan.figures, key).not.toEqual(direct.figures);
		}
	}, 120_000);
});

describe('the plan of the page', () => {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-plan-'));
	let db: Db;
	beforeAll(async () => {
		db = await openStore(folder);
		await savePattern(db, { id: PATTERN_ID, pattern: given.pattern, at: AT });
		for (const sheet of Object.values(given.materials)) await saveSheet(db, sheet);
	});
	afterAll(async () => {
		await db.destroy();
		rmSync(folder, { recursive: true, force: true });
	});

	test('has the figures and the hash of the API’s', async () => {
		const locals = { db, shop: given.shop, person: null };
		const event = { locals, url: addressOf(given) } as unknown as Parameters<typeof load>[0];
		const page = (await load(event)) as { plan: Plan; hash: string; errors: object };
		expect(page.errors).toEqual({});
		const { answer } = await post(given);
		expect(page.plan.figures).toEqual(answer.plan.figures);
		expect(page.hash).toBe(answer.planHash);
	});
});

test('the document names every property that the inputs and the plan have', () => {
	const { components } = openApiDocument() as {
		components: { schemas: Record<string, Parameters<typeof jsonSchemaPaths>[0]> };
	};
	for (const [name, schema] of [
		['PlanInputs', planInputsSchema],
		['Plan', planSchema]
	] as const) {
		const known = [...new Set(schemaPaths(schema))].sort();
		expect(known.length).toBeGreaterThan(100);
		expect([...new Set(jsonSchemaPaths(components.schemas[name] ?? {}))].sort()).toEqual(known);
	}
});
