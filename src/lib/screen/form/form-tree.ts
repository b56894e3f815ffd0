/** A form as it was posted: dotted names unfolded, every leaf still a text. */
export type FormTree = string | FormTree[] | { [key: string]: FormTree };

const KEY = /^[A-Za-z][A-Za-z0-9-]{0,40}$|^\d{1,2}$/;
const MOST_NAMES = 2000;

/**
 * "body.solids.0.lengthMm" becomes a list in an object in an object. Files and odd names are left out;
 * of a name that comes twice the last one counts. Rows whose numbers have gaps close up.
 */
export function formTree(entries: Iterable<[string, unknown]>): Record<string, FormTree> {
	const root: Branch = new Map();
	let count = 0;
	for (const [name, value] of entries) {
		const keys = name.split('.');
		if (typeof value !== 'string' || ++count > MOST_NAMES) continue;
		if (keys.length > 6 || !keys.every((key) => KEY.test(key))) continue;
		let branch = root;
		for (const key of keys.slice(0, -1)) {
			const next = branch.get(key);
			const below: Branch = next instanceof Map ? next : new Map();
			branch.set(key, below);
			branch = below;
		}
		branch.set(keys.at(-1) ?? '', value);
	}
	return Object.fromEntries([...root].map(([key, node]) => [key, treeOf(node)]));
}

type Branch = Map<string, string | Branch>;

function treeOf(node: string | Branch): FormTree {
	if (typeof node === 'string') return node;
	const entries = [...node];
	if (entries.every(([key]) => /^\d+$/.test(key))) {
		return entries.sort(([a], [b]) => Number(a) - Number(b)).map(([, child]) => treeOf(child));
	}
	return Object.fromEntries(entries.map(([key, child]) => [key, treeOf(child)]));
}
