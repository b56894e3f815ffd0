import { describe, expect, test } from 'vitest';
import { PHASE_IDS, TROUBLE_IDS } from '../../src/lib/core/content/vocabulary';
import { TROUBLES, waysBackFrom } from '../../src/lib/core/process/troubles';
import { troubles } from '../../src/lib/server/content';

// Where each trouble can be met: common practice, no source.
describe('a trouble', () => {
	test.each(TROUBLE_IDS)('%s can be reported where its text says that it happens', (id) => {
		expect([...(troubles.get(id)?.phases ?? [])].sort()).toEqual([...TROUBLES[id].phases].sort());
	});

	test.each(TROUBLE_IDS)('%s always has a way back, and none leads forward', (id) => {
		for (const phase of TROUBLES[id].phases) {
			const ways = waysBackFrom({ trouble: { id }, phase, roundIndex: 0 });
			expect(ways).toContain('resume');
			for (const way of ways) {
				if (way === 'resume' || way === 'redo coat') continue;
				expect(PHASE_IDS.indexOf(way)).toBeLessThanOrEqual(PHASE_IDS.indexOf(phase));
			}
		}
	});

	test('with the casting at the first pour costs no part of the mold', () => {
		for (const id of ['off-ratio', 'bubbles', 'no-cure'] as const) {
			expect(waysBackFrom({ trouble: { id }, phase: 'pour', roundIndex: 2 })).toEqual(['resume']);
		}
	});

	test('found at the face on peeling leads back to the release, not to the back of the glove', () => {
		const place = { trouble: { id: 'no-cure' as const }, phase: 'peel' as const, roundIndex: 2 };
		expect(waysBackFrom(place)).toEqual(['resume', 'release']);
	});
});
