import { describe, expect, test } from 'vitest';
import type { MeshHandling } from '../../src/lib/core/geometry/mesh-handling';
import { handlingWords } from '../../src/lib/screen/mesh/handling-words';
import { layerVolumesOf } from '../../src/lib/screen/mesh/layer-volumes';
import { marksOf } from '../../src/lib/screen/mesh/marks';
import { healthOf } from '../../src/lib/core/mesh/health';
import { healthWords, mendingWords } from '../../src/lib/screen/mesh/health-words';
import { faceName, firstDraft, readPlacement } from '../../src/lib/screen/mesh/placement-draft';
import { places as spanish } from '../../src/lib/core/language/es/places';
import { placeText } from '../../src/lib/core/geometry/place-text';
import { NARROWEST_BRUSH } from '../../src/lib/core/geometry/brush';
import { brushDraft, readBrush } from '../../src/lib/screen/mesh/brush-draft';
import { unreachedPlaceText, unreachedText } from '../../src/lib/screen/mesh/unreached-words';
import { placeSpot, recessesOf } from '../../src/lib/screen/mesh/place-spot';
import {
	marksOnCut,
	outerDistancesMm,
	partingOnCut,
	pictureFrame,
	sectionBandsToDraw
} from '../../src/lib/screen/mesh/section-picture';
import { depthFill } from '../../src/lib/screen/mesh/depth-color';
import { draftOfPattern } from '../../src/lib/screen/pattern/draft-of-pattern';
import { readPattern } from '../../src/lib/screen/pattern/read-pattern';
import { placedMesh } from '../../src/lib/core/mesh/place';
import { testInputs } from '../fixtures/materials';
import { meshBodyOf } from '../fixtures/mesh-body';
import { box, mapped, together } from '../fixtures/mesh-solids';

const none = { joinedVertices: 0, droppedTriangles: 0, turnedTriangles: 0, hiddenFraction: 0 };

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
		'coats, sections with coats and bridged places'
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
	expect(errors.scalePct).toContain('1 to 10000%');
	expect(faceName([0, 0, -1])).toBe('the file’s underside');
	expect(faceName([0.6, 0, -0.8])).toBe('a slope near the file’s underside');
});

test('places say where they are, and the detail they stand for', () => {
	const place = { number: 1, lengthMm: 40, areaCm2: 1, airMl: 1, xMm: -12, yMm: 0, zMm: 8 };
	const groove = { ...place, kind: 'groove' as const, widthMm: 2.13, depthMm: 6.02 };
	expect(placeSpot(groove, 'SI')).toBe('12 mm left of the middle, 8 mm up');
	expect(placeSpot({ xMm: 0, yMm: 0, zMm: 0 }, 'SI')).toBe('in the middle, at the board');
	expect(placeSpot(groove, 'SI', spanish)).toBe(
		'12 mm a la izquierda del centro, a 8 mm de altura'
	);
	expect(placeText(groove, 'SI', spanish)).toMatch(/^ranura, .* de ancho, .* de profundidad$/);
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
	const layers = [
		{ kind: 'build' as const, label: 'Build coat 1', thicknessMm: 3 },
		{ kind: 'shell' as const, label: 'Shell', thicknessMm: 7 }
	];
	expect(outerDistancesMm(layers)).toEqual([3, 10]);
	const bands = sectionBandsToDraw({ pattern: [square], offsets }, layers, frame);
	expect(bands.map(({ label }) => label)).toEqual(['Shell', 'Build coat 1', 'Pattern']);
	const xs = [...(bands.at(-1)?.path ?? '').matchAll(/[ML](\S+) /g)].map(([, x]) => Number(x));
	expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(100 * frame.pxPerMm, 0);
	expect(frame.pxPerMm * 120).toBeLessThanOrEqual(frame.width);
});

