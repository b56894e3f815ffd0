import { groupReadings } from '$lib/screen/read/group-readings';
import { viewIn } from '$lib/screen/read/reading';
import { readingRoom } from '$lib/screen/read/reading-room';
import { searchReadings } from '$lib/screen/read/search-readings';
import { briefings, caution, glossary, lessons, steps, troubles } from '$lib/server/content';
import type { PageServerLoad } from './$types';

const room = readingRoom({ briefings, caution, glossary, lessons, steps, troubles });
const readings = room.map(({ reading }) => reading);

export const load: PageServerLoad = ({ url }) => {
	const q = (url.searchParams.get('q') ?? '').trim().slice(0, 120);
	const view = viewIn(url.searchParams);
	return {
		q,
		view,
		count: readings.length,
		questions: [...lessons.values()].reduce((sum, lesson) => sum + lesson.questions.length, 0),
		found: q === '' ? null : searchReadings(room, q),
		groups: q === '' ? groupReadings(readings, view) : []
	};
};
