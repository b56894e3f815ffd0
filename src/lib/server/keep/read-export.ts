import { createHash } from 'node:crypto';
import { canonicalJson } from '$lib/core/log/canonical';
import { verifyChain } from '$lib/core/log/chain';
import { recordSchema, type JobRecord } from '../record-schema';
import { manifestHashOf, manifestSchema, recordName, type Manifest } from './manifest';
import { ZipReader } from './zip-reader';
import { nativeSha256 } from '../native-sha256';

/** A whole shop in a zip, checked file by file. */
export class ShopExport {
	readonly manifest: Manifest;
	readonly #zip: ZipReader;

	/** @throws Error with a sentence when it is no export, or a file is missing, altered or too many */
	constructor(path: string) {
		this.#zip = new ZipReader(path);
		try {
			const said: unknown = JSON.parse(this.#zip.read('manifest.json').toString('utf8'));
			const parsed = manifestSchema.safeParse(said);
			if (!parsed.success) throw new Error('its manifest is not one of glovewright.shop.1');
			this.manifest = parsed.data;
			if (manifestHashOf(parsed.data) !== parsed.data.manifestHash) {
				throw new Error('its manifest was altered');
			}
			this.#checkFiles();
		} catch (error) {
			this.#zip.close();
			throw error;
		}
	}

	read(name: string): Buffer {
		return this.#zip.read(name);
	}

	/** Lines of one table, parsed. */
	rows(table: string): Array<Record<string, unknown>> {
		const text = this.read(`tables/${table}.jsonl`).toString('utf8');
		return text
			.split('\n')
			.filter((line) => line !== '')
			.map((line) => JSON.parse(line) as Record<string, unknown>);
	}

	/** One mold's record. @throws Error when it is not whole */
	record(job: Manifest['jobs'][number]): JobRecord {
		const name = recordName(job.id);
		const parsed = recordSchema.safeParse(JSON.parse(this.read(name).toString('utf8')));
		if (!parsed.success) throw new Error(`${name} is not a record`);
		const record = parsed.data;
		const { events, plan, planHash } = record;
		const [first] = events;
		if (nativeSha256(canonicalJson(plan)) !== planHash)
			throw new Error(`${name}: the plan was altered`);
		const isOwn = first?.jobId === job.id && first.event.type === 'job.opened';
		if (!isOwn || first.event.type !== 'job.opened' || first.event.planHash !== planHash) {
			throw new Error(`${name}: it is not the record of ${job.id}`);
		}
		const chain = verifyChain(events, nativeSha256);
		if (!chain.ok) throw new Error(`${name}: ${chain.reason}`);
		if (chain.head !== job.headHash) throw new Error(`${name}: it does not end with its head`);
		return record;
	}

	close(): void {
		this.#zip.close();
	}

	#checkFiles(): void {
		const { files } = this.manifest;
		for (const name of this.#zip.names) {
			if (name !== 'manifest.json' && !files[name])
				throw new Error(`${name} is not in the manifest`);
		}
		for (const [name, { bytes, sha256 }] of Object.entries(files)) {
			const data = this.#zip.read(name);
			const found = createHash('sha256').update(data).digest('hex');
			if (data.length !== bytes || found !== sha256) throw new Error(`${name} was altered`);
		}
	}
}
