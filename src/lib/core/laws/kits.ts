import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G } from '../quantity/limits';

export const kitsLaw: Law = {
	id: 'kits',
	name: 'Cheapest kits that suffice',
	formula: 'min Σ n_k·p_k with Σ n_k·m_k ≥ need; then the least left over',
	source: 'integer covering problem, exact by dynamic programming (Bellman 1957, principle)',
	validity: 'up to 8 kit sizes of 1 g to 1,000 kg, counted in whole grams, rounded down'
};

export interface Kit {
	massG: number;
	price: number;
}

export interface KitChoice {
	/** How many of each kit, in the order given. */
	counts: number[];
	massG: number;
	price: number;
	leftoverG: number;
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

function assertKits(needG: number, kits: readonly Kit[]): void {
	assertWithin(needG, 0, MAX_MASS_G, 'needG');
	assertWithin(kits.length, 1, 8, 'number of kit sizes');
	for (const { massG, price } of kits) {
		assertWithin(massG, 1, MAX_MASS_G, 'kit massG');
		assertWithin(price, 0, 1e9, 'kit price');
	}
}

/**
 * The last kit of the cheapest choice for every need, in steps of the kits' common divisor.
 * Cheaper wins; at the same price the lighter choice, because it leaves less.
 */
function lastKits(steps: number, sizes: readonly number[], prices: readonly number[]): Int8Array {
	const price = new Float64Array(steps + 1);
	const size = new Float64Array(steps + 1);
	const last = new Int8Array(steps + 1);
	for (let need = 1; need <= steps; need += 1) {
		price[need] = Number.POSITIVE_INFINITY;
		sizes.forEach((kitSize, kit) => {
			const before = Math.max(0, need - kitSize);
			const newPrice = (price[before] ?? 0) + (prices[kit] ?? 0);
			const newSize = (size[before] ?? 0) + kitSize;
			const gap = newPrice - (price[need] ?? 0);
			if (gap < -1e-9 || (gap < 1e-9 && newSize < (size[need] ?? 0))) {
				price[need] = newPrice;
				size[need] = newSize;
				last[need] = kit;
			}
		});
	}
	return last;
}

/**
 * The cheapest choice of kits that holds at least `needG`; of equally cheap ones, that which leaves
 * the least.
 *
 * @throws RangeError for a need, kit mass or price out of range
 */
export function kitsToBuy({ needG, kits }: { needG: number; kits: readonly Kit[] }): KitChoice {
	assertKits(needG, kits);
	const wholeG = kits.map(({ massG }) => Math.floor(massG));
	const stepG = wholeG.reduce(divisor);
	const sizes = wholeG.map((massG) => massG / stepG);
	const steps = Math.ceil(needG / stepG - 1e-9);
	const last = lastKits(
		steps,
		sizes,
		kits.map(({ price }) => price)
	);

	const counts = kits.map(() => 0);
	for (let need = steps; need > 0;) {
		const kit = last[need] ?? 0;
		counts[kit] = (counts[kit] ?? 0) + 1;
		need -= sizes[kit] ?? need;
	}
	const total = (of: 'massG' | 'price') =>
		kits.reduce((sum, kit, i) => sum + (counts[i] ?? 0) * kit[of], 0);
	const massG = total('massG');
	return { counts, massG, price: total('price'), leftoverG: Math.max(0, massG - needG) };
}
