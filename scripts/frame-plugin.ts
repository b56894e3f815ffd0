import type { Plugin, Rolldown } from 'vite';

type Modules = Rolldown.ChunkingContext;

/** What SvelteKit starts in the browser on every page: its client, the app and the outermost layout. */
const STARTS = [
	/[\\/]@sveltejs[\\/]kit[\\/]src[\\/]runtime[\\/]client[\\/]entry\.js$/,
	/[\\/]client-optimized[\\/]app\.js$/,
	/[\\/]client-optimized[\\/]nodes[\\/]0\.js$/
];

/** All that these modules import, and what that imports in turn; what is imported on demand is left out. */
function importsOf(starts: readonly string[], modules: Modules): Set<string> {
	const found = new Set<string>();
	const visit = (id: string): void => {
		if (found.has(id)) return;
		found.add(id);
		modules.getModuleInfo(id)?.importedIds.forEach(visit);
	};
	starts.forEach(visit);
	return found;
}

/**
 * Puts what every page loads into one file. Left to itself the bundler makes some twenty of it, since some parts
 * load a share of it anew; each costs every page its name, its imports and a start of its own for gzip.
 */
export function frameInOneFile(): Plugin {
	let frame: Set<string> | null = null;
	const starts = new Set<string>();
	const isFrame = (id: string, modules: Modules): boolean => {
		frame ??= importsOf([...starts], modules);
		return frame.has(id) && !starts.has(id);
	};
	return {
		name: 'frame-in-one-file',
		apply: 'build',
		config(config) {
			if (config.build?.ssr) return;
			const groups = [{ name: (id: string, m: Modules) => (isFrame(id, m) ? 'frame' : null) }];
			return { build: { rolldownOptions: { output: { codeSplitting: { groups } } } } };
		},
		moduleParsed({ id }) {
			if (STARTS.some((start) => start.test(id))) starts.add(id);
		}
	};
}
