import { expect, test } from 'vitest';
import type { MeshPlace } from '../../src/lib/core/geometry/mesh-body';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { rehearseJob } from '../../src/lib/core/process/rehearsal';
import { handPlan } from '../fixtures/plan';

const crew = { worker: 'mara', supervisor: 'tom' };
const startAt = '2026-03-02T14:00:00.000Z';
const place = (number: number, kind: MeshPlace['kind']): MeshPlace => ({
	number,
	kind,
	xMm: 0,
	yMm: 0,
	zMm: 50,
	depthMm: 6,
	widthMm: 2.1,
	lengthMm: 40,
	areaCm2: 5,
	airMl: 0.5
});
const bridging = {
	buildReachMm: 1.2,
	lookedReachMm: 1.2,
	detailReachMm: 0.5,
	areaCm2: 10,
	places: [place(1, 'groove'), place(2, 'inner corner'), place(3, 'pit'), place(4, 'foot')],
	unlistedPlaces: 0,
	brushTwice: [3]
};
const stepAt = (
	plan: ReturnType<typeof handPlan>,
	until: Parameters<typeof rehearseJob>[1]['until']
) => {
	const { state } = rehearseJob(plan, { until, startAt, crew });
	return benchStep(state, { by: 'mara', at: state.lastAt });
};

test('places that keep air are told from the briefing to the first build coat, and not after', () => {
	const plan = { ...handPlan(), bridging };
	const brief = stepAt(plan, () => true);
	expect(brief.places?.air?.places.map(({ number }) => number)).toEqual([1, 3]);
	expect(brief.places?.air?.brushTwice).toEqual([3]);
	const firstBuild = plan.coats.findIndex(({ kind }) => kind === 'build');
	expect(
		stepAt(plan, (c) => c.phase === 'build' && c.coatIndex === firstBuild).places
	).not.toBeNull();
	expect(stepAt(plan, (c) => c.coatIndex === firstBuild + 1).places).toBeNull();
	expect(stepAt(plan, 'trim').places).toBeNull();
});

test('the foot is told while it can still be filled, not as a place to brush into', () => {
	const plan = { ...handPlan(), bridging };
	const feet = (until: Parameters<typeof stepAt>[1]) =>
		stepAt(plan, until).places?.foot.map(({ number }) => number) ?? [];
	expect(feet(() => true)).toEqual([4]);
	expect(feet('pattern')).toEqual([4]);
	expect(feet('release')).toEqual([]);
	expect(feet((c) => c.phase === 'build')).toEqual([]);
});

test('of many places the deepest are told and each to brush twice; the rest is counted, not dropped', () => {
	const places = [
		...Array.from({ length: 19 }, (_, i) => place(i + 1, 'groove')),
		place(20, 'inner corner')
	];
	const given = { ...bridging, places, unlistedPlaces: 7, brushTwice: [5, 15, 18] };
	const told = stepAt({ ...handPlan(), bridging: given }, () => true).places?.air;
	expect(told?.places.map(({ number }) => number)).toEqual([
		...[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
		...[15, 18]
	]);
	expect(told).toMatchObject({ brushTwice: [5, 15, 18], morePlaces: 5, unlistedPlaces: 7 });
	const few = stepAt({ ...handPlan(), bridging }, () => true).places?.air;
	expect(few).toMatchObject({ morePlaces: 0, unlistedPlaces: 0 });
});

test('a pattern without a mesh has nothing to say to any step', () => {
	expect(stepAt(handPlan(), () => true).places).toBeNull();
});
