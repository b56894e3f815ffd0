/**
 * What is being typed in a form whose fields are filled from an address. An answer to an earlier choice may come
 * while a further field is typed in, and must not put the old value back into it.
 */
export class Typing {
	#typed = $state<Record<string, string>>({});
	/** Entered, and asked for with the address that the next answer belongs to. */
	#entered: string[] = [];

	/** What a field shows: what is typed in it, else what the address says. */
	shown(name: string, chosen: string): string {
		return this.#typed[name] ?? chosen;
	}

	readonly type = ({ target }: Event): void => {
		if (target instanceof HTMLInputElement) this.#typed[target.name] = target.value;
	};

	readonly enter = ({ target }: Event): void => {
		if (target instanceof HTMLInputElement) this.#entered.push(target.name);
	};

	/** The address now holds what was entered; after a link, what was typed besides is gone with the old page. */
	answered(isByThisForm: boolean): void {
		for (const name of isByThisForm ? this.#entered : Object.keys(this.#typed)) {
			delete this.#typed[name];
		}
		this.#entered = [];
	}
}
