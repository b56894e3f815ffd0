import { Marked } from 'marked';

const SCHEMES = ['https:', 'mailto:'];
const SCHEME = /^[a-z][a-z0-9+.-]*:/i;
const LOCAL = /^(?:\/(?![/\\])|#)/;

const ESCAPES: Record<string, string> = {
	'&': '&amp;',
	'<': '&lt;',
	'>': '&gt;',
	'"': '&quot;',
	"'": '&#39;'
};

/** Text made safe for HTML text and for a quoted attribute. */
export function escapeHtml(text: string): string {
	return text.replace(/[&<>"']/g, (character) => ESCAPES[character] ?? '');
}

/**
 * Whether an address may stand in a link or an image: https, mailto, a path of this site, or a
 * fragment. Everything else is refused, also what a browser would only see after decoding.
 */
export function isSafeUrl(url: string): boolean {
	// Browsers drop control characters inside an address, so "java\nscript:" would come back to life.
	if ([...url].some((character) => character <= ' ' || character === '\u007f')) return false;
	const scheme = SCHEME.exec(url)?.[0].toLowerCase();
	return scheme === undefined ? LOCAL.test(url) : SCHEMES.includes(scheme);
}

function attribute(name: string, value: string | null | undefined): string {
	return value ? ` ${name}="${escapeHtml(value)}"` : '';
}

const marked = new Marked({
	gfm: true,
	renderer: {
		html: () => '',
		text(token) {
			// After a raw tag marked calls text "escaped" and would pass it on as it stands.
			return token.type === 'text' && token.tokens
				? this.parser.parseInline(token.tokens)
				: escapeHtml(token.text);
		},
		link({ href, title, tokens }) {
			const text = this.parser.parseInline(tokens);
			return isSafeUrl(href)
				? `<a${attribute('href', href)}${attribute('title', title)}>${text}</a>`
				: text;
		},
		image({ href, title, text }) {
			return isSafeUrl(href)
				? `<img${attribute('src', href)} alt="${escapeHtml(text)}"${attribute('title', title)}>`
				: escapeHtml(text);
		},
		code({ text }) {
			return `<pre><code>${escapeHtml(text)}</code></pre>\n`;
		}
	}
});

/**
 * HTML of a Markdown text. Raw HTML is dropped, unsafe addresses lose their link but keep their
 * words, attributes are escaped. This is the only text that a page may insert unescaped.
 */
export function markdownToHtml(markdown: string): string {
	return marked.parse(markdown, { async: false });
}
