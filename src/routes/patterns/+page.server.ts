import { surfaceOf } from '$lib/core/geometry/solids';
import { mayEdit } from '$lib/screen/form/may-edit';
import { listPatterns } from '$lib/server/patterns.repository';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals }) => {
	const rows = await listPatterns(locals.db);
	return {
		canEdit: mayEdit(locals.person),
		patterns: rows.map(({ id, pattern }) => ({
			id,
			name: pattern.name,
			purpose: pattern.purpose,
			material: pattern.material,
			porosity: pattern.porosity,
			partsWanted: pattern.partsWanted,
			surface: surfaceOf(pattern.body)
		}))
	};
};
