import { readFileSync } from 'node:fs';
import ts from 'typescript';

const LAWS = '../../src/lib/core/laws/';

/** What stands behind each name of a file: the nodes that its value is made from. */
type Makings = Map<string, ts.Node[]>;

function makingsOf(source: ts.SourceFile): Makings {
	const makings: Makings = new Map();
	const add = (name: ts.BindingName, made: ts.Node | undefined): void => {
		if (!made) return;
		if (ts.isIdentifier(name)) {
			makings.set(name.text, [...(makings.get(name.text) ?? []), made]);
		} else {
			for (const element of name.elements)
				if (ts.isBindingElement(element)) add(element.name, made);
		}
	};
	const visit = (node: ts.Node): void => {
		if (ts.isFunctionDeclaration(node) && node.name) add(node.name, node.body);
		if (ts.isVariableDeclaration(node)) {
			const loop = node.parent.parent;
			add(node.name, ts.isForOfStatement(loop) ? loop.expression : node.initializer);
		}
		ts.forEachChild(node, visit);
	};
	visit(source);
	return makings;
}

/** The law that each imported name comes from; types aside, which no value is made from. */
function importedLaws(source: ts.SourceFile): Map<string, string> {
	const laws = new Map<string, string>();
	for (const statement of source.statements) {
		if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier))
			continue;
		const from = statement.moduleSpecifier.text;
		const names = statement.importClause?.namedBindings;
		if (!from.startsWith(LAWS) || !names || !ts.isNamedImports(names)) continue;
		for (const { name, isTypeOnly } of names.elements) {
			if (!isTypeOnly) laws.set(name.text, from.slice(LAWS.length));
		}
	}
	return laws;
}

/** What a case computes: its `got`, or all of it when that is not written out. */
function computedBy(call: ts.CallExpression): ts.Node {
	const [given] = call.arguments;
	const properties = given && ts.isObjectLiteralExpression(given) ? given.properties : [];
	return properties.find(({ name }) => name?.getText() === 'got') ?? call;
}

/**
 * Which files of `laws/` each outside case of a file of cases calls by name, itself or through a helper
 * beside it, by the line on which the case begins. A law that is reached only inside another law does
 * not count: a number that agrees says little of what it was composed from.
 *
 * @param path - of the file of cases, from the root of the project
 */
export function lawsOfCases(path: string): Map<number, string[]> {
	const source = ts.createSourceFile(
		path,
		readFileSync(path, 'utf8'),
		ts.ScriptTarget.Latest,
		true
	);
	const makings = makingsOf(source);
	const laws = importedLaws(source);
	const found = new Map<number, string[]>();

	const namesIn = (node: ts.Node, seen: Set<string>): void => {
		if (ts.isIdentifier(node) && !seen.has(node.text)) {
			seen.add(node.text);
			for (const made of makings.get(node.text) ?? []) namesIn(made, seen);
		}
		ts.forEachChild(node, (child) => namesIn(child, seen));
	};
	const visit = (node: ts.Node): void => {
		if (ts.isCallExpression(node) && node.expression.getText() === 'outsideCase') {
			const seen = new Set<string>();
			namesIn(computedBy(node), seen);
			const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
			const named = [...seen].flatMap((name) => laws.get(name) ?? []);
			found.set(line, [...new Set(named)].sort());
		}
		ts.forEachChild(node, visit);
	};
	visit(source);
	return found;
}
