/** A worker of its own for one mesh file, so that no page stands still while it is read. */
export function startMeshWorker(): Worker {
	return new Worker(new URL('./mesh-worker.ts', import.meta.url), { type: 'module' });
}
