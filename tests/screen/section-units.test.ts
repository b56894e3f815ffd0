import { expect, test } from 'vitest';
import { drawSection } from '../../src/lib/screen/section/drawn-section';
import { sectionText } from '../../src/lib/screen/section/section-model';
import { scaleBar } from '../../src/lib/screen/section/section-units';

// 1 in = 25.4 mm and 1 ft = 12 in, exact: NIST SP 811 (2008), appendix B.
test.each([
	[7, 'SI', 5, '5 mm'],
	[130, 'SI', 100, '100 mm'],
	[0.2, 'SI', 1, '1 mm'],
	[7, 'US', 6.35, '1/4 in'],
	[60, 'US', 50.8, '2 in'],
	[290, 'US', 101.6, '4 in'],
	[700, 'US', 609.6, '2 ft'],
	[0.2, 'US', 1.5875, '1/16 in']
] as const)('a bar of at most %d mm in %s is %d mm: %s', (most, system, mm, text) => {
	const bar = scaleBar(most, system);
	expect(bar.mm).toBeCloseTo(mm, 9);
	expect(bar.text).toBe(text);
});

test('the drawing is told in the shop’s units', () => {
	const pattern = { widthMm: 254, heightMm: 127 };
	const model = { layers: [], pattern, gapMm: 10, flangeMm: 10 };
	expect(sectionText(model, 'SI')).toContain('254 mm by 127 mm');
	expect(sectionText(model, 'US')).toContain('10 in by 5 in');
	const spanish = drawSection(model, { system: 'US', locale: 'es-ES' });
	expect(spanish.caption).toBe('Sección, a escala');
	expect(spanish.text).toContain('sobre un modelo de 10 in por 5 in. Hecho: nada.');
});