test('signs stand on the section that passes them, and the parting plane crosses it as a line', () => {
	const frame = pictureFrame({ spanMm: 100, heightMm: 50, aroundMm: 0 });
	const marks = [
		{ sign: '1', what: 'place' as const, xMm: 10, yMm: 2, zMm: 20 },
		{ sign: 'P', what: 'peel' as const, xMm: 10, yMm: 30, zMm: 0 }
	];
	const [one, ...others] = marksOnCut(marks, { across: 'width', atMm: 0 }, 3, frame);
	expect(others).toEqual([]);
	expect(one).toMatchObject({ sign: '1', x: 360 + 10 * frame.pxPerMm });
	expect(one!.y).toBeCloseTo(frame.boardY - 20 * frame.pxPerMm, 9);
	// The plane x = 10 is upright on a cut along the length, and runs along with one across it.
	const plane = { normal: [1, 0, 0] as const, offsetMm: 10 };
	const line = partingOnCut(plane, { across: 'width', atMm: 5 }, frame)!;
	expect(line.x1).toBeCloseTo(360 + 10 * frame.pxPerMm, 9);
	expect(line.x2).toBeCloseTo(line.x1, 9);
	expect(partingOnCut(plane, { across: 'length', atMm: 5 }, frame)).toBeNull();
	const level = partingOnCut(
		{ normal: [0, 0, 1], offsetMm: 12 },
		{ across: 'width', atMm: 0 },
		frame
	)!;
	expect([level.y1, level.y2]).toEqual([level.y1, level.y1]);
	expect(level.y1).toBeCloseTo(frame.boardY - 12 * frame.pxPerMm, 9);
});

describe('how it comes off, in words', () => {
	const spot = { xMm: 20, yMm: 0, zMm: 0 };
	const handling: MeshHandling = {
		gloveMm: 6,
		center: { xMm: 0, yMm: 0, zMm: 18 },
		undercut: { depthMm: 7, areaCm2: 116, at: { ...spot, zMm: 12 } },
		stretch: { fraction: 0.18, zMm: 33 },
		peelAt: spot,
		opening: {
			isFree: false,
			direction: [0, 0, 1],
			lockedCm2: 40.5,
			lockedFraction: 0.19,
			parted: { pieces: 2, normal: [-1, 0, 0], offsetMm: -5, lockedCm2: 0 },
			freeingGloveMm: 12
		},
		keying: { slideMm: 0.5, turnDeg: null, isKeyed: false, keysAt: [spot] },
		puddles: [{ number: 2, ...spot, depthMm: 1.5, areaCm2: 3, volumeMl: 0.2 }],
		unlistedPuddles: 4,
		slopeAreasCm2: Array.from({ length: 36 }, () => 0)
	};
	const said = (given: Partial<MeshHandling>, fraction: number | null = 4) =>
		Object.fromEntries(
			handlingWords({
				handling: { ...handling, ...given },
				system: 'SI',
				elongation: { name: 'Test rubber', fraction }
			}).map(({ key, lines, isHard }) => [key, { text: lines.join(' '), isHard }])
		);

	test('a locking shell is parted where the plane lies, or the glove made thicker', () => {
		expect(said({}).shell).toEqual({
			text: 'Over a glove of 6 mm a shell in one piece locks: even straight up, its best direction, over 40.5 cm², 19% of what it lies on. Make it in two pieces: part it front to back, 5 mm right of the middle; then nothing locks. A glove of 12 mm is the least that frees it in one piece.',
			isHard: true
		});
		const third = { direction: [0, -1, 0] as [number, number, number], ...spot, areaCm2: 7 };
		const parted = { ...handling.opening.parted!, pieces: 3 as const, third };
		const inThree = { ...handling, opening: { ...handling.opening, parted } };
		expect(said(inThree).shell?.text).toContain(
			'in three pieces: part it front to back, 5 mm right of the middle, with a third piece around T over the 7 cm² that the halves leave locked: 20 mm right of the middle, at the board; it leaves sideways, to the front; then nothing locks.'
		);
		expect(marksOf([], inThree).map(({ sign }) => sign)).toContain('T');
		const free = { ...handling.opening, isFree: true, direction: [0.5, 0, 0.866] as const };
		expect(said({ opening: { ...free, direction: [...free.direction] } }).shell?.text).toContain(
			'leaves 30° to the right without locking'
		);
	});

	test('the stretch is held against the material', () => {
		expect(said({}).undercut?.text).toContain('Test rubber takes 133% again and again: enough.');
		expect(said({}, 0.3).undercut).toMatchObject({ isHard: true });
		expect(said({}, null).undercut?.text).toContain('nobody can compute');
		expect(said({ undercut: { depthMm: 0, areaCm2: 0, at: null } }).undercut?.isHard).toBe(false);
	});

	test('keys, peeling and puddles have their signs, and these are on the pattern', () => {
		const { keys, peel, puddles } = said({});
		expect(keys?.text).toContain('slides 0.5 mm and turns freely');
		expect(keys?.text).toContain('at K: 20 mm right of the middle');
		expect(peel?.text).toContain('At P: 20 mm right of the middle, at the board');
		expect(puddles?.text).toContain('b: up to 1.5 mm deep');
		expect(puddles?.text).toContain('4 smaller ones');
		expect(marksOf([], handling).map(({ sign }) => sign)).toEqual(['U', 'P', 'K', 'b', 'M']);
	});
});

