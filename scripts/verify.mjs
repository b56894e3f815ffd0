#!/usr/bin/env node
// Verifies what was exported by itself: copy this one file anywhere, it needs Node and nothing else.
//   node verify.mjs record.json [heads.json]   one mold's record, against a list of heads kept elsewhere
//   node verify.mjs shop.zip [heads.json]      a whole shop
//   node verify.mjs heads.json                 the list itself
// Canonical JSON: RFC 8785 (2020). SHA-256: FIPS 180-4 (2015). Zip: PKWARE APPNOTE 6.3, section 4.3.
import { createHash } from 'node:crypto';
import { readFileSync, realpathSync } from 'node:fs';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { inflateRawSync } from 'node:zlib';

const GENESIS = '0'.repeat(64);

function sha256(text) {
	return createHash('sha256').update(text, 'utf8').digest('hex');
}

/** The one text a JSON value has under RFC 8785. */
function canonical(value) {
	if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
	if (value === null || typeof value !== 'object') return JSON.stringify(value);
	const members = Object.keys(value)
		.sort()
		.map((key) => `${JSON.stringify(key)}:${canonical(value[key])}`);
	return `{${members.join(',')}}`;
}

/** The hash that a value's member should have: over all its other members. */
function sealOf(value, member) {
	const rest = { ...value };
	delete rest[member];
	return sha256(canonical(rest));
}

/** What is wrong with a record, or null when nothing is. */
export function faultOf(text) {
	let record;
	try {
		record = JSON.parse(text);
	} catch {
		return 'it is not JSON';
	}
	if (record === null || typeof record !== 'object') return 'it is not a record';
	if (record.format !== 'glovewright.record.1') return 'its format is not glovewright.record.1';
	if (canonical(record) !== text) {
		return 'its text is not as it was exported (altered, or saved again by another program)';
	}
	const { plan, planHash, events, headHash, recordHash } = record;
	if (!Array.isArray(events) || events.length === 0) return 'it has no events';
	if (sha256(canonical(plan)) !== planHash) return 'the plan does not match its hash';
	return (
		chainFaultOf(events) ??
		openingFaultOf(events[0], planHash) ??
		(events.at(-1).hash === headHash ? null : 'the head is not the last event') ??
		(sealOf(record, 'recordHash') === recordHash ? null : 'the record does not match its hash')
	);
}

function chainFaultOf(events) {
	let head = GENESIS;
	const ids = new Set();
	for (const [index, stored] of events.entries()) {
		const seq = index + 1;
		if (stored?.seq !== seq) return `event ${seq} is missing or out of order`;
		if (stored.jobId !== events[0].jobId) return `event ${seq} belongs to another job`;
		if (ids.has(stored.id)) return `event ${seq} repeats an id`;
		if (stored.prevHash !== head) return `event ${seq} does not follow the event before it`;
		if (sealOf(stored, 'hash') !== stored.hash) return `event ${seq} was altered`;
		ids.add(stored.id);
		head = stored.hash;
	}
	return null;
}

function openingFaultOf(first, planHash) {
	const { event, jobId } = first;
	const isOpening = event?.type === 'job.opened' && event.jobId === jobId;
	return isOpening && event.planHash === planHash ? null : 'the log was opened with another plan';
}

/** What is wrong with a list of heads, or null when nothing is. */
export function headListFaultOf(text) {
	let list;
	try {
		list = JSON.parse(text);
	} catch {
		return 'the list of heads is not JSON';
	}
	if (list?.format !== 'glovewright.heads.1') return 'it is not a list of heads';
	if (canonical(list) !== text.trimEnd()) return 'the list of heads is not as it was exported';
	if (!Array.isArray(list.heads)) return 'the list has no heads';
	return sealOf(list, 'listHash') === list.listHash ? null : 'the list does not match its hash';
}

/** Why a log is not the one that the list was made of, or null. It may have grown since. */
function rewrittenFaultOf(events, list) {
	const jobId = events[0].jobId;
	const head = list.heads.find((known) => known.jobId === jobId);
	if (!head) return null;
	const hash = events[head.seq - 1]?.hash;
	if (hash === head.headHash) return null;
	return hash === undefined
		? `mold ${jobId} was cut: on ${list.at} it had ${head.seq} events`
		: `mold ${jobId} was rewritten since ${list.at}: event ${head.seq} had another hash`;
}

/** Files of a zip by name; each is unpacked when it is asked for. @throws Error when it is damaged */
function zipFiles(zip) {
	let end = zip.length - 22;
	while (end >= 0 && zip.readUInt32LE(end) !== 0x06054b50) end -= 1;
	if (end < 0) throw new Error('it is no zip file, or a part of one');
	const files = new Map();
	let at = zip.readUInt32LE(end + 16);
	for (let n = zip.readUInt16LE(end + 10); n > 0; n -= 1) {
		if (zip.readUInt32LE(at) !== 0x02014b50) throw new Error('its directory is damaged');
		const nameBytes = zip.readUInt16LE(at + 28);
		const entry = {
			method: zip.readUInt16LE(at + 10),
			packedBytes: zip.readUInt32LE(at + 20),
			bytes: zip.readUInt32LE(at + 24),
			offset: zip.readUInt32LE(at + 42)
		};
		files.set(zip.toString('utf8', at + 46, at + 46 + nameBytes), () => unpacked(zip, entry));
		at += 46 + nameBytes + zip.readUInt16LE(at + 30) + zip.readUInt16LE(at + 32);
	}
	return files;
}

