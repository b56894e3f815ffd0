import { expect, test } from 'vitest';
import { healthOf } from '../../src/lib/core/mesh/health';
import { healthWords } from '../../src/lib/screen/mesh/health-words';
import { faceName, firstDraft, readPlacement } from '../../src/lib/screen/mesh/placement-draft';
import { placeSpot, recessesOf } from '../../src/lib/screen/mesh/place-spot';
import { pictureFrame, sectionBandsToDraw } from '../../src/lib/screen/mesh/section-picture';
import { depthFill } from '../../src/lib/screen/mesh/depth-color';
import { draftOfPattern } from '../../src/lib/screen/pattern/draft-of-pattern';
import { readPattern } from '../../src/lib/screen/pattern/read-pattern';
import { placedMesh } from '../../src/lib/core/mesh/place';
import { testInputs } from '../fixtures/materials';
import { meshBodyOf } from '../fixtures/mesh-body';
import { box } from '../fixtures/mesh-solids';

const none = { joinedVertices: 0, droppedTriangles: 0, turnedTriangles: 0 };

test('a sound mesh is called sound, and everything of it can be trusted', () => {
	const words = healthWords(healthOf(box(20, 10, 5)), none);
	expect(words).toMatchObject({ isSound: true, repaired: [], left: [], untrusted: [] });
	expect(words.verdict).toBe('The mesh is closed and without faults.');
});

test('a hole is named with its place, and the numbers that fall with it are named', () => {
	const whole = box(20, 10, 5);
	const open = { ...whole, triangles: whole.triangles.subarray(3) };
	const words = healthWords(healthOf(open), { ...none, turnedTriangles: 1 });
	expect(words.isSound).toBe(false);
	expect(words.repaired).toEqual(['1 triangle was turned to face outward.']);
	expect(words.left[0]).toMatch(/^3 edges have a triangle on one side only: a hole, first at x/);
	expect(words.untrusted).toEqual([
		'volume and center of mass',
		'coats, sections with coats, and bridged places'
	]);
	expect(words.trusted).toEqual(['exposed area', 'size']);
});

test('what is typed becomes a placement, or says what is accepted', () => {
	const rests = [{ down: [0, 1, 0] as const, area: 1, tipsAtDeg: 30 }];
	expect(readPlacement({ ...firstDraft(25.4), scalePct: '101.5' }, rests).placement).toEqual({
		unitMm: 25.4,
		scale: 1.015,
		turnDeg: 0,
		down: [0, 1, 0]
	});
	const { placement, errors } = readPlacement({ ...firstDraft(1), scalePct: '0' }, rests);
	expect(placement).toBeNull();
	expect(errors.scalePct).toContain('1 to 10000 %');
	expect(faceName([0, 0, -1])).toBe('the file’s underside');
	expect(faceName([0.6, 0, -0.8])).toBe('a slope near the file’s underside');
});

test('places say where they are, and the detail they stand for', () => {
	const place = { number: 1, lengthMm: 40, areaCm2: 1, airMl: 1, xMm: -12, yMm: 0, zMm: 8 };
	const groove = { ...place, kind: 'groove' as const, widthMm: 2.13, depthMm: 6.02 };
	expect(placeSpot(groove, 'SI')).toBe('12 mm left of the middle, 8 mm up');
	expect(placeSpot({ xMm: 0, yMm: 0, zMm: 0 }, 'SI')).toBe('in the middle, at the board');
	const foot = { ...groove, kind: 'foot' as const, widthMm: 0.2, depthMm: 9 };
	expect(recessesOf([groove, foot])).toEqual({ narrowestRecessMm: 2.1, deepestRecessMm: 6 });
	expect(recessesOf([foot])).toEqual({});
});

test('a section is drawn to scale, the shell first and the pattern last', () => {
	const frame = pictureFrame({ spanMm: 100, heightMm: 50, aroundMm: 10 });
	const square = [
		{ xMm: -50, yMm: 0 },
		{ xMm: 50, yMm: 0 },
		{ xMm: 50, yMm: 50 },
		{ xMm: -50, yMm: 50 }
	];
	const offsets = [3, 10].map((distanceMm) => ({ distanceMm, outlines: [square] }));
	const bands = sectionBandsToDraw({ pattern: [square], offsets }, 1, frame);
	expect(bands.map(({ label }) => label)).toEqual(['Shell', 'Coat 1', 'Pattern']);
	const xs = [...(bands.at(-1)?.path ?? '').matchAll(/[ML](\S+) /g)].map(([, x]) => Number(x));
	expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(100 * frame.pxPerMm, 0);
	expect(frame.pxPerMm * 120).toBeLessThanOrEqual(frame.width);
});

test('the deeper the air the darker its color', () => {
	const light = (fill: string) =>
		(fill.match(/\d+/g) ?? []).reduce((sum, part) => sum + Number(part), 0);
	const fills = [0.1, 1, 2, 4].map((depth) => light(depthFill(depth, 4)));
	expect(fills).toEqual([...fills].sort((a, b) => b - a));
	expect(new Set(fills).size).toBe(4);
});

test('a pattern of a mesh goes through its form unchanged; a broken one is refused at one place', () => {
	const body = meshBodyOf(
		placedMesh(box(200, 120, 60), { unitMm: 1, down: [0, 0, -1], turnDeg: 0, scale: 1 })
	);
	const pattern = { ...testInputs().pattern, body };
	const draft = draftOfPattern(pattern, 'US');
	expect(readPattern(draft, 'US').pattern?.body).toEqual(body);
	const broken = (mesh: string) =>
		readPattern({ ...draft, body: { ...draft.body, mesh } }, 'US').errors;
	expect(Object.keys(broken('{'))).toEqual(['body.mesh']);
	expect(broken('')['body.mesh']).toMatch(/^Nothing is measured yet/);
	expect(broken(JSON.stringify({ ...body, volumeMl: 1e6 }))['body.mesh']).toContain('volume');
});
