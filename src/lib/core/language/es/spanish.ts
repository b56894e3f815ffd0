import type { Catalog } from '../words';
import { acts } from './acts';
import { bench } from './bench';
import { containers } from './containers';
import { controls } from './controls';
import { deviations } from './deviations';
import { entries } from './entries';
import { errors } from './errors';
import { fields } from './fields';
import { frame } from './frame';
import { log } from './log';
import { pieces } from './pieces';
import { questions } from './questions';
import { reading } from './reading';
import { rules } from './rules';
import { steps } from './steps';
import { titles } from './titles';
import { voice } from './voice';

export const SPANISH: Catalog = {
	lang: 'es',
	quoted: (text) => `«${text}»`,
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
