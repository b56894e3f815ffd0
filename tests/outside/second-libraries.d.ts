/** The part of `js-quantities` that is used as a second opinion. */
declare module 'js-quantities' {
	interface Quantity {
		to(unit: string): Quantity;
		scalar: number;
	}
	export default function quantity(text: string): Quantity;
}
