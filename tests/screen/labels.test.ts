import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import type { CupLabel } from '../../src/lib/core/process/cup-labels';
import CupSticker from '../../src/lib/screen/label/CupSticker.svelte';

const cup: CupLabel = {
	id: 'build-1 0',
	title: 'Build coat 1, cup 1 of 2',
	materialName: 'Test silicone',
	parts: [{ part: 'A', massG: 100 }],
	hazards: [],
	hazardStatements: [],
	workingS: 1200,
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
