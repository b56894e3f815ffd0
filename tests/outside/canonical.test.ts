import { describe, expect, test } from 'vitest';
import { canonicalJson, sha256Hex } from '../../src/lib/core/log/canonical';

const RFC_SAMPLE =
	'{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
	'"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/",' +
	'"literals":[null,true,false]}';

describe('canonical JSON, RFC 8785 (samples from memory; hashes by coreutils sha256sum)', () => {
	test('section 3.2.2, the sample object', () => {
		const text = canonicalJson(JSON.parse(RFC_SAMPLE));
		expect(text).toBe(
			'{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
				'"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}'
		);
		expect(sha256Hex(text)).toBe(
			'2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb'
		);
	});

	test('section 3.2.3, sorting by UTF-16 code units', () => {
		const text = canonicalJson({
			'\u20ac': 'Euro Sign',
			'\r': 'Carriage Return',
			'\ufb33': 'Hebrew Letter Dalet With Dagesh',
			'1': 'One',
			'\u{1f600}': 'Emoji: Grinning Face',
			'\u0080': 'Control',
			'\u00f6': 'Latin Small Letter O With Diaeresis'
		});
		expect(sha256Hex(text)).toBe(
			'5e321556d22018a9656991a9e94f77ec175fa193e52a2429d312f8419ec8b08c'
		);
	});

	// Appendix B: bits of the double, and its text.
	test.each([
		['0000000000000000', '0'],
		['8000000000000000', '0'],
		['0000000000000001', '5e-324'],
		['8000000000000001', '-5e-324'],
		['7fefffffffffffff', '1.7976931348623157e+308'],
		['4340000000000000', '9007199254740992'],
		['c340000000000000', '-9007199254740992'],
		['4430000000000000', '295147905179352830000'],
		['44b52d02c7e14af5', '9.999999999999997e+22'],
		['44b52d02c7e14af6', '1e+23'],
		['44b52d02c7e14af7', '1.0000000000000001e+23'],
		['444b1ae4d6e2ef50', '1e+21'],
		['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
		['3eb0c6f7a0b5ed8d', '0.000001'],
		['41b3de4355555555', '333333333.3333333'],
		['becbf647612f3696', '-0.0000033333333333333333'],
		['43143ff3c1cb0959', '1424953923781206.2']
	])('appendix B, %s', (bits, text) => {
		const value = Buffer.from(bits, 'hex').readDoubleBE();
		expect(canonicalJson(value)).toBe(text);
	});

	test.each([NaN, Infinity, -Infinity, undefined, '\ud800', { a: [NaN] }])(
		'refuses %s, which has no JSON text',
		(value) => {
			expect(() => canonicalJson(value)).toThrow(TypeError);
		}
	);
});

describe('SHA-256, FIPS 180-4 examples', () => {
	test.each([
		['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
		['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
		[
			'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
			'248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'
		],
		['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0']
	])('%.12s', (message, digest) => {
		expect(sha256Hex(message)).toBe(digest);
	});
});
