import { expect, test } from 'vitest';
import { jobLink, planAnchor } from '$lib/screen/section/layer-links';
import type { SectionLayer } from '$lib/screen/section/section-model';
import { readFileSync } from 'node:fs';

const layer = (kind: SectionLayer['kind'], state: SectionLayer['state'] = 'done') => ({
	kind,
	state,
	label: kind,
	thicknessMm: 1
});
const layers = [
	layer('board'),
	layer('pattern'),
	layer('release'),
	layer('frame'),
	layer('detail'),
	layer('build', 'current'),
	layer('release', 'planned'),
	layer('shell', 'planned')
];

test('each layer leads to its place in the plan, and the plan has that place', () => {
	const plan = readFileSync('src/lib/screen/plan/PlanPhases.svelte', 'utf8');
	const anchors = layers.map((_, index) => planAnchor(layers, index));
	expect(anchors).toEqual(
		['frame', 'pattern', 'pattern', 'frame', 'detail', 'build', 'wax', 'shell'].map(
			(place) => `#phase-${place}`
		)
	);
	for (const anchor of anchors) expect(plan).toContain(`id="${anchor.replace('#phase-', '')}"`);
});

test('the layer at work leads to the bench', () => {
	expect(jobLink('j1', layers, 5)).toBe('/jobs/j1/bench');
	expect(jobLink('j1', layers, 7)).toBe('/jobs/j1/plan#phase-shell');
});
