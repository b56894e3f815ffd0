import { eventSchema } from '$lib/core/process/events';

const TYPES = new Set<string>(
	eventSchema.options.filter(({ shape }) => 'photos' in shape).map(({ shape }) => shape.type.value)
);

/** Whether photos may go with an act of this type. */
export function takesPhotos(type: string): boolean {
	return TYPES.has(type);
}
