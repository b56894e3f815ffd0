import { labelFacts } from '$lib/core/bench/container-facts';
import { sheetContradictions } from '$lib/core/materials/contradictions';
import { MATERIAL_KINDS } from '$lib/core/materials/sheet';
import { mayEdit } from '$lib/screen/form/may-edit';
import { listSheets } from '$lib/server/sheets.repository';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, url }) => {
	const search = (url.searchParams.get('search') ?? '').trim().slice(0, 100);
	const withRetired = url.searchParams.has('retired');
	const wanted = search.toLocaleLowerCase('en');
	const sheets = (await listSheets(locals.db, { withRetired })).filter((sheet) =>
		`${sheet.name} ${sheet.maker} ${sheet.family} ${sheet.body}`
			.toLocaleLowerCase('en')
			.includes(wanted)
	);
	const groups = MATERIAL_KINDS.map((kind) => ({
		kind,
		sheets: sheets
			.filter((sheet) => sheet.kind === kind)
			.map((sheet) => ({
				id: sheet.id,
				name: sheet.name,
				maker: sheet.maker,
				family: sheet.family,
				body: sheet.body,
				retired: sheet.retired,
				label: labelFacts(sheet),
				isOff: sheetContradictions(sheet).length > 0
			}))
	}));
	return { search, withRetired, groups, count: sheets.length, canEdit: mayEdit(locals.person) };
};