test('the volumes of coats and shell add up to what lies out to the shell, with the stated error', () => {
	// A·t alone: 100 cm² by 10 mm are 100 mL.
	const offsets = [1, 5, 10].map((outerMm) => ({ outerMm, volumeMl: 10 * outerMm, errorMl: 0.05 }));
	const layers = [2, 3, 5].map((thicknessMm, i) => ({
		kind: 'build' as const,
		label: `${i}`,
		thicknessMm
	}));
	const rows = layerVolumesOf(layers, 100, offsets);
	expect(rows.map(({ volumeMl }) => Math.round(volumeMl))).toEqual([20, 30, 50]);
	expect(rows[2]?.errorFraction).toBeCloseTo(0.05 / 100, 12);
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

test('a mesh too fine to be searched to the end is not called faultless', () => {
	const repairs = { joinedVertices: 0, droppedTriangles: 0, turnedTriangles: 0, hiddenFraction: 0 };
	const { verdict, left } = healthWords(healthOf(box(2, 2, 2), 10), repairs);
	expect(verdict).toContain('as far as it was searched');
	expect(left).toEqual(['The search for crossing triangles stopped at its limit.']);
	const tooFine = healthWords(healthOf(box(2, 2, 2)), repairs, false);
	expect(tooFine.verdict).toContain('too fine for its coats');
	expect(tooFine.untrusted).toEqual(['coats, sections with coats and bridged places']);
});

test('what has to be mended where the mesh was drawn', () => {
	const solid = box(20, 20, 20);
	const twice = together(
		solid,
		mapped(solid, ([x, y, z]) => [x / 2 + 5, y / 2 + 5, z / 2 + 5])
	);
	expect(mendingWords(healthOf(twice))).toContain('Unite its parts');
	const open = { ...solid, triangles: solid.triangles.subarray(3) };
	expect(mendingWords(healthOf(open))).toContain('Close its holes');
});

test('parts joined into one body are told, and parts that nobody looked into are no reason to be sure', () => {
	const health = healthOf(box(2, 2, 2));
	const joined = healthWords(health, { ...none, hiddenFraction: 0.0653 });
	expect(joined.repaired).toEqual([
		'Parts that touch or overlap were joined into one body; 6.5% of their area lay between or within them and is left out.'
	]);
	const { verdict, left } = healthWords({ ...health, unlookedParts: 12 }, none);
	expect(verdict).toContain('as far as it was searched');
	expect(left[0]).toContain('12 small ones were not looked at');
});

test('the narrowest brush is typed in the shop’s unit, and says what is accepted', () => {
	expect(readBrush(brushDraft('SI'), 'SI')).toEqual({ brush: NARROWEST_BRUSH, errors: {} });
	expect(readBrush(brushDraft('US'), 'US').brush).toEqual(NARROWEST_BRUSH);
	const { brush, errors } = readBrush({ width: '0', reach: 'far' }, 'SI');
	expect(brush).toBeNull();
	expect(errors.width).toContain('accepted: 0.5 mm to 50 mm');
	expect(errors.reach).toContain('“far” is not accepted');
});

test('what no brush reaches is said with its area, its places and what to do', () => {
	const brush = NARROWEST_BRUSH;
	const place = { number: 1, xMm: 0, yMm: 0, zMm: 20, widthMm: 2, depthMm: 39.6, areaCm2: 1.9 };
	const text = unreachedText({ brush, areaCm2: 1.9, places: [place], unlistedPlaces: 0 }, 'SI');
	expect(text).toMatch(/^1\.9 cm² in 1 place is left out of the exposed area: a brush 3 mm wide/);
	expect(unreachedPlaceText(place, brush, 'SI')).toBe('hole or slot, 2 mm wide, 40 mm deep');
	expect(unreachedPlaceText({ ...place, widthMm: 12 }, brush, 'SI')).toContain('behind a neck');
	expect(unreachedText({ brush, areaCm2: 0, places: [], unlistedPlaces: 0 }, 'SI')).toContain(
		'reaches everything'
	);
});
