import { describe, expect, test } from 'vitest';
import { containersOf, labelFacts } from '../../src/lib/core/bench/container-facts';
import { containers as english } from '../../src/lib/core/language/en/containers';
import { containers as spanish } from '../../src/lib/core/language/es/containers';
import { containerLabel } from '../../src/lib/core/materials/container-label';
import { labelElements } from '../../src/lib/core/materials/ghs-statements';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { demo } from '../../src/lib/server/demo-content';
import { testInputs } from '../fixtures/materials';

const codesOf = (statements: string) =>
	containerLabel(statements.split(' '))
		.pictograms.map(({ code }) => code.slice(3))
		.join(' ');
const signalOf = (statements: string) => containerLabel(statements.split(' ')).signal;

describe('labels of substances as they are published', () => {
	// Regulation (EC) No 1272/2008, annex VI, table 3, columns "Pictogram, signal word code". Methanol confirmed in a
	// stored copy of an institution's list of that annex; the others from memory.
	test.each([
		['methanol', 'H225 H301 H311 H331 H370', '02 06 08', 'danger'],
		['diphenylmethane diisocyanate', 'H315 H317 H319 H332 H334 H335 H351 H373', '07 08', 'danger'],
		['toluene diisocyanate', 'H315 H317 H319 H330 H334 H335 H351 H412', '06 08', 'danger'],
		['styrene', 'H226 H315 H319 H332 H361d H372', '02 07 08', 'danger'],
		['xylene', 'H226 H312 H315 H332', '02 07', 'warning'],
		['acetone', 'H225 H319 H336', '02 07', 'danger'],
		['ethanol', 'H225', '02', 'danger'],
		['dibenzoyl peroxide', 'H241 H317 H319', '01 02 07', 'danger'],
		['hydrogen peroxide', 'H271 H302 H314 H332', '03 05 07', 'danger'],
		['triethylenetetramine', 'H312 H314 H317 H412', '05 07', 'danger'],
		['zinc oxide', 'H400 H410', '09', 'warning']
	])('%s', (_, statements, pictograms, signal) => {
		expect(codesOf(statements)).toBe(pictograms);
		expect(signalOf(statements)).toBe(signal);
	});
});

// GHS, UN rev. 9, 1.4.10.5.3.1, in the words of Regulation (EC) No 1272/2008, article 26(1)(b) to (d).
describe('which sign yields to which', () => {
	test.each([
		['a skull removes the exclamation mark', 'H301 H315 H336', '06'],
		['corrosion removes it for irritated skin and eyes', 'H314 H315 H319', '05'],
		['corrosion leaves it for what is harmful', 'H302 H314', '05 07'],
		['corrosion leaves it for an allergy of the skin', 'H314 H317', '05 07'],
		['an allergy of the airways removes it for one of the skin', 'H317 H334', '08'],
		['an allergy of the airways removes it for irritation', 'H315 H319 H334', '08'],
		['an allergy of the airways leaves it for irritated airways', 'H334 H335', '07 08'],
		['another health hazard leaves it for an allergy of the skin', 'H317 H351', '07 08']
	])('%s', (_, statements, pictograms) => {
		expect(codesOf(statements)).toBe(pictograms);
	});

	test('what yielded is not named as a reason beside the sign that stays', () => {
		const { pictograms } = containerLabel(['H315', 'H317', 'H332', 'H334']);
		expect(pictograms.find(({ code }) => code === 'GHS07')?.statements).toEqual(['H332']);
	});
});

// GHS, UN rev. 9, 1.4.10.5.3.2: "danger" applies, then "warning" does not.
test('danger removes warning, whichever comes first', () => {
	expect(signalOf('H315 H314')).toBe('danger');
	expect(signalOf('H314 H315')).toBe('danger');
	expect(signalOf('H315 H317')).toBe('warning');
	expect(signalOf('H412 EUH208')).toBeNull();
});

// Delegated Regulation (EU) 2023/707; signal words from memory.
test('the newer classes have a signal word and no pictogram', () => {
	expect(signalOf('EUH381')).toBe('warning');
	expect(signalOf('EUH208 EUH380')).toBe('danger');
	expect(codesOf('EUH380 EUH450')).toBe('');
	expect(containerLabel(['EUH208', 'EUH999']).unknown).toEqual(['EUH999']);
});

test('a letter behind a code changes nothing about what yields to what', () => {
	expect(codesOf('H317A H334B')).toBe(codesOf('H317 H334'));
});

// GHS, UN rev. 9, annex 3: H242 is type C and D (danger), or E and F (warning).
test('where a statement leaves the word open, the graver one is taken, and said to be', () => {
	expect(containerLabel(['H242'])).toMatchObject({ signal: 'danger', isGravest: true });
	expect(containerLabel(['H242', 'H314'])).toMatchObject({ signal: 'danger', isGravest: false });
	expect(labelFacts({ hazardStatements: ['H242'] }).notes).toEqual([english.gravest]);
});

test('a code of no list is said, and so is a sheet that states nothing', () => {
	expect(labelFacts({ hazardStatements: ['H317', 'H999'] }).notes).toEqual([
		english.unknown('H999')
	]);
	expect(labelFacts({ hazardStatements: [] })).toMatchObject({
		signal: null,
		notes: [english.none]
	});
});

test('every statement of the shop’s sheets is in the list', () => {
	const stated = demo.sheets.flatMap(({ hazardStatements }) => hazardStatements);
	expect(stated.length).toBeGreaterThan(20);
	expect(stated.filter((statement) => labelElements(statement) === null)).toEqual([]);
});

// Regulation (EC) No 1272/2008, annex I, part 1, tables 1.5 in Spanish: "Peligro", "Atención".
test('signal words are those of the law in both languages', () => {
	expect(labelFacts({ hazardStatements: ['H314'] }, spanish).signalWord).toBe('Peligro');
	expect(labelFacts({ hazardStatements: ['H315'] }, spanish).signalWord).toBe('Atención');
	expect(labelFacts({ hazardStatements: ['H315'] }).signalWord).toBe('Warning');
});

test('a mold’s containers are named once each, with their uses and the steps at which they stand open', () => {
	const found = containersOf(makePlan(testInputs()));
	const ids = found.map(({ id }) => id);
	expect(new Set(ids).size).toBe(ids.length);
	const build = found.find(({ uses }) => uses.includes('build coats'));
	expect(build?.steps).toContain('build-coat');
	expect(build?.steps).not.toContain('wax');
});
