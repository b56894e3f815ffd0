import type { PictogramCode } from '$lib/core/materials/ghs-statements';

/** One stroke or area of a symbol, in hundredths of the square's diagonal; `cut` is white on black. */
interface SymbolMark {
	d: string;
	as: 'area' | 'line' | 'cut-area' | 'cut-line';
	w?: number;
}

const ball = (x: number, y: number, r: number) =>
	`M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;

const FLAME =
	'M53 15C56 25 68 33 67 47C66 58 59 64 50 64C41 64 33 58 33 48C33 39 40 35 40 25C45 29 46 34 46 39C51 34 54 26 53 15Z';
const TONGUE = 'M51 62C44 60 42 54 47 47C48 51 51 50 51 45C57 50 58 58 51 62Z';

/**
 * Our own drawings of the nine symbols named in the GHS, UN rev. 9, 1.4.1.4.1. The frame is a square set on a point, red,
 * with a black symbol on white ground: 1.4.1.4.2.1.
 */
export const SYMBOLS: Readonly<Record<PictogramCode, readonly SymbolMark[]>> = {
	GHS01: [
		{ d: ball(44, 60, 12), as: 'area' },
		{ d: 'M38 52l6 7-3 5 5 3-1 6', as: 'cut-line', w: 2.2 },
		{ d: 'M49 50C52 47 52 44 54 42', as: 'line', w: 3 },
		{
			d: 'M50 39l-4-17 7.5 11 1.5-10 4 9 9-6-5 10 11 2-11 4 5 8-9-4-3 8-2-10z',
			as: 'area'
		},
		{ d: 'M31 49l-6-4M29 58l-7 0M33 68l-3 2M44 76l-1 4M53 71l5 4M59 62l7 3', as: 'line', w: 3 }
	],
	GHS02: [
		{ d: FLAME, as: 'area' },
		{ d: TONGUE, as: 'cut-area' },
		{ d: 'M33 72H67', as: 'line', w: 6 }
	],
	GHS03: [
		{ d: ball(50, 60, 9.5), as: 'line', w: 5 },
		{
			d: 'M52 13C54 21 63 27 63 37C63 41 61 44 58 46.5C54 44.5 46 44.5 42 46.5C39 44 37 41 37 37C37 30 42 27 42 20C46 23 47 27 47 31C51 27 53 21 52 13Z',
			as: 'area'
		},
		{ d: 'M50 43C46 40 45 37 48 33C49 36 51 35 51 32C55 36 55 40 50 43Z', as: 'cut-area' },
		{ d: 'M39 77H61', as: 'line', w: 5 }
	],
	GHS04: [
		{ d: 'M31 61L57 43.5', as: 'line', w: 16 },
		{ d: 'M52.5 36.9C58 32.5 61 34 65 33L69 38C67 41 67 45 61.5 50.200Z', as: 'area' },
		{ d: 'M65 37L71.5 32.6', as: 'line', w: 5.5 }
	],
	GHS05: [
		{ d: 'M28 36L44 26L48 32L32 42Z', as: 'line', w: 3 },
		{ d: 'M31 39.500L39 34.500L42 36L32 42Z', as: 'area' },
		{ d: 'M56 26L72 36L68 42L52 32Z', as: 'line', w: 3 },
		{ d: 'M69 39.500L61 34.500L58 36L68 42Z', as: 'area' },
		{
			d: 'M30 46.500v3M30 54v3M35.5 48v3M69.5 46.500v2.500M64.5 47v2.500M69.5 53v2',
			as: 'line',
			w: 3.2
		},
		{ d: 'M22 60.500H27L30 65L33 61.500L36 65.500L39 60.500H47V68.500H28Z', as: 'area' },
		{ d: 'M62 59H67L69.5 63L72 59H79L74.5 68.5H62Z', as: 'area' },
		{ d: 'M53 61H64M52 65.5H64M64 67L56 72', as: 'line', w: 3.6 }
	],
	GHS06: [
		{ d: 'M30 59L61 75M70 59L39 75', as: 'line', w: 5.5 },
		{
			d: ball(28, 60, 3.6) + ball(31, 56, 3.6) + ball(72, 60, 3.6) + ball(69, 56, 3.6),
			as: 'area'
		},
		{
			d: ball(38, 78, 3.4) + ball(36, 73.5, 3.6) + ball(62, 78, 3.4) + ball(64, 73.5, 3.6),
			as: 'area'
		},
		{
			d: 'M50 15C62 15 68.5 23 67.5 34C66.5 41 64 44 60.5 46V57C57 61 43 61 39.5 57V46C36 44 33.5 41 32.5 34C31.5 23 38 15 50 15Z',
			as: 'area'
		},
		{ d: ball(42.5, 37, 5), as: 'cut-area' },
		{ d: ball(57.5, 37, 5), as: 'cut-area' },
		{ d: 'M50 42L53.5 49H46.500Z', as: 'cut-area' },
		{ d: 'M45.5 53V60M50 53.500V60.500M54.5 53V60', as: 'cut-line', w: 1.8 }
	],
	GHS07: [
		{ d: 'M50 17C55.5 17 58 21 57.5 26L54 57H46L42.5 26C42 21 44.5 17 50 17Z', as: 'area' },
		{ d: ball(50, 71, 6.5), as: 'area' }
	],
	GHS08: [
		{ d: ball(50, 24, 9), as: 'area' },
		{
			d: 'M44 36H56C64 37 69 42 69 50V70C64 76 57 79 50 81C43 79 36 76 31 70V50C31 42 36 37 44 36Z',
			as: 'area'
		},
		{
			d: 'M50 38l2.6 11.5 8.4-6-5 9 13 4-13 3.5 5 9-8.4-6L50 75l-2.6-12-8.4 6 5-9-13-3.5 13-4-5-9 8.4 6z',
			as: 'cut-area'
		}
	],
	GHS09: [
		{
			d: 'M37 68C39 57 39 45 35.5 24H39.500C42 30 43 36 43.5 42L51 31L53 33L44.5 47C44.5 56 45 61 47 68Z',
			as: 'area'
		},
		{ d: 'M41 46L29.5 37.500M39 36L31 29M48.5 36L49 25M44 55L53 47', as: 'line', w: 3 },
		{ d: 'M19 56.500C27 57 32 61 36 66H46L54 73H42C32 70 26 63 19 56.500Z', as: 'area' },
		{
			d: 'M49 62C54 51 66 50 72 56L80 50C78 54 78.5 57 79.5 61L72 60C67 70 55 72 49 62Z',
			as: 'area'
		},
		{ d: 'M54.5 58.500l3 3M57.5 58.500l-3 3', as: 'cut-line', w: 1.8 }
	]
};
