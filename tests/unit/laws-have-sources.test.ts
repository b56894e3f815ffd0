import { describe, expect, test } from 'vitest';
import type { Law } from '../../src/lib/core/quantity/figure';

const files = import.meta.glob<Record<string, unknown>>('../../src/lib/core/laws/*.ts', {
	eager: true
});

function isLaw(value: unknown): value is Law {
	return typeof value === 'object' && value !== null && 'formula' in value && 'validity' in value;
}

const laws = Object.entries(files).map(
	([path, exported]) => [path, Object.values(exported).filter(isLaw)] as const
);

describe('every law says where it comes from', () => {
	test('there are laws to look at', () => {
		expect(laws.length).toBeGreaterThan(10);
	});

	test.each(laws)('%s', (path, found) => {
		expect(found, `${path} exports no Law`).not.toHaveLength(0);
		for (const law of found) {
			for (const key of ['id', 'name', 'formula', 'source', 'validity'] as const) {
				expect(law[key]?.trim().length, `${path}: ${law.id}: ${key} is empty`).toBeGreaterThan(1);
			}
		}
	});

	test('no two laws share an id', () => {
		const ids = laws.flatMap(([, found]) => found.map(({ id }) => id));
		expect(new Set(ids).size).toBe(ids.length);
	});
});
