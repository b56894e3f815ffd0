/** What stands in the README of an export. */
export function exportReadme(shop: string, at: string, withPins: boolean): string {
	return `# ${shop}: the whole shop

Exported ${at} by Glovewright, in open formats. Nothing here needs Glovewright to be read.

| file | what | format |
| --- | --- | --- |
| manifest.json | every other file with its size and SHA-256 | JSON |
| heads.json | the last hash of every mold's log | JSON (RFC 8785) |
| records/*.json | one file a mold: its plan and every entry, each sealed to the one before | JSON (RFC 8785) |
| tables/*.jsonl | shop, people, material sheets, patterns, a line each | JSON Lines |
| csv/*.csv | molds, entries, people, materials, patterns for a spreadsheet | CSV (RFC 4180) |
| photos/ | photos, each named by the SHA-256 of its bytes | JPEG, PNG, WebP |
| meshes/ | mesh files, each named by the SHA-256 of its bytes | STL, OBJ, PLY, 3MF |

${
	withPins
		? 'It holds the hashes of PINs and passwords (tables/person.jsonl). Whoever has the file can try PINs against them, so keep it like a key.'
		: 'It holds no PIN and no password. Whoever reads it into another Glovewright is given new ones there.'
}

Check it with the one file verify.mjs that comes with Glovewright and needs only Node:

    node verify.mjs this-file.zip
    node verify.mjs this-file.zip heads-kept-elsewhere.json

Read it into an empty Glovewright, over SQLite or PostgreSQL:

    npm run import -- this-file.zip

In the CSV files a text that a spreadsheet would take for a formula begins with an apostrophe; the other
files have every text as it is.
`;
}
