/** Who let a plan through that only a supervisor may, and why. */
export interface Decided {
	name: string;
	reason: string;
}
