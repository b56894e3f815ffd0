/** The nine pictograms of the GHS, in the order of their codes. Names of the symbols: GHS, UN rev. 9, 1.4.10.4. */
export const PICTOGRAM_CODES = [
	'GHS01',
	'GHS02',
	'GHS03',
	'GHS04',
	'GHS05',
	'GHS06',
	'GHS07',
	'GHS08',
	'GHS09'
] as const;
export type PictogramCode = (typeof PICTOGRAM_CODES)[number];

export type SignalWord = 'danger' | 'warning';

/** What a hazard statement puts on a label. */
export interface LabelElements {
	pictograms: readonly PictogramCode[];
	/** The graver one where the statement's categories differ. */
	signal: SignalWord | null;
	/** Some category of this statement has the lesser word: the container decides. */
	isGravest?: true;
}

type Row = [codes: string, pictograms: string, signal: 'D' | 'W' | 'D/W' | '-'];

/**
 * Statements that share their label elements, in a row. D is danger, W warning; D/W where the code alone does not
 * tell the category; pictograms by the last digits of their codes.
 *
 * Source: GHS, UN rev. 9, annex 3, tables A3.1.1 to A3.1.3 with annex 1; Regulation (EC) No 1272/2008, annex I
 * (tables "Label elements") and annex V; checked against a published transcription of annex 3. What the GHS has and that
 * regulation has not (categories 4 and 5, H227, H303, H313, H320, H333) shows no pictogram.
 */
const ROWS: readonly Row[] = [
	['200 201 202 203 209 210 211 240', '1', 'D'],
	['204', '1', 'W'],
	['205', '', 'D'],
	['241', '1 2', 'D'],
	['206 220 222 224 225 230 231 232 250 251 260', '2', 'D'],
	['221 207 228 242 261', '2', 'D/W'],
	['208 223 226 252', '2', 'W'],
	['229', '', 'W'],
	['227 303 313 316 320 333', '', 'W'],
	['270 271', '3', 'D'],
	['272', '3', 'D/W'],
	['280 281 284', '4', 'W'],
	['282', '2 4', 'D'],
	['283', '2 4', 'W'],
	['290', '5', 'W'],
	['314 318', '5', 'D'],
	['300 301 310 311 330 331', '6', 'D'],
	['302 312 315 317 319 332 335 336 420', '7', 'W'],
	['304 334 340 350 360 370 372', '8', 'D'],
	['305 341 351 361 371 373', '8', 'W'],
	['400 410', '9', 'W'],
	['411', '9', '-'],
	['362 401 402 412 413', '', '-']
];

const STATEMENTS: ReadonlyMap<string, LabelElements> = new Map(
	ROWS.flatMap(([codes, symbols, word]) => {
		const elements: LabelElements = {
			pictograms: PICTOGRAM_CODES.filter((code) => symbols.split(' ').includes(code.slice(4))),
			signal: word === '-' ? null : word === 'W' ? 'warning' : 'danger',
			...(word === 'D/W' && { isGravest: true })
		};
		return codes.split(' ').map((code) => [`H${code}`, elements] as const);
	})
);

/**
 * Signal words of the hazard classes that Delegated Regulation (EU) 2023/707 added, which have no pictogram (endocrine
 * disruption; persistent, mobile, bioaccumulative). From memory.
 */
const EUH_SIGNALS: Readonly<Record<string, SignalWord>> = {
	EUH380: 'danger',
	EUH381: 'warning',
	EUH430: 'danger',
	EUH431: 'warning',
	EUH440: 'danger',
	EUH441: 'danger',
	EUH450: 'danger',
	EUH451: 'danger'
};

/** Supplementary statements of Regulation (EC) No 1272/2008, annex II and annex III part 2. From memory. */
const SUPPLEMENTARY = /^EUH(014|018|019|029|031|032|044|066|070|071|20[1-9]|21[0-2]|401)/;

/**
 * Label elements of a hazard statement such as "H317" or "H361d"; null when the list has none of that code.
 * A supplementary statement (EUH208) puts neither pictogram nor signal word on a label.
 */
export function labelElements(statement: string): LabelElements | null {
	const signal = EUH_SIGNALS[statement.slice(0, 6)];
	if (signal) return { pictograms: [], signal };
	if (SUPPLEMENTARY.test(statement)) return { pictograms: [], signal: null };
	return STATEMENTS.get(statement.slice(0, 4)) ?? null;
}
