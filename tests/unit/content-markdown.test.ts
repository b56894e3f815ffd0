import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isSafeUrl, markdownToHtml } from '../../src/lib/core/content/markdown';

describe('addresses', () => {
	test.each([
		'https://example.org/sheet?a=1&b=2',
		'mailto:safety@example.org',
		'/read/steps/wax',
		'#what-hurts'
	])('%s may stand in a link', (url) => {
		expect(isSafeUrl(url)).toBe(true);
		expect(markdownToHtml(`[word](<${url}>)`)).toContain('<a href="');
	});

	test.each([
		'javascript:alert(1)',
		'JaVaScRiPt:alert(1)',
		'javascript&colon;alert(1)',
		'&#106;avascript:alert(1)',
		'java\tscript:alert(1)',
		' javascript:alert(1)',
		'\u0001javascript:alert(1)',
		'data:text/html,<script>alert(1)</script>',
		'vbscript:x',
		'file:///etc/passwd',
		'//elsewhere.example',
		'/\\elsewhere.example',
		'http://example.org',
		'relative/path'
	])('%j may not', (url) => {
		expect(isSafeUrl(url)).toBe(false);
		for (const markdown of [`[word](<${url}>)`, `![word](<${url}>)`]) {
			expect(markdownToHtml(markdown)).not.toMatch(/<(a|img)[\s>]/);
		}
	});

	test('an unsafe link keeps its words', () => {
		expect(markdownToHtml('see [the *sheet*](javascript:alert(1))')).toBe(
			'<p>see the <em>sheet</em></p>\n'
		);
	});
});

describe('raw HTML', () => {
	test.each([
		'<script>alert(1)</script>',
		'text <script>alert(1)</script> text',
		'<img src=x onerror=alert(1)>',
		'a <img src=x onerror=alert(1)> b',
		'<a href="javascript:alert(1)">x</a>',
		'x <script><img src=x onerror=alert(1)>',
		'<pre><svg onload=alert(1) <b',
		'<style>body{}</style>',
		'<!-- comment --> <svg onload=alert(1)>',
		'| a |\n| - |\n| <img src=x onerror=alert(1)> |'
	])('is dropped: %j', (markdown) => {
		expect(markdownToHtml(markdown)).not.toMatch(
			/<(script|img|a|style|svg|!--)|<[^>]*(onerror|onload)/i
		);
	});

	test('cannot be smuggled in through a title, an alt text or a language', () => {
		const titled = markdownToHtml(`[x](https://example.org 'a" onclick="alert(1)')`);
		expect(titled).toContain('title="a&quot; onclick=&quot;alert(1)"');
		expect(markdownToHtml('![a" onerror="x](/a.png)')).toContain('alt="a&quot; onerror=&quot;x"');
		expect(markdownToHtml('```"><script>\n<b>\n```')).toBe('<pre><code>&lt;b&gt;</code></pre>\n');
	});

	test('leaves nothing but known tags, whatever the text', () => {
		const known =
			/^<\/?(p|em|strong|del|a|img|ul|ol|li|h[1-6]|code|pre|blockquote|br|hr|table|thead|tbody|tr|th|td|input)[\s/>]/;
		const part = fc.oneof(
			fc.string({ unit: 'grapheme', maxLength: 12 }),
			fc.constantFrom(
				'<',
				'>',
				'"',
				'`',
				'[',
				'](',
				')',
				'!',
				'*',
				'\n',
				'<script>',
				'onerror=',
				'&lt;'
			)
		);
		fc.assert(
			fc.property(fc.array(part, { maxLength: 20 }), (parts) => {
				for (const [tag] of markdownToHtml(parts.join('')).matchAll(/<[^>]*>?/g)) {
					expect(tag).toMatch(known);
				}
			})
		);
	});
});

test('ordinary Markdown comes through', () => {
	expect(markdownToHtml('## Act\n\n1. **Stop.**\n')).toBe(
		'<h2>Act</h2>\n<ol>\n<li><strong>Stop.</strong></li>\n</ol>\n'
	);
	expect(markdownToHtml('50 < 60 & "so"')).toBe('<p>50 &lt; 60 &amp; &quot;so&quot;</p>\n');
});
