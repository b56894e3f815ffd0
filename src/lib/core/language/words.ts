import { acts, type ActWords } from './en/acts';
import { bench, type BenchWords } from './en/bench';
import { containers, type ContainerWords } from './en/containers';
import { controls, type ControlWords } from './en/controls';
import { deviations, type DeviationWords } from './en/deviations';
import { entries, type EntryWords } from './en/entries';
import { errors, type ErrorWords } from './en/errors';
import { fields, type FieldWords } from './en/fields';
import { frame, type FrameWords } from './en/frame';
import { log, type LogWords } from './en/log';
import { pieces, type PieceWords } from './en/pieces';
import { questions, type QuestionWords } from './en/questions';
import { reading, type ReadingWords } from './en/reading';
import { rules, type RuleWords } from './en/rules';
import { steps, type StepWords } from './en/steps';
import { titles, type TitleWords } from './en/titles';
import { voice, type VoiceWords } from './en/voice';
import type { Lang, Locale } from './locale';

/** Every message of one language, by area. English sets the names; another that lacks one does not compile. */
export interface Catalog {
	lang: Lang;
	/** A name or a title within a sentence. */
	quoted: (text: string) => string;
	titles: TitleWords;
	acts: ActWords;
	entries: EntryWords;
	steps: StepWords;
	rules: RuleWords;
	fields: FieldWords;
	errors: ErrorWords;
	bench: BenchWords;
	containers: ContainerWords;
	pieces: PieceWords;
	controls: ControlWords;
	log: LogWords;
	deviations: DeviationWords;
	questions: QuestionWords;
	reading: ReadingWords;
	frame: FrameWords;
	voice: VoiceWords;
}

/** The messages of a reader's language, and how the reader writes numbers and dates. */
export interface Words extends Catalog {
	locale: Locale;
}

/** American English: what is spoken where nobody has said. */
export const ENGLISH: Words = {
	lang: 'en',
	locale: 'en-US',
	quoted: (text) => `“${text}”`,
	titles,
	acts,
	entries,
	steps,
	rules,
	fields,
	errors,
	bench,
	containers,
	pieces,
	controls,
	log,
	deviations,
	questions,
	reading,
	frame,
	voice
};
