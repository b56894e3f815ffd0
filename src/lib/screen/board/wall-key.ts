type Pressed = Pick<KeyboardEvent, 'key' | 'altKey' | 'ctrlKey' | 'metaKey' | 'shiftKey'>;

const KEYS = new Map<string, 'next' | 'previous' | 'hold' | 'leave'>([
	['ArrowRight', 'next'],
	['ArrowLeft', 'previous'],
	[' ', 'hold'],
	['Escape', 'leave']
]);

/** What a key does on the wall; null for all others, and with any modifier, which is the browser's: Alt and left goes back. */
export function wallKey({ key, altKey, ctrlKey, metaKey, shiftKey }: Pressed) {
	return altKey || ctrlKey || metaKey || shiftKey ? null : (KEYS.get(key) ?? null);
}
