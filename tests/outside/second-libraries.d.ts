/** The part of `js-quantities` that is used as a second opinion. */
declare module 'js-quantities' {
	interface Quantity {
		to(unit: string): Quantity;
		sub(other: Quantity): Quantity;
		mul(other: Quantity): Quantity;
		div(other: Quantity): Quantity;
		scalar: number;
	}
	export default function quantity(text: string): Quantity;
}
