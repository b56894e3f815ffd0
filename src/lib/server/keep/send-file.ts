import { createReadStream, statSync } from 'node:fs';
import { Readable } from 'node:stream';

/** A file as a download. `ended` is called when it is sent, or whoever asked has gone. */
export function fileResponse(path: string, name: string, ended = () => {}): Response {
	const file = createReadStream(path);
	file.once('close', ended);
	return new Response(Readable.toWeb(file) as ReadableStream<Uint8Array>, {
		headers: {
			'content-type': name.endsWith('.zip') ? 'application/zip' : 'application/octet-stream',
			'content-length': String(statSync(path).size),
			'content-disposition': `attachment; filename="${name}"`
		}
	});
}
