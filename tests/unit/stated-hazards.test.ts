import { expect, test } from 'vitest';
import { statedHazards } from '../../src/lib/core/materials/stated-hazards';

// GHS, UN rev. 9, annex 3: H314 burns skin and eyes, H317 makes an allergy of the skin, H334 one of the airways.
test.each([
	['H314', 'epoxy', ['amine']],
	['H317', 'epoxy', ['sensitizer']],
	['H334', 'urethane', ['isocyanate']],
	['H334', 'tin silicone', ['sensitizer']],
	['H226', 'polyester', ['solvent']],
	['H242', 'polyester', ['peroxide']],
	['H315', 'epoxy', []]
] as const)('%s of a %s means %j', (statement, family, hazards) => {
	expect(statedHazards({ family, hazardStatements: [statement] })).toEqual(hazards);
});
