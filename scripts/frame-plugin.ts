import type { Plugin, Rolldown } from 'vite';

type Modules = Rolldown.ChunkingContext;

/** What SvelteKit starts in the browser on every page: its client, the app and the outermost layout. */
const STARTS = [
	/[\\/]@sveltejs[\\/]kit[\\/]src[\\/]runtime[\\/]client[\\/]entry\.js$/,
	/[\\/]client-optimized[\\/]app\.js$/,
	/[\\/]client-optimized[\\/]nodes[\\/]0\.js$/
];
/**
 * Styles that many pages need at once and the frame may load on demand through the bench's parts: SvelteKit, which meets
 * them there first, would leave them out of those pages till their scripts run.
 */
const STYLES =
	/[\\/]lib[\\/]screen[\\/](signs[\\/]\w+|design[\\/](Countdown|RatioGauge))\.svelte\?.*type=style/;
const BENCH = /[\\/]routes[\\/]jobs[\\/]\[id\][\\/]bench[\\/]\+page\.(svelte|ts)$/;

/** All that these modules import, and what that imports in turn; what is imported on demand is left out. */
function importsOf(starts: Iterable<string>, modules: Modules): Set<string> {
	const found = new Set<string>();
	const visit = (id: string): void => {
		if (found.has(id)) return;
		found.add(id);
		modules.getModuleInfo(id)?.importedIds.forEach(visit);
	};
	for (const id of starts) visit(id);
	return found;
}

/** What these modules load on demand: parts of a page, and all else. */
function onDemand(from: Iterable<string>, modules: Modules): { parts: string[]; rest: string[] } {
	const ids = [...from].flatMap((id) => modules.getModuleInfo(id)?.dynamicallyImportedIds ?? []);
	const isPart = (id: string): boolean => id.endsWith('.svelte');
	return { parts: ids.filter(isPart), rest: ids.filter((id) => !isPart(id)) };
}

/** What the bench loads beside the frame and other pages or parts load too. */
function sharedWithBench(bench: Iterable<string>, frame: Set<string>, modules: Modules) {
	const all = importsOf(bench, modules);
	const isElsewhere = (id: string): boolean => !all.has(id) && !frame.has(id);
	const shared = [...all].filter((id) => {
		const { importers = [], dynamicImporters = [] } = modules.getModuleInfo(id) ?? {};
		return [...importers, ...dynamicImporters].some(isElsewhere);
	});
	const starts = new Set(bench);
	return new Set(
		[
			...importsOf(
				shared.filter((id) => !starts.has(id)),
				modules
			)
		].filter((id) => !frame.has(id))
	);
}

/**
 * Puts what every page loads into one file, and what the bench shares with other pages into another. Left to itself the
 * bundler makes some forty of it, since some parts load a share of it anew; each costs a page its name, its imports, a
 * start of its own for gzip, and on a slow line a turn of waiting.
 */
export function frameInOneFile(): Plugin {
	const starts = new Set<string>();
	const bench = new Set<string>();
	let known: Record<'frame' | 'bench', Set<string>> | null = null;
	const isIn = (file: 'frame' | 'bench') => (id: string, modules: Modules) => {
		if (STYLES.test(id)) return 'frame';
		if (!known) {
			// SvelteKit leaves out of a page the styles of a file that the frame loads on demand, since it meets that file
			// first so: what is loaded on demand and the bench has too is in the frame.
			const first = importsOf(starts, modules);
			const { parts, rest } = onDemand(first, modules);
			const theirs = parts.flatMap((id) => modules.getModuleInfo(id)?.importedIds ?? []);
			const frame = new Set([...first, ...importsOf(theirs, modules)]);
			const shared = sharedWithBench(bench, frame, modules);
			for (const id of importsOf(rest, modules)) if (shared.delete(id)) frame.add(id);
			known = { frame, bench: shared };
		}
		return known[file].has(id) && !starts.has(id) ? file : null;
	};
	return {
		name: 'frame-in-one-file',
		apply: 'build',
		config(config) {
			if (config.build?.ssr) return;
			// A file takes with it what its modules import, so the frame goes first.
			const groups = [
				{ name: isIn('frame'), priority: 2 },
				{ name: isIn('bench'), priority: 1 }
			];
			return { build: { rolldownOptions: { output: { codeSplitting: { groups } } } } };
		},
		moduleParsed({ id }) {
			if (STARTS.some((start) => start.test(id))) starts.add(id);
			if (BENCH.test(id)) bench.add(id);
		}
	};
}
