import type { Refusal } from '../core/mesh/refusal';
import type { MeshAsk, MeshSaid } from './mesh-messages';
import { MeshWork } from './mesh-work';

const say = (said: MeshSaid, moved: Transferable[] = []): void =>
	postMessage(said, { transfer: moved });
/** Long enough for the page to ask for a section before the next long step. */
const PAUSE_MS = 120;
/** As many as the store takes in its 75 parts of 4 MB. */
const MOST_BYTES = 300_000_000;
const work = new MeshWork(say, () => new Promise((resolve) => setTimeout(resolve, PAUSE_MS)));

addEventListener('message', ({ data }: MessageEvent<MeshAsk>) => {
	answer(data).catch((error: unknown) =>
		say({ kind: 'failed', message: error instanceof Error ? error.message : String(error) })
	);
});

async function answer(ask: MeshAsk): Promise<void> {
	if (ask.kind === 'open') {
		if (ask.file.size > MOST_BYTES) say({ kind: 'refused', refusal: tooLarge(ask.file.size) });
		else await work.open(await bytesOf(ask.file), ask.name);
	} else if (ask.kind === 'demo') await work.openDemo(ask.demo);
	else if (ask.kind === 'place') await work.place(ask.placement, ask.brush);
	else if (ask.kind === 'judge') await work.judge(ask.coats);
	else if (ask.kind === 'section') work.section(ask.cut, ask.outersMm);
	else {
		const model = work.model(ask.layer);
		const moved = model
			? [model.positions, model.triangles, model.values].flatMap((array) =>
					array ? [array.buffer] : []
				)
			: [];
		say({ kind: 'model', model }, moved);
	}
}

function tooLarge(bytes: number): Refusal {
	return {
		ok: false,
		what: `The file has ${Math.ceil(bytes / 1e6).toLocaleString('en-US')} MB`,
		where: 'whole file',
		accepted: `up to ${MOST_BYTES / 1e6} MB, as many as the shop’s store keeps: some six million triangles`
	};
}

/** The bytes of a file, with a word at each twentieth of it. */
async function bytesOf(file: Blob): Promise<Uint8Array> {
	const bytes = new Uint8Array(file.size);
	const reader = file.stream().getReader();
	let [at, told] = [0, -1];
	for (;;) {
		const { done, value } = await reader.read();
		if (done) return bytes;
		bytes.set(value, at);
		at += value.length;
		const part = Math.floor((20 * at) / file.size);
		if (part > told) say({ kind: 'progress', stage: 'Reading the file', fraction: at / file.size });
		told = part;
	}
}
