import { expect, test } from 'vitest';
import { DEMO_PATTERNS } from '../../src/lib/core/mesh/demo/demo-patterns';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import { placedMesh } from '../../src/lib/core/mesh/place';
import { heightBlock } from '../../src/lib/core/mesh/demo/height-block';
import { binaryStl } from '../../src/lib/core/mesh/write-stl';
import type { MeshSaid } from '../../src/lib/device/mesh-messages';
import { modelOf } from '../../src/lib/device/mesh-layers';
import { MeshWork } from '../../src/lib/device/mesh-work';
import { blocks, box, mapped, together } from '../fixtures/mesh-solids';

const coats = { reachMm: 3, otherReachesMm: [6, 1], gloveMm: 8, flangeMm: 40, holdsToDeg: 30 };
const flat = { unitMm: 1, down: [0, 0, -1] as [number, number, number], turnDeg: 0, scale: 1 };

function bench() {
	const said: MeshSaid[] = [];
	const work = new MeshWork(
		(word) => said.push(word),
		() => Promise.resolve()
	);
	const heard = <K extends MeshSaid['kind']>(kind: K) =>
		said.filter((word): word is Extract<MeshSaid, { kind: K }> => word.kind === kind);
	return { work, said, heard };
}

test('a file is opened, laid down, measured, cut and drawn; each finding is said once known', async () => {
	const { work, said, heard } = bench();
	// Two legs under a lintel: a hollow of 20 × 30 mm that a coat of 3 mm does not bridge, but its foot.
	const gate = blocks(
		[
			[0, 20, 40, 60],
			[0, 30],
			[0, 30, 50]
		],
		(i, _, k) => i !== 1 || k === 1
	);
	await work.open(binaryStl(gate), 'gate.stl');
	expect(heard('opened')[0]?.opened).toMatchObject({
		format: 'stl',
		unitMm: null,
		sides: [60, 30, 50]
	});
	expect(heard('opened')[0]?.opened.rests[0]).toMatchObject({ height: 30 });
	// Whatever side it lies on, its longer one can run from left to right.
	for (const { down, turnDeg } of heard('opened')[0]!.opened.rests) {
		const { max, min } = measuresOf(
			placedMesh(gate, { unitMm: 1, scale: 1, down, turnDeg })
		).bounds;
		expect(max[0] - min[0]).toBeGreaterThan(max[1] - min[1]);
	}
	expect(heard('health')[0]?.health.trust).toEqual({ area: true, volume: true, distance: true });
	await Promise.all([work.place(flat), work.judge(coats)]);
	expect(heard('measured')[0]?.measured.numbers.volumeMl).toBeCloseTo(72, 9);
	expect(heard('unreached')[0]?.unreached).toMatchObject({ areaCm2: 0, places: [] });
	expect(heard('offsets')[0]?.offsets).toHaveLength(8);
	expect(heard('places')[0]?.found.places.length).toBeGreaterThan(0);
	work.section({ across: 'length', atMm: 0 }, [3, 6]);
	expect(heard('section')[0]?.section).toMatchObject({ cut: { across: 'length', atMm: 0 } });
	expect(heard('section')[0]?.section.offsets.map(({ distanceMm }) => distanceMm)).toEqual([3, 6]);
	const model = work.model('air');
	expect(model?.values).toHaveLength((model?.positions.length ?? 0) / 3);
	expect(said.at(-2)?.kind).toBe('idle');
	expect(heard('bridgings')[0]?.bridgings.map(({ reachMm }) => reachMm)).toEqual([1, 3, 6]);
	// Under the lintel a shell in one piece locks; the legs come apart along the passage.
	const { handling, parting } = heard('handling')[0]!;
	expect(handling.opening).toMatchObject({ isFree: false, parted: { lockedCm2: 0 } });
	expect(parting.length).toBeGreaterThan(0);
	const locked = work.model('locked')!;
	expect(locked.values).toHaveLength(locked.positions.length / 3);
	expect(Math.max(...locked.values!)).toBe(1);
	// On a slope of 30° the coat stays: only the tops of the gate are flatter.
	const runs = work.model('runs')!;
	const isRunning = (k: number) => runs.values![k] === 1;
	const heights = Array.from(runs.values!.keys()).filter((k) => !isRunning(k));
	expect(heights.every((k) => [0, 50].includes(runs.positions[3 * k + 2]!))).toBe(true);
}, 60_000);

