import type { Compilable, CompiledQuery } from 'kysely';
import type { Db } from './database';
import { isPostgres } from './dialect';

/** What stands for a value while a query is compiled. */
class Place {
	constructor(readonly name: string) {}
}

/**
 * A query that is asked at every request: for SQLite it is built and compiled once, which takes longer than the
 * store takes to answer. For PostgreSQL, where the way there takes the time, it is compiled as any other.
 *
 * @param build - makes the query; it hands the values on and never looks at them
 * @returns what asks it of a database, or within a transaction, and gives its rows
 */
export function keptQuery<Values extends object, Row>(
	build: (db: Db, values: Values) => Compilable<Row>
): (db: Db, values: Values) => Promise<Row[]> {
	let kept: CompiledQuery<Row> | undefined;
	return async (db, values) => {
		if (isPostgres(db)) return (await db.executeQuery<Row>(build(db, values))).rows;
		kept ??= build(db, placesFor(values)).compile();
		const parameters = kept.parameters.map((parameter) =>
			parameter instanceof Place ? values[parameter.name as keyof Values] : parameter
		);
		return (await db.executeQuery<Row>({ ...kept, parameters })).rows;
	};
}

function placesFor<Values extends object>(values: Values): Values {
	const places = Object.keys(values).map((name) => [name, new Place(name)] as const);
	// `build` does not look at them, so it does not see that they are none of its own.
	return Object.fromEntries(places) as Values;
}
