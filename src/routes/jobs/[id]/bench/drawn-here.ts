import type { BenchView } from '$lib/core/bench/bench-view';

/** The drawings of a bench without the server; what draws them is loaded for it. */
export function drawnHere({ section, system, viewer: { locale } }: BenchView) {
	const draws = import('$lib/screen/section/drawn-section');
	const draw = async (isCompact: boolean) =>
		(await draws).drawSection(section, { system, isCompact, locale });
	return { emblem: draw(true), picture: draw(false) };
}
