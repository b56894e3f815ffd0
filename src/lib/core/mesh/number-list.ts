/** A list of numbers that grows in a typed array, so that millions cost no objects. */
class NumberList<T extends Float64Array | Uint32Array> {
	#values: T;
	#length = 0;
	readonly #make: (length: number) => T;

	constructor(make: (length: number) => T, capacity = 3072) {
		this.#make = make;
		this.#values = make(capacity);
	}

	get length(): number {
		return this.#length;
	}

	push3(a: number, b: number, c: number): void {
		if (this.#length + 3 > this.#values.length) {
			const grown = this.#make(this.#values.length * 2);
			grown.set(this.#values);
			this.#values = grown;
		}
		this.#values[this.#length] = a;
		this.#values[this.#length + 1] = b;
		this.#values[this.#length + 2] = c;
		this.#length += 3;
	}

	/** A copy of exactly the numbers pushed. */
	toArray(): T {
		return this.#values.slice(0, this.#length) as T;
	}
}

export const floats = (capacity?: number) =>
	new NumberList<Float64Array>((length) => new Float64Array(length), capacity);
export const indexes = (capacity?: number) =>
	new NumberList<Uint32Array>((length) => new Uint32Array(length), capacity);
