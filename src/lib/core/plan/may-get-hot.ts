import type { Sheet } from '../materials/sheet';
import { curingMaterial } from './curing-material';
import { hotMaterialIds } from './hazard-warnings';
import type { Plan } from './plan';

/** Whether a cup of the plan gets too hot to be left alone, or nobody can compute that it does not. */
export function mayGetHot({ cure }: Pick<Plan, 'cure'>, used: readonly Sheet[]): boolean {
	const known = new Set(cure?.materials.map(({ materialId }) => materialId));
	const isUnknown = used.some(
		(sheet) => sheet.kind !== 'casting' && curingMaterial(sheet) !== null && !known.has(sheet.id)
	);
	return isUnknown || hotMaterialIds({ cure }).length > 0;
}
