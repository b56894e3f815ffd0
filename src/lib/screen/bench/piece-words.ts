import { pieces } from '$lib/core/language/en/pieces';
import { getWordsOf } from '../words';

/** What the parts say that only some steps show, in the reader's language. */
export const getPieceWords = () => getWordsOf(pieces, (words) => words.pieces);
