import type { SignCode } from '$lib/core/content/vocabulary';

/** Kind of sign by its outline and safety color, as ISO 3864-1 sets them. */
export type SignKind = 'mandatory' | 'warning' | 'prohibition' | 'safe' | 'fire';

/** One stroke or area of a symbol; `cut` shows the sign's ground through it. */
export interface SignMark {
	d: string;
	as: 'area' | 'line' | 'cut-area' | 'cut-line';
	/** Line width in hundredths of the sign; 6 when left out. */
	w?: number;
}

export interface Sign {
	kind: SignKind;
	marks: SignMark[];
}

const circle = (x: number, y: number, r: number) =>
	`M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;

const FLAME =
	'M52 30C66 42 70 54 63 64C58 72 42 72 37 64C31 55 38 50 40 42C44 46 46 48 47 50C50 44 52 38 52 30Z';
const HEAD = 'M50 21C67 21 73 32 73 48C73 66 62 80 50 80C38 80 27 66 27 48C27 32 33 21 50 21Z';

/**
 * Our own simple drawings for meanings registered in ISO 7010, inside the geometry of ISO 3864-1.
 * Numbers: ISO 7010:2019, as listed in public catalogues of the registered signs; what each means stands in the catalog of words.
 */
export const SIGNS: Readonly<Record<SignCode, Sign>> = {
	M002: {
		kind: 'mandatory',
		marks: [
			{ d: circle(50, 27, 9), as: 'area' },
			{ d: 'M48 48L22 40V70L48 79ZM52 48L78 40V70L52 79Z', as: 'area' },
			{ d: 'M28 50l14 4.5M28 59l14 4.5M58 54.5l14-4.5M58 63.5l14-4.5', as: 'cut-line', w: 3 }
		]
	},
	M004: {
		kind: 'mandatory',
		marks: [
			{ d: HEAD, as: 'area' },
			{ d: 'M25 43H75', as: 'cut-line', w: 5 },
			{ d: 'M31 39H48V49C48 55 32 55 31 48ZM52 39H69V48C68 55 52 55 52 49Z', as: 'cut-area' }
		]
	},
	M008: {
		kind: 'mandatory',
		marks: [
			{ d: 'M31 20H54V50C58 58 78 57 80 70V80H31Z', as: 'area' },
			{ d: 'M29 72.5H82M54 40H44M54 48H44', as: 'cut-line', w: 3 }
		]
	},
	M009: {
		kind: 'mandatory',
		marks: [
			{ d: 'M39 52L36 29M48.5 48V22M58 48L60 25M66 54L71 35M38 64L25 49', as: 'line', w: 8 },
			{ d: 'M35 50L70 50C70 60 66 66 65 72H41C40 66 35 62 34 58Z', as: 'area' },
			{ d: 'M38 76H68V85H38Z', as: 'area' }
		]
	},
	M010: {
		kind: 'mandatory',
		marks: [
			{
				d: 'M41 20L50 26L59 20L74 27L82 60L73 62L67 43V84H53L50 62L47 84H33V43L27 62L18 60L26 27Z',
				as: 'area'
			},
			{ d: 'M50 26V58', as: 'cut-line', w: 2.5 }
		]
	},
	M011: {
		kind: 'mandatory',
		marks: [
			{ d: 'M30 24H52C58 24 60 28 60 33', as: 'line', w: 8 },
			{ d: 'M38 24V17M30 17H46', as: 'line', w: 5 },
			{ d: 'M60 39V45M53 42V47M67 42V47', as: 'line', w: 3.5 },
			{ d: 'M20 64C34 52 44 52 56 53H78', as: 'line', w: 8 },
			{ d: 'M26 76C40 70 50 67 62 66H80', as: 'line', w: 8 }
		]
	},
	M013: {
		kind: 'mandatory',
		marks: [
			{
				d: 'M50 26C62 26 67 34 67 47C67 60 60 71 50 71C40 71 33 60 33 47C33 34 38 26 50 26Z',
				as: 'area'
			},
			{ d: 'M26 33H74', as: 'line', w: 8 },
			{ d: 'M27 38V60C27 73 37 81 50 81C63 81 73 73 73 60V38', as: 'line', w: 4.5 },
			{ d: 'M29 40.5H71', as: 'cut-line', w: 3 }
		]
	},
	M016: {
		kind: 'mandatory',
		marks: [
			{ d: HEAD, as: 'area' },
			{ d: 'M33 51C42 46 58 46 67 51L64 68C58 76 42 76 36 68Z', as: 'cut-area' },
			{ d: 'M26 44L36 53M74 44L64 53M27 62H38M73 62H62', as: 'cut-line', w: 3 },
			{ d: 'M41 57H59M42 64H58', as: 'line', w: 2.5 }
		]
	},
	M017: {
		kind: 'mandatory',
		marks: [
			{ d: HEAD, as: 'area' },
			{ d: 'M41 48H59L63 66L56 74H44L37 66Z', as: 'cut-area' },
			{ d: 'M26 42L42 52M74 42L58 52', as: 'cut-line', w: 3 },
			{ d: circle(32, 70, 11), as: 'cut-area' },
			{ d: circle(68, 70, 11), as: 'cut-area' },
			{ d: circle(32, 70, 8), as: 'area' },
			{ d: circle(68, 70, 8), as: 'area' },
			{ d: circle(50, 64, 4.5), as: 'area' }
		]
	},
	M026: {
		kind: 'mandatory',
		marks: [
			{ d: 'M40 35C40 17 60 17 60 35M28 56L18 51M72 56L82 51', as: 'line', w: 4.5 },
			{ d: 'M38 33H62V47L72 54V84H28V54L38 47Z', as: 'area' },
			{ d: 'M38 62H62V73H38Z', as: 'cut-line', w: 2.5 }
		]
	},
	P002: {
		kind: 'prohibition',
		marks: [
			{ d: 'M18 52H62V62H18ZM65 52H70V62H65ZM73 52H78V62H73Z', as: 'area' },
			{ d: 'M67 46C67 38 58 40 58 32M76 46C76 34 67 36 67 27', as: 'line', w: 4 }
		]
	},
	P003: {
		kind: 'prohibition',
		marks: [
			{ d: 'M50 18C60 30 63 38 58 46C55 51 45 51 42 46C37 38 45 32 50 18Z', as: 'area' },
			{ d: 'M46 54H54V84H46Z', as: 'area' }
		]
	},
	P022: {
		kind: 'prohibition',
		marks: [
			{ d: 'M56 44H78L74 74H60Z', as: 'area' },
			{ d: 'M67 44L73 28', as: 'line', w: 4 },
			{ d: 'M20 55C20 41 50 41 50 55ZM20 58H50V63H20ZM20 66H50V69C50 74 20 74 20 69Z', as: 'area' }
		]
	},
	W001: {
		kind: 'warning',
		marks: [
			{ d: 'M44.5 34H55.5L53 63H47Z', as: 'area' },
			{ d: circle(50, 73, 5), as: 'area' }
		]
	},
	W011: {
		kind: 'warning',
		marks: [
			{ d: circle(43, 39, 5.5), as: 'area' },
			{ d: 'M45 48L54 61', as: 'line', w: 7 },
			{ d: 'M45 49L33 55M47 50L61 47M54 61L66 57L73 64M54 61L56 72L67 74', as: 'line', w: 4.2 },
			{ d: 'M24 79H56M62 79H68M73 79H76', as: 'line', w: 4 }
		]
	},
	W016: {
		kind: 'warning',
		marks: [
			{ d: 'M32 66L68 81M68 66L32 81', as: 'line', w: 5 },
			{
				d: 'M50 33C61 33 65 41 64 50C63 55 60 57 58 58V66H42V58C40 57 37 55 36 50C35 41 39 33 50 33Z',
				as: 'area'
			},
			{ d: circle(44, 48, 4), as: 'cut-area' },
			{ d: circle(56, 48, 4), as: 'cut-area' },
			{ d: 'M50 53L52.5 58H47.5ZM47 62V67M53 62V67', as: 'cut-line', w: 1.6 }
		]
	},
	W017: {
		kind: 'warning',
		marks: [
			{ d: 'M26 77H74', as: 'line', w: 6 },
			{
				d: 'M38 70C33 63 43 58 38 50M50 70C45 62 55 55 50 46C47 41 51 38 50 34M62 70C57 63 67 58 62 50',
				as: 'line',
				w: 5
			}
		]
	},
	W021: {
		kind: 'warning',
		marks: [
			{ d: FLAME, as: 'area' },
			{ d: 'M50 69C43 68 44 61 49 56C50 61 56 62 54 67C53 69 52 69 50 69Z', as: 'cut-area' },
			{ d: 'M30 78H70', as: 'line', w: 6 }
		]
	},
	W022: {
		kind: 'warning',
		marks: [
			{ d: 'M29 56H44V73H27Z', as: 'area' },
			{ d: 'M40 60H57M42 66H49M42 70.5H47', as: 'line', w: 5 },
			{ d: 'M59 59L81 79H66Z', as: 'area' }
		]
	},
	W023: {
		kind: 'warning',
		marks: [
			{ d: 'M36 52L50 44M50 38L64 46', as: 'line', w: 6 },
			{ d: 'M34 58V61M66 52V55M33.5 65V67M67 60V62', as: 'line', w: 3.5 },
			{ d: 'M22 79V73H30L33 76L37 73H46V79ZM54 79V75L60 70L64 72L68 69L78 75V79Z', as: 'area' }
		]
	},
	W028: {
		kind: 'warning',
		marks: [
			{ d: circle(50, 67, 9.5), as: 'line', w: 5 },
			{
				d: 'M51 27C60 36 62 42 59 50C56 56 44 56 41 50C39 44 45 42 45 36C47 38 48 39 49 40C51 36 51 32 51 27Z',
				as: 'area'
			},
			{ d: 'M34 80H66', as: 'line', w: 4 }
		]
	},
	E003: {
		kind: 'safe',
		marks: [{ d: 'M39 18H61V39H82V61H61V82H39V61H18V39H39Z', as: 'area' }]
	},
	E011: {
		kind: 'safe',
		marks: [
			{ d: 'M16 62C30 44 70 44 84 62C70 80 30 80 16 62Z', as: 'line', w: 5.5 },
			{ d: circle(50, 62, 9), as: 'area' },
			{
				d: 'M26 14V22M26 29V36M42 14V20M42 27V33M58 14V20M58 27V33M74 14V22M74 29V36',
				as: 'line',
				w: 5
			}
		]
	},
	E012: {
		kind: 'safe',
		marks: [
			{ d: 'M50 10V20M32 23H68', as: 'line', w: 6 },
			{ d: 'M36 31V37M50 31V36M64 31V37M30 44V50M70 44V50M28 58V64M72 58V64', as: 'line', w: 4.5 },
			{ d: circle(50, 47, 7), as: 'area' },
			{ d: 'M42 57H58V72H56V89H51V74H49V89H44V72H42Z', as: 'area' },
			{ d: 'M41 59L37 71M59 59L63 71', as: 'line', w: 4 }
		]
	},
	F001: {
		kind: 'fire',
		marks: [
			{ d: 'M40 44C40 38 64 38 64 44V86H40Z', as: 'area' },
			{ d: 'M48 26H56V40H48Z', as: 'area' },
			{ d: 'M44 22L68 15M44 27H66', as: 'line', w: 4.5 },
			{ d: 'M48 31C32 30 29 44 29 60', as: 'line', w: 5 },
			{ d: 'M25.5 60H32.5L34 71H24Z', as: 'area' },
			{ d: 'M40 54H64M40 64H64', as: 'cut-line', w: 3 }
		]
	}
};

export function isSignCode(code: string): code is SignCode {
	return Object.hasOwn(SIGNS, code);
}
