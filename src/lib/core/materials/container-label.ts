import {
	labelElements,
	PICTOGRAM_CODES,
	type PictogramCode,
	type SignalWord
} from './ghs-statements';

/** What stands on a container of a material, as far as its hazard statements tell. */
export interface ContainerLabel {
	signal: SignalWord | null;
	/** Another category of the same statements would say "warning": the container itself decides. */
	isGravest: boolean;
	/** Each with the statements that put it there. */
	pictograms: Array<{ code: PictogramCode; statements: string[] }>;
	/** Statements that are in no list of ours. */
	unknown: string[];
}

/** Statements of irritated skin or eyes, and of an allergy of the skin. */
const IRRITATES = ['H315', 'H319'];
const SKIN_ALLERGY = 'H317';
const AIRWAY_ALLERGY = 'H334';

/**
 * Pictograms and signal word for these hazard statements.
 *
 * Precedence by GHS, UN rev. 9, 1.4.10.5.3.1, and Regulation (EC) No 1272/2008, article 26(1)(b) to (d): a skull removes
 * the exclamation mark; corrosion removes it for irritated skin or eyes; a health hazard for an allergy of the airways
 * removes it for an allergy of the skin and for irritation. "Danger" removes "warning" (1.4.10.5.3.2; article 20(3)).
 * What those rules leave to choice (article 26(1)(a) and (e)) stays shown.
 */
export function containerLabel(statements: readonly string[]): ContainerLabel {
	const known = [...new Set(statements)].flatMap((statement) => {
		const elements = labelElements(statement);
		return elements ? [{ statement, ...elements }] : [];
	});
	const has = (code: PictogramCode) => known.some(({ pictograms }) => pictograms.includes(code));
	const allergyOfAirways = known.some(({ statement }) => statement.startsWith(AIRWAY_ALLERGY));

	const isRemoved = (code: PictogramCode, statement: string): boolean => {
		if (code !== 'GHS07') return false;
		// A letter may follow, as in H317A.
		const plain = statement.slice(0, 4);
		const irritates = IRRITATES.includes(plain);
		return (
			has('GHS06') ||
			(has('GHS05') && irritates) ||
			(allergyOfAirways && (irritates || plain === SKIN_ALLERGY))
		);
	};
	const pictograms = PICTOGRAM_CODES.map((code) => ({
		code,
		statements: known
			.filter((s) => s.pictograms.includes(code) && !isRemoved(code, s.statement))
			.map(({ statement }) => statement)
	})).filter((pictogram) => pictogram.statements.length > 0);

	const grave = known.filter(({ signal }) => signal === 'danger');
	return {
		signal: grave.length > 0 ? 'danger' : known.some(({ signal }) => signal) ? 'warning' : null,
		isGravest: grave.length > 0 && grave.every(({ isGravest }) => isGravest === true),
		pictograms,
		unknown: statements.filter((statement) => labelElements(statement) === null)
	};
}
