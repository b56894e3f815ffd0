/** A text open for less than this part of its reading time was hardly read; common practice, no source. */
const READ_FRACTION = 1 / 3;

/**
 * Whether a briefing was open for much less time than reading it takes.
 *
 * @param openS - seconds it was open; null where nobody measured that, which says nothing
 * @param readMin - minutes that reading it takes, as its text says
 */
export function isReadShort({
	openS,
	readMin
}: {
	openS: number | null;
	readMin: number;
}): boolean {
	return openS !== null && openS < READ_FRACTION * readMin * 60;
}
