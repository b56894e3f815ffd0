/**
 * @throws RangeError when `value` is not a number in [min, max]; NaN is refused too. The sentence
 *   names the quantity, the value and the accepted range.
 */
export function assertWithin(value: number, min: number, max: number, name: string): void {
	if (!(value >= min && value <= max)) {
		throw new RangeError(`${name} is ${value}; accepted: ${min} to ${max}`);
	}
}
