import type { Locator } from '@playwright/test';

/** One entry of the form in view, as a person reads it. */
export interface SeenField {
	kind: 'checkbox' | 'radio' | 'select' | 'text';
	label: string;
	/** Heading of the group it stands in, or ''. */
	group: string;
	/** Hint, unit and target beside it. */
	beside: string;
	value: string;
	/** What stands in the entry before it, for example a planned length before the measured one. */
	before: string;
	isOptional: boolean;
}

/** Reads every visible entry of a form, in order. */
export function seenFields(form: Locator): Promise<SeenField[]> {
	return form.evaluate((element) => {
		const text = (node: Element | null | undefined) =>
			(node?.textContent ?? '').replace(/\s+/g, ' ').trim();
		const inputs = [
			...element.querySelectorAll<HTMLInputElement>(
				'input:not([type=hidden]):not([type=file]), textarea, select'
			)
		];
		return inputs
			.filter((input) => input.checkVisibility())
			.map((input, i, seen) => {
				const label = text(input.labels?.[0]);
				const described = (input.getAttribute('aria-describedby') ?? '').split(' ');
				const hints = described.map((id) => (id ? text(document.getElementById(id)) : ''));
				const type = input.getAttribute('type');
				return {
					kind:
						type === 'checkbox' || type === 'radio'
							? type
							: input.tagName === 'SELECT'
								? ('select' as const)
								: ('text' as const),
					label: label.replace(/ ?optional$/, ''),
					group: text(input.closest('fieldset')?.querySelector('legend')),
					beside: hints.join(' '),
					value: type === 'checkbox' || type === 'radio' ? String(input.checked) : input.value,
					before: seen[i - 1]?.value ?? '',
					isOptional: / ?optional$/.test(label)
				};
			});
	});
}
