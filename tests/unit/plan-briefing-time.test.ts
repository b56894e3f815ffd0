import { describe, expect, test } from 'vitest';
import { readingS } from '$lib/core/content/reading-time';
import { BRIEFING_SLUGS } from '$lib/core/content/vocabulary';
import { makePlan } from '$lib/core/plan/make-plan';
import { briefings } from '$lib/server/content';
import { testInputs, testSheet } from '../fixtures/materials';

test.each(BRIEFING_SLUGS)('a plan keeps as much time for %s as its text says it takes', (slug) => {
	expect(readingS([slug])).toBe((briefings.get(slug)?.readMin ?? 0) * 60);
});

describe('the briefing of a calendar', () => {
	const { materials } = testInputs();
	const tin = testSheet('brush-tin');
	const polyester = testSheet('shell-polyester');
	test.each(
		Object.entries({
			plain: materials,
			'many-sided': { ...materials, shell: polyester },
			'many-sided tin silicone': { ...materials, build: tin, shell: polyester }
		})
	)('is no shorter than what has to be read for a %s mold', (_, chosen) => {
		const plan = makePlan({ ...testInputs(), materials: chosen });
		const [brief] = plan.calendar;
		const slotS = (Date.parse(brief?.endAt ?? '') - Date.parse(brief?.startAt ?? '')) / 1000;
		const minutes = plan.briefings.map((slug) => briefings.get(slug)?.readMin ?? Infinity);
		expect(slotS).toBeGreaterThanOrEqual(60 * minutes.reduce((sum, each) => sum + each, 0));
		expect(slotS).toBeLessThanOrEqual(45 * 60);
	});
});
