/** Numbers waiting in order of their key, the least first. */
export class MinHeap {
	readonly #items: number[] = [];
	readonly #keys: number[] = [];

	get size(): number {
		return this.#items.length;
	}

	push(item: number, key: number): void {
		const [items, keys] = [this.#items, this.#keys];
		let at = items.length;
		items.push(item);
		keys.push(key);
		while (at > 0) {
			const parent = (at - 1) >> 1;
			if (keys[parent]! <= key) break;
			items[at] = items[parent]!;
			keys[at] = keys[parent]!;
			at = parent;
		}
		items[at] = item;
		keys[at] = key;
	}

	/** Takes out the item with the least key; undefined when none waits. */
	pop(): number | undefined {
		const [items, keys] = [this.#items, this.#keys];
		const first = items[0];
		const last = items.pop();
		const key = keys.pop();
		if (last === undefined || key === undefined || items.length === 0) return first;
		let at = 0;
		for (;;) {
			let child = 2 * at + 1;
			if (child >= items.length) break;
			if (child + 1 < items.length && keys[child + 1]! < keys[child]!) child += 1;
			if (keys[child]! >= key) break;
			items[at] = items[child]!;
			keys[at] = keys[child]!;
			at = child;
		}
		items[at] = last;
		keys[at] = key;
		return first;
	}
}
