import type { Sheet } from '../materials/sheet';
import { sdsReader } from '../materials/sds-reader';
import { assumedHazards, hazardWords, usualHazards } from '../materials/usual-hazards';
import { isHot, isHotCasting } from './heat-warnings';
import type { Plan } from './plan';
import { warn, type Draft } from './trace';

const article = (family: string): string => (/^[aeio]/.test(family) ? 'an' : 'a');

/** Says of which sheets a plan assumes hazards, and which say that there are none of the usual. */
export function warnOfAssumedHazards(draft: Draft, used: readonly Sheet[]): void {
	for (const sheet of used) {
		const { name, family } = sheet;
		const assumed = assumedHazards(sheet);
		if (assumed.length > 0) {
			const text = `${name}: ${hazardWords(assumed)}. Assumed for ${article(family)} ${family}; its data sheet does not say. Look it up in the SDS, and tick it on the data sheet.`;
			warn(draft, 'warn', 'hazards-assumed', 'people', text);
		} else if (sheet.sdsExcludesUsual && usualHazards(sheet).length > 0) {
			const said = sdsReader(sheet);
			const named = said === null ? '' : ` (${said})`;
			const text = `${name}: whoever keeps its data sheet${named} says that the SDS names none of what is usual for ${article(family)} ${family} (${hazardWords(usualHazards(sheet))}), so this plan asks for no protection against it. Have the SDS at hand, and check it before the first cup.`;
			warn(draft, 'warn', 'hazards-excluded', 'people', text);
		}
	}
}

/** Materials of a plan that get too hot to be left alone, by id; none in plans without a heat balance. */
export function hotMaterialIds({ cure }: Pick<Plan, 'cure'>): string[] {
	const { materials = [], casting } = cure ?? {};
	const ids = materials.filter(isHot).map(({ materialId }) => materialId);
	return casting && isHotCasting(casting) ? [...ids, casting.materialId] : ids;
}
