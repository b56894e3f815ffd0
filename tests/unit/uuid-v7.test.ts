import fc from 'fast-check';
import { expect, test } from 'vitest';
import { uuidV7 } from '../../src/lib/core/log/uuid-v7';

const ten = fc.uint8Array({ minLength: 10, maxLength: 10 });

test('the worked example of RFC 9562, appendix A.6', () => {
	// rand_a CC3, rand_b 18C4DC0C0C07398F; the bits above are the version's and the variant's.
	const random = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
	expect(uuidV7(0x017f22e279b0, random)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f');
});

test('version and variant stand, whatever the chance; later ids sort behind', () => {
	fc.assert(
		fc.property(
			fc.nat({ max: 2 ** 31 }),
			fc.integer({ min: 1, max: 1e9 }),
			ten,
			ten,
			(at, later, a, b) => {
				const first = uuidV7(at, a);
				expect(first).toMatch(
					/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/
				);
				expect(uuidV7(at + later, b) > first).toBe(true);
			}
		)
	);
});

test.each([-1, 0.5, 2 ** 48, Number.NaN])('a time of %s is refused', (at) => {
	expect(() => uuidV7(at, new Uint8Array(10))).toThrow(RangeError);
});

test('nine bytes of chance are refused', () => {
	expect(() => uuidV7(0, new Uint8Array(9))).toThrow(/accepted: 10/);
});
