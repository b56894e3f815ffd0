import type { HazardId } from '../content/vocabulary';
import type { Sheet } from './sheet';

/** Hazard statements that mean a hazard, whatever else the sheet names. GHS, UN rev. 9, annex 3. */
const BY_STATEMENT: readonly [RegExp, HazardId][] = [
	[/^H334|^EUH204/, 'isocyanate'],
	[/^H314/, 'amine'],
	[/^H317|^EUH208/, 'sensitizer'],
	[/^H22[456]/, 'solvent'],
	[/^H24[0-2]/, 'peroxide']
];

/** Hazards that the hazard statements of a sheet mean, whether or not they are ticked on it. */
export function statedHazards({
	family,
	hazardStatements
}: Pick<Sheet, 'family' | 'hazardStatements'>): HazardId[] {
	return hazardStatements.flatMap((statement) =>
		BY_STATEMENT.filter(([pattern]) => pattern.test(statement)).map(([, id]) =>
			// H334 alone does not make a silicone an isocyanate; its family decides.
			id === 'isocyanate' && family !== 'urethane' ? 'sensitizer' : id
		)
	);
}
