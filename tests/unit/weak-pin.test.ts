import { expect, test } from 'vitest';
import { weakPinWords } from '../../src/lib/server/weak-pin';

test.each([
	'1234',
	'4321',
	'0000',
	'1111',
	'123456',
	'9876',
	'7890',
	'1212',
	'2580',
	'1987',
	'2004'
])('%s is refused, with a reason and what is accepted', (pin) =>
	expect(weakPinWords(pin)).toMatch(/^Th.+anybody tries\. Accepted: another one/)
);

test.each(['385027', '1357', '2468', '1870', '198704', '7291', '12349'])('%s will do', (pin) =>
	expect(weakPinWords(pin)).toBeNull()
);
