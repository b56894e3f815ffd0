import { expect, test } from 'vitest';
import { StreamSlots } from '../../src/lib/server/stream-slots';

test('a full key takes no more, till one is given back', () => {
	const slots = new StreamSlots();
	const first = slots.take({ session: 2, address: 9 });
	slots.take({ session: 2, address: 9 });
	expect(slots.take({ session: 2, address: 9 })).toBeNull();
	first?.();
	expect(slots.take({ session: 2, address: 9 })).not.toBeNull();
});

test('given back twice is given back once', () => {
	const slots = new StreamSlots();
	const first = slots.take({ session: 2 });
	slots.take({ session: 2 });
	first?.();
	first?.();
	expect(slots.countOf('session')).toBe(1);
});

test('where one key is full, no place is taken under the others', () => {
	const slots = new StreamSlots();
	slots.take({ address: 1 });
	expect(slots.take({ session: 5, address: 1 })).toBeNull();
	expect(slots.countOf('session')).toBe(0);
});
