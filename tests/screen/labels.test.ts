import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import type { CupLabel } from '../../src/lib/core/process/cup-labels';
import CupSticker from '../../src/lib/screen/label/CupSticker.svelte';

const cup: CupLabel = {
	id: 'build-1 0',
	title: 'Build coat 1, cup 1 of 2',
	materialName: 'Test silicone',
	parts: [{ part: 'A', massG: 100 }],
	additions: [],
	hazards: [],
	hazardStatements: [],
	usableS: 1200,
	isFromMeeting: true,
	mixedAt: null,
	useByAt: null,
	isLaid: false
};

const words = (over: Partial<CupLabel>): string => {
	const props = { cup: { ...cup, ...over }, mold: 'A mold', address: 'http://x/', zone: 'UTC' };
	return render(CupSticker, { props })
		.body.replace(/<svg[\s\S]*?<\/svg>|<[^>]*>|<!--.*?-->/g, ' ')
		.replace(/\s+/g, ' ');
};

test('a cup whose sheet names no hazard says so, and sends to the SDS all the same', () => {
	expect(words({})).toMatch(/No hazard named on its data sheet: .* see the SDS/);
	expect(words({ hazards: ['Solvent'] })).toMatch(/Hurts: Solvent. See the SDS/);
});

test('a cup’s time runs from when its parts met: what is filled in by hand says so', () => {
	expect(words({})).toContain('Parts together at');
	expect(words({})).toContain('Use by, 20 min later');
	expect(words({ isFromMeeting: false })).toContain('Mixed at');
	const mixed = words({ mixedAt: '2026-03-02T14:00:00Z', useByAt: '2026-03-02T14:17:00Z' });
	expect(mixed).toContain('Mixed at');
	expect(mixed).not.toContain('later');
});
