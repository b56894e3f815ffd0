import { EventEmitter } from 'node:events';

/** An act was appended to a job. */
export interface Appended {
	jobId: string;
	seq: number;
}

const emitter = new EventEmitter<{ appended: [Appended]; gap: []; closing: [] }>();
// One listener a screen; a shop has many.
emitter.setMaxListeners(0);

/** Tells every open screen that a job's log has grown. */
export function publishAppended(appended: Appended): void {
	emitter.emit('appended', appended);
}

/** Calls `listener` at every append until the returned function is called. */
export function onAppended(listener: (appended: Appended) => void): () => void {
	emitter.on('appended', listener);
	return () => emitter.off('appended', listener);
}

/** Tells every open screen that some appends may not have been heard of, so that it looks afresh. */
export function publishGap(): void {
	emitter.emit('gap');
}

/** Calls `listener` whenever appends may have been missed. */
export function onGap(listener: () => void): () => void {
	emitter.on('gap', listener);
	return () => emitter.off('gap', listener);
}

/** Ends every open stream, so that a server that stops need not wait for them. */
export function closeLive(): void {
	emitter.emit('closing');
}

/** Calls `listener` when the server is about to stop. */
export function onClosing(listener: () => void): () => void {
	emitter.on('closing', listener);
	return () => emitter.off('closing', listener);
}
