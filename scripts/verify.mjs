#!/usr/bin/env node
// Verifies an exported record by itself: copy this one file anywhere, it needs Node and nothing else.
//   node verify.mjs record.json
// Canonical JSON: RFC 8785 (2020). SHA-256: FIPS 180-4 (2015).
import { createHash } from 'node:crypto';
import { readFileSync, realpathSync } from 'node:fs';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

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

function main() {
	const file = process.argv[2];
	if (!file) {
		console.error('Usage: node verify.mjs record.json');
		return 1;
	}
	let text;
	try {
		text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(readFileSync(file));
	} catch (error) {
		console.error(`NOT VERIFIED: ${file} cannot be read: ${error.message}.`);
		return 1;
	}
	const fault = faultOf(text);
	if (fault) {
		console.error(`NOT VERIFIED: ${fault}.`);
		return 1;
	}
	const { plan, events, headHash, exportedAt } = JSON.parse(text);
	console.log(`VERIFIED: ${plan.title}, ${events.length} events, exported ${exportedAt}.`);
	console.log(`Head: ${headHash}`);
	console.log(
		'Compare the head with a printed or mailed copy: a log rewritten whole shows only there.'
	);
	return 0;
}

const started = process.argv[1] ? realpathSync(process.argv[1]) : '';
if (started === fileURLToPath(import.meta.url)) process.exitCode = main();