test('a very fine pattern is drawn as a copy that shows the same marks', () => {
	const mesh = heightBlock({
		lengthMm: 100,
		widthMm: 100,
		cells: [250, 250],
		heightMm: (x) => (x < 0 ? 30 : 30 + x)
	});
	const sources = { mesh, bridging: null, opening: null, health: null, holdsToDeg: 20 };
	const { positions, triangles, values } = modelOf('runs', sources);
	expect(triangles.length / 3).toBeLessThanOrEqual(150_000);
	expect(triangles.length / 3).toBeGreaterThan(30_000);
	// On the slope of 45° it runs, on the level half of the top it stays.
	for (const [k, value] of values!.entries()) {
		const [x, y, z] = positions.subarray(3 * k, 3 * k + 3);
		if (Math.abs(y!) > 48 || z! < 29) continue;
		if (x! > 2 && x! < 48) expect(value).toBe(1);
		if (x! < -2 && x! > -48) expect(value).toBe(0);
	}
});

test('a broken file is refused with what, where and what is accepted; nothing else is said', async () => {
	const { work, heard } = bench();
	await work.open(binaryStl(box(20, 10, 5)).subarray(0, 300), 'cut-short.stl');
	expect(heard('refused')[0]?.refusal).toMatchObject({
		what: expect.stringContaining('cut short'),
		where: 'header, bytes 81 to 84'
	});
	expect(heard('opened')).toEqual([]);
	await work.place(flat);
	expect(heard('measured')).toEqual([]);
});

test('of an open mesh only what can be trusted is computed', async () => {
	const { work, heard } = bench();
	const open = box(40, 30, 20);
	await work.open(
		binaryStl({ ...open, triangles: open.triangles.subarray(0, open.triangles.length - 3) }),
		'open.stl'
	);
	expect(heard('health')[0]?.health).toMatchObject({
		isWatertight: false,
		trust: { volume: false, distance: false }
	});
	await Promise.all([work.place(flat), work.judge(coats)]);
	expect(heard('measured')).toHaveLength(1);
	expect(heard('offsets')).toEqual([]);
	expect(heard('places')).toEqual([]);
	const faults = work.model('faults')!;
	expect(Array.from(faults.values!).reduce((sum, value) => sum + value, 0)).toBe(9);
	work.section({ across: 'width', atMm: 0 }, [3]);
	expect(heard('section')[0]?.section.offsets).toEqual([]);
});

test('laid down anew, the older round ends between its steps', async () => {
	const { work, heard } = bench();
	await work.open(binaryStl(box(40, 30, 20)), 'box.stl');
	await Promise.all([work.place(flat), work.place({ ...flat, scale: 2 })]);
	expect(heard('measured').map(({ measured }) => measured.numbers.lengthMm)).toEqual([80]);
	expect(heard('offsets')).toHaveLength(1);
});

test('an invented pattern comes as a file would, with the file to keep', async () => {
	const { work, heard } = bench();
	await work.openDemo(DEMO_PATTERNS[0]!.id);
	const [{ opened, file } = { opened: null, file: null }] = heard('opened');
	expect(file?.size).toBe(opened?.bytes);
	expect(heard('health')[0]?.health.faults).toEqual([]);
});

test('a stem on its base is one body: no face between them is coated, nothing is loose or hangs over', async () => {
	const { work, heard } = bench();
	const stem = mapped(box(20, 20, 30), ([x, y, z]) => [x + 40, y + 30, z + 30]);
	await work.open(binaryStl(together(box(100, 80, 30), stem)), 'stem-on-base.stl');
	expect(heard('health')[0]?.health).toMatchObject({ faults: [], trust: { distance: true } });
	expect(heard('opened')[0]?.opened.repairs.hiddenFraction).toBeCloseTo(800 / 30_000, 6);
	await Promise.all([work.place(flat), work.judge(coats)]);
	const { numbers } = heard('measured')[0]!.measured;
	expect(numbers.exposedAreaCm2).toBeCloseTo(212, 6);
	expect(numbers.volumeMl).toBeCloseTo(252, 6);
	const { offsets } = heard('offsets')[0]!;
	// Quarter rounds at upright edges and tops, eighths of a ball at corners, a coat that fills no inner corner.
	const roundsMm3 = (Math.PI / 4) * (360 + 80 + 4 * 30 + 4 * 30) + (4 * Math.PI) / 3;
	expect(offsets[0]!.volumeMl).toBeCloseTo((21_200 - 80 + roundsMm3) / 1000, 1);
	expect(heard('handling')[0]?.handling.opening.isFree).toBe(true);
});
