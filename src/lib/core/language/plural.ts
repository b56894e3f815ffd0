import type { Lang } from './locale';

/** Forms of a phrase by the count it speaks of; a language that knows only two needs only these. */
export type PluralForms = { other: string } & Partial<Record<Intl.LDMLPluralRule, string>>;

const rules = new Map<Lang, Intl.PluralRules>();

/** The form that goes with a count in a language, as Unicode's plural rules have it (`Intl.PluralRules`). */
export function plural(lang: Lang, count: number, forms: PluralForms): string {
	const rule = rules.get(lang) ?? new Intl.PluralRules(lang);
	rules.set(lang, rule);
	return forms[rule.select(count)] ?? forms.other;
}
