import type { Page } from '@playwright/test';

/** Collects what the browser complains of on a page, into `heard`: errors, and what the content policy refused. */
export function complaintsOf(page: Page, heard: string[] = []): string[] {
	page.on('pageerror', (error) => heard.push(`${page.url()}: ${error.message}`));
	page.on('console', (message) => {
		const text = message.text();
		if (message.type() === 'error' || /Refused to|violates/.test(text)) {
			heard.push(`${page.url()}: ${text}`);
		}
	});
	return heard;
}
