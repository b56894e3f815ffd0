import { describe, expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { entryWords } from '../../src/lib/core/process/entry-words';
import { deviationText, inEnglish, type Said } from '../../src/lib/core/process/deviation-words';
import { eventFromForm } from '../../src/lib/core/bench/form-event';
import { fold } from '../../src/lib/core/process/job';
import { refusalOf } from '../../src/lib/core/process/refusal';
import { talk as englishTalk } from '../../src/lib/core/language/en/talk';
import { SPANISH } from '../../src/lib/core/language/es/spanish';
import { talk as spanishTalk } from '../../src/lib/core/language/es/talk';
import { withLocalDigits, withPoint } from '../../src/lib/core/language/local-digits';
import { localeFor, LOCALES } from '../../src/lib/core/language/locale';
import { plural } from '../../src/lib/core/language/plural';
import { ENGLISH, type Words } from '../../src/lib/core/language/words';
import { rehearseJob } from '../../src/lib/core/process/rehearsal';
import type { ProcessEvent } from '../../src/lib/core/process/events';
import { handPlan } from '../fixtures/plan';

const spanish: Words = { ...SPANISH, locale: 'es-US' };

describe('which language a visitor gets', () => {
	// RFC 9110, section 12.5.4: the highest quality wins, 0 is "not acceptable".
	test.each([
		[null, 'en-US'],
		['', 'en-US'],
		['fr-CH, fr;q=0.9', 'en-US'],
		['es', 'es-US'],
		['es-MX,es;q=0.9,en;q=0.5', 'es-US'],
		['es-ES,es;q=0.9', 'es-ES'],
		['es-419', 'es-US'],
		['en-GB,en;q=0.8', 'en-GB'],
		['de, en;q=0.4, es;q=0.8', 'es-US'],
		['es;q=0, en', 'en-US'],
		['*', 'en-US'],
		['es;q=nonsense', 'es-US']
	])('%s: %s', (header, locale) => {
		expect(localeFor(header)).toBe(locale);
	});
});

describe('numbers as a reader writes them', () => {
	test.each([
		['12.5 g', '12,5 g'],
		['1,234.5 g de 2,000 g', '1\u202f234,5 g de 2\u202f000 g'],
		['v1.2.3 y 14:05', 'v1.2.3 y 14:05']
	])('%s', (text, local) => {
		expect(withLocalDigits(text, 'es-ES')).toBe(local);
		expect(withLocalDigits(text, 'es-US')).toBe(text);
	});

	test('a comma typed where a comma is used is read as a point, and nowhere else', () => {
		expect(withPoint('12,5', 'es-ES')).toBe('12.5');
		expect(withPoint('12,5', 'en-US')).toBe('12,5');
		expect(withPoint('L-12,5', 'es-ES')).toBe('L-12,5');
		const form = new FormData();
		form.set('massesG.A', '120,5');
		form.set('lots.A', '12,5');
		expect(eventFromForm('cup.weighed', form, 'es-ES')).toMatchObject({
			massesG: { A: 120.5 },
			lots: { A: '12,5' }
		});
	});

	test('a plural is chosen by the language’s own rules', () => {
		const forms = { one: 'una capa', other: 'capas' };
		expect([0, 1, 2].map((n) => plural('es', n, forms))).toEqual(['capas', 'una capa', 'capas']);
		expect(plural('en', 1, { other: 'many' })).toBe('many');
	});
});

/** Every text of a catalog, its functions called with something. */
function texts(node: unknown, path = ''): Array<[string, string]> {
	if (typeof node === 'string') return [[path, node]];
	if (typeof node === 'function') {
		const anything: unknown = new Proxy(
			{},
			{
				get: (_t, key) => {
					if (key === Symbol.toPrimitive) return () => 7;
					return key === 'join' ? () => '7' : '7';
				}
			}
		);
		return [
			[
				path,
				String(
					(node as (given: unknown) => string)(
						path.endsWith('title') || path.includes('hold.title') ? '7' : anything
					)
				)
			]
		];
	}
	if (typeof node !== 'object' || node === null) return [];
	return Object.entries(node).flatMap(([key, child]) => texts(child, `${path}.${key}`));
}

describe('the Spanish catalog', () => {
	const AREAS = [
		'titles',
		'acts',
		'entries',
		'rules',
		'fields',
		'errors',
		'controls',
		'frame'
	] as const;
	/** Words that are the same in both. */
	const SAME = /^(PPE|Auto|plan|Shore.*|7.*|supervisor)$/i;

	test.each(AREAS)('says nothing in English: %s', (area) => {
		const english = new Map(texts(ENGLISH[area]));
		const left = texts(SPANISH[area]).filter(
			([path, text]) => text.length > 3 && english.get(path) === text && !SAME.test(text)
		);
		expect(left).toEqual([]);
	});

	test('leaves no message empty that English has', () => {
		for (const area of [...AREAS, 'bench', 'steps', 'reading', 'log'] as const) {
			const spanishTexts = new Map(texts(SPANISH[area]));
			for (const [path, text] of texts(ENGLISH[area])) {
				if (text !== '') expect(spanishTexts.get(path), path).toBeTruthy();
			}
		}
	});

	test('every locale has its own date, and no two are alike', () => {
		const dates = LOCALES.map((locale) =>
			new Intl.DateTimeFormat(locale, { month: 'short', day: 'numeric' }).format(
				new Date('2026-03-03T12:00:00Z')
			)
		);
		expect(new Set(dates).size).toBeGreaterThanOrEqual(3);
	});
});

test('the sheet of a talk says nothing in English', () => {
	const [en, es] = [texts(englishTalk), texts(spanishTalk)];
	const english = new Map(en);
	expect(es.filter(([path, text]) => text.length > 3 && english.get(path) === text)).toEqual([]);
	expect(es.map(([path]) => path)).toEqual(en.map(([path]) => path));
});

describe('what was done otherwise than planned', () => {
	const title = 'Build coat 2';
	const given: { [Key in Said['key']]: Extract<Said, { key: Key }>['given'] } = {
		windowMissed: { hadCup: true },
		abraded: { grit: 'P120', reason: 'Tarde.' },
		roundAdded: { reason: 'Fina.' },
		mixedLate: undefined,
		mixedFast: { tookS: 30, mixS: 90 },
		largeCup: { massG: 900, plannedG: 700 },
		mixerNotInDate: undefined,
		nextDropped: undefined,
		laidOnShut: { min: 3 },
		laidPastWindow: { min: 3 },
		laidPastPotLife: { min: 12, mostMin: 9 },
		laidPastWorking: { min: 12, mostMin: 9 },
		short: { title, reason: 'Falta.' },
		fewLayers: { title, laid: 1, planned: 2, reason: 'Falta.' },
		over: { title, laidG: 900, plannedG: 700 },
		notBrushedBack: undefined,
		testedEarly: { title, tookMin: 10, expectedMin: 45 },
		roomOff: { roomC: 27, humidityPct: 30, plannedC: 23, plannedPct: 50 },
		roomMoist: { humidityPct: 92, roomC: 23, plannedPct: 50, leastC: 24.7 },
		roomRange: { name: 'X', roomC: 14, minC: 18, maxC: 30 },
		surfaceDew: { surfaceC: 19, dewC: 17.2, marginK: 1.8 },
		testedTooSoon: { title, tookMin: 1, soonestMin: 40 },
		tooThin: { thinnestMm: 3.2, leastMm: 4.8 },
		looseFrame: { note: 'Flojo.' },
		torn: { note: '' },
		gap: { gapMm: 20, plannedMm: 30, toleranceMm: 6 },
		found: {
			verdict: 'needs repair',
			flaws: [{ flaw: 'voids', count: 2 }],
			sizes: [{ name: 'ancho', measuredMm: 98, plannedMm: 100 }],
			note: 'Abajo.',
			alwaysStop: false
		},
		foundAnew: { before: 'needs repair', now: 'sound' },
		testedAnew: { before: 'hard', now: 'almost tack-free' }
	};

	test.each(Object.keys(given) as Said['key'][])('%s is read in the reader’s language', (key) => {
		const said = { key, given: given[key] } as Said;
		const [en, es] = [deviationText({ said }, ENGLISH), deviationText({ said }, spanish)];
		expect(en).toBe(inEnglish(said));
		expect(es).not.toBe(en);
		expect(`${en} ${es}`).not.toMatch(/undefined|\[object/);
		expect(es).not.toMatch(/\b(the|was|cup|coat|hard|voids|sound|almost|Build)\b/);
	});
});

describe('a whole job in Spanish', () => {
	const plan = handPlan();
	const { log } = rehearseJob(plan, {
		until: 'end',
		startAt: '2026-03-02T14:00:00.000Z',
		crew: { worker: 'w', supervisor: 's' },
		jobId: 'job-1'
	});

	test('has no step, act or field that is said as in English', () => {
		const names = Object.values(plan.inputs.materials).map((sheet) => sheet?.name ?? '');
		const alike: string[] = [];
		for (let n = 1; n <= log.length; n += 1) {
			const state = fold(plan, log.slice(0, n));
			const viewer = { by: 'w', at: state.lastAt };
			const said = (w: Words) => {
				const step = benchStep(state, viewer, w);
				return [
					step.title,
					step.what,
					...step.next,
					step.window?.label ?? '',
					step.window?.after ?? '',
					...step.acts.flatMap((act) => [
						act.label,
						act.blocked ?? '',
						...act.fields.flatMap((f) => [f.label, ...(f.choices ?? []).map((c) => c.label)])
					])
				];
			};
			const [en, es] = [said(ENGLISH), said(spanish)];
			expect(es).toHaveLength(en.length);
			alike.push(...es.filter((text, i) => text !== '' && text === en[i]));
		}
		const allowed = [...names, 'w', 's', 'Shore A'];
		expect([...new Set(alike)].filter((text) => !allowed.includes(text))).toEqual([]);
	});

	test('is refused in Spanish for the same reasons', () => {
		const state = fold(plan, log.slice(0, 1));
		const act = { type: 'wax.applied', at: state.lastAt, by: 'w' } as ProcessEvent;
		expect(refusalOf(state, act)?.reason).toContain('is not what comes now');
		expect(refusalOf(state, act, spanish)?.reason).toContain('no es lo que toca ahora');
		const finish = log.find(({ event }) => event.type === 'brief.finished')?.event;
		if (!finish) throw new Error('no briefing to finish');
		expect(refusalOf(state, finish, spanish)?.reason).toContain('lea primero');
	});

	test('an entry is told in Spanish', () => {
		const tack = log.find(({ event }) => event.type === 'tack.tested')?.event;
		if (!tack) throw new Error('no fingertip test');
		expect(entryWords(tack)).toContain('almost tack-free');
		expect(entryWords(tack, spanish)).toContain('casi sin pegajosidad');
	});
});