function unpacked(zip, { method, packedBytes, bytes, offset }) {
	const start = offset + 30 + zip.readUInt16LE(offset + 26) + zip.readUInt16LE(offset + 28);
	const packed = zip.subarray(start, start + packedBytes);
	return method === 0 ? packed : inflateRawSync(packed, { maxOutputLength: Math.max(1, bytes) });
}

/** What is wrong with a whole shop in a zip, or null; `list` is a list of heads kept elsewhere. */
export function shopFaultOf(zip, list = null) {
	try {
		const files = zipFiles(zip);
		const read = (name) => files.get(name)?.() ?? null;
		const manifest = JSON.parse(String(read('manifest.json')));
		if (manifest?.format !== 'glovewright.shop.1') return 'its format is not glovewright.shop.1';
		if (sealOf(manifest, 'manifestHash') !== manifest.manifestHash)
			return 'its manifest was altered';
		for (const name of files.keys()) {
			if (name !== 'manifest.json' && !manifest.files[name])
				return `${name} is not in the manifest`;
		}
		for (const [name, { sha256: hash }] of Object.entries(manifest.files)) {
			const bytes = read(name);
			if (!bytes) return `${name} is missing`;
			if (createHash('sha256').update(bytes).digest('hex') !== hash) return `${name} was altered`;
		}
		return recordsFaultOf(files, manifest, list);
	} catch (error) {
		return `it cannot be read: ${error.message}`;
	}
}

function recordsFaultOf(files, manifest, list) {
	const own = JSON.parse(String(files.get('heads.json')()));
	const ownFault = headListFaultOf(String(files.get('heads.json')()));
	if (ownFault) return ownFault;
	const found = new Set();
	for (const name of Object.keys(manifest.files).filter((file) => file.startsWith('records/'))) {
		const text = String(files.get(name)());
		const fault = faultOf(text);
		if (fault) return `${name}: ${fault}`;
		const { events } = JSON.parse(text);
		found.add(events[0].jobId);
		const rewritten = rewrittenFaultOf(events, own) ?? (list && rewrittenFaultOf(events, list));
		if (rewritten) return rewritten;
	}
	const missing = [...own.heads, ...(list?.heads ?? [])].find(({ jobId }) => !found.has(jobId));
	return missing ? `mold ${missing.jobId} is missing` : null;
}

/** What to say of a file, beginning with VERIFIED, or what is wrong with it. */
function verdictOf(bytes, list) {
	if (bytes.subarray(0, 4).toString('latin1') === 'PK\x03\x04') {
		const fault = shopFaultOf(bytes, list);
		if (fault) return { fault };
		const { shop, exportedAt, jobs, damaged } = JSON.parse(
			String(zipFiles(bytes).get('manifest.json')())
		);
		const left = damaged.length > 0 ? ` ${damaged.length} damaged molds are NOT in it.` : '';
		return { said: `${shop}, ${jobs.length} molds, exported ${exportedAt}.${left}` };
	}
	const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
	if (text.includes('"glovewright.heads.1"')) {
		const fault = headListFaultOf(text);
		if (fault) return { fault };
		const { shop, at, heads, listHash } = JSON.parse(text);
		return {
			said: `${shop}, heads of ${heads.length} molds, of ${at}.\nHash of the list: ${listHash}`
		};
	}
	const fault = faultOf(text);
	if (fault) return { fault };
	const { plan, events, headHash, exportedAt } = JSON.parse(text);
	const rewritten = list && rewrittenFaultOf(events, list);
	if (rewritten) return { fault: rewritten };
	return {
		// The mold's own name: several are built to a plan of one name.
		said: `${events[0].event?.title ?? plan.title}, ${events.length} events, exported ${exportedAt}.\nHead: ${headHash}`
	};
}

function main() {
	const [file, listFile] = process.argv.slice(2);
	if (!file) {
		console.error('Usage: node verify.mjs record.json|shop.zip|heads.json [heads.json]');
		return 1;
	}
	let verdict;
	try {
		const listText = listFile ? readFileSync(listFile, 'utf8') : null;
		const listFault = listText === null ? null : headListFaultOf(listText);
		verdict = listFault
			? { fault: listFault }
			: verdictOf(readFileSync(file), listText === null ? null : JSON.parse(listText));
	} catch (error) {
		verdict = { fault: `${file} cannot be read: ${error.message}` };
	}
	if (verdict.fault) {
		console.error(`NOT VERIFIED: ${verdict.fault.replace(/\.$/, '')}.`);
		return 1;
	}
	console.log(`VERIFIED: ${verdict.said}`);
	console.log(
		listFile
			? 'Nothing that the list knows was rewritten or left out.'
			: 'Compare the head with a printed or mailed copy: a log rewritten whole shows only there.'
	);
	return 0;
}

const started = process.argv[1] ? realpathSync(process.argv[1]) : '';
if (started === fileURLToPath(import.meta.url)) process.exitCode = main();
