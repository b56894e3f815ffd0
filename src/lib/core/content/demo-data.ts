import { parse as parseYaml } from 'yaml';
import { z } from 'zod';
import type { Sheet } from '../materials/sheet';
import type { PlanInputs } from '../plan/inputs';
import type { Shop } from '../plan/shop';
import {
	demoPatternSchema,
	demoPeopleSchema,
	demoSheetSchema,
	demoShopSchema,
	type DemoPattern,
	type DemoPerson
} from './demo-schema';

/** The invented shop: what stands in content/demo, checked. */
export interface Demo {
	shop: Shop;
	people: DemoPerson[];
	sheets: Sheet[];
	patterns: DemoPattern[];
}

function parseFile<S extends z.ZodType>(schema: S, path: string, text: string): z.infer<S> {
	let data: unknown;
	try {
		data = parseYaml(text);
	} catch (cause) {
		throw new Error(`${path}: not YAML: ${cause instanceof Error ? cause.message : cause}`, {
			cause
		});
	}
	const result = schema.safeParse(data);
	if (!result.success) throw new Error(`${path}\n${z.prettifyError(result.error)}`);
	return result.data;
}

function refuseTwins(what: string, ids: string[]): void {
	const twin = ids.find((id, index) => ids.indexOf(id) !== index);
	if (twin !== undefined) throw new Error(`content/demo: two ${what} have the id "${twin}"`);
}

/** The sheets a demo pattern is planned with. @throws Error that names an id without a sheet */
export function recommendedMaterials(demo: Demo, pattern: DemoPattern): PlanInputs['materials'] {
	const chosen = Object.entries(pattern.recommended).map(([use, id]) => {
		const sheet = demo.sheets.find((candidate) => candidate.id === id);
		if (!sheet) throw new Error(`content/demo: ${pattern.id}: ${use}: no sheet has the id "${id}"`);
		return [use, sheet] as const;
	});
	return Object.fromEntries(chosen) as unknown as PlanInputs['materials'];
}

/**
 * Reads the invented shop from its files, by path within content/demo.
 *
 * @throws Error that names the file and every field that is wrong, or the id that is missing or taken
 */
export function readDemo(files: Record<string, string>): Demo {
	const text = (path: string) => {
		const found = files[path];
		if (found === undefined) throw new Error(`content/demo/${path}: no such file`);
		return found;
	};
	const folder = (name: string) =>
		Object.keys(files)
			.filter((path) => path.startsWith(`${name}/`))
			.sort();

	const demo: Demo = {
		shop: parseFile(demoShopSchema, 'content/demo/shop.yaml', text('shop.yaml')),
		people: parseFile(demoPeopleSchema, 'content/demo/people.yaml', text('people.yaml')).people,
		sheets: folder('materials').map((path) => parseFile(demoSheetSchema, path, text(path))),
		patterns: folder('patterns').map((path) => parseFile(demoPatternSchema, path, text(path)))
	};
	refuseTwins(
		'people',
		demo.people.map(({ id }) => id)
	);
	refuseTwins(
		'sheets',
		demo.sheets.map(({ id }) => id)
	);
	refuseTwins(
		'patterns',
		demo.patterns.map(({ id }) => id)
	);
	for (const pattern of demo.patterns) recommendedMaterials(demo, pattern);
	return demo;
}
