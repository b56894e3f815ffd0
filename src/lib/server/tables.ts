import type { Generated } from 'kysely';

/** Rows as they are stored. Instants are ISO text in UTC, booleans 0 or 1, so that any SQL store will do. */
export interface Database {
	schema_version: { version: number; name: string; applied_at: string };
	shop: { id: number; body: string; updated_at: string };
	person: {
		id: string;
		name: string;
		role: string;
		pin_hash: string;
		retired: number;
		added_at: string;
		/** Null once the PIN in force is their own. */
		pin_given_by: string | null;
		pin_set_at: string | null;
		/** The language they read; null until they choose. */
		locale?: string | null;
		/** For the owner's own pages; null until one is chosen. */
		password_hash?: string | null;
		password_set_at?: string | null;
	};
	session: {
		token_hash: string;
		person_id: string;
		started_at: string;
		seen_at: string;
		device_id?: string | null;
		/** When the owner's pages were last opened or used with the password. */
		unlocked_at?: string | null;
	};
	device: {
		id: string;
		token_hash: string;
		name: string;
		registered_at: string;
		registered_by: string;
		ended_at: string | null;
	};
	setting: { name: string; value: string };
	pin_attempt: {
		n: Generated<number>;
		person_id: string;
		address: string;
		at: string;
		outcome: 'right' | 'wrong' | 'too soon';
		/** Which of a person's secrets was tried. */
		secret: Generated<'pin' | 'password'>;
	};
	sheet: { id: string; body: string; retired: number };
	pattern: { id: string; body: string; updated_at: string };
	/** A frozen plan. Everything else about a job is in its events. */
	job: { id: string; plan: string; plan_hash: string; opened_at: string };
	event: {
		id: string;
		job_id: string;
		seq: number;
		event: string;
		recorded_at: string;
		prev_hash: string;
		hash: string;
	};
	/** Parts of mesh files, also of files that are still being sent. */
	mesh_part: { upload: string; part: number; bytes: Uint8Array; added_at: string };
	mesh_file: { hash: string; upload: string; format: string; size: number; added_at: string };
	/** One answer of a round of the refresher. */
	training_answer: {
		round: string;
		question: string;
		person_id: string;
		kind: string;
		is_right: number;
		answered_at: string;
		/** SHA-256 of the pool's file as it was asked from. */
		text_hash: string;
	};
	/** A round that was passed. */
	training_record: {
		round: string;
		person_id: string;
		kind: string;
		passed_at: string;
		expires_at: string;
		text_hash: string;
	};
	photo: { hash: string; type: string; bytes: Uint8Array; added_at: string };
}
