import { refuse } from './refusal';

export type Attributes = Record<string, string>;

export interface XmlHandler {
	/** An element opens; `name` without its namespace prefix. */
	open(name: string, attributes: Attributes, at: number): void;
	close(name: string): void;
}

const MOST_DEPTH = 64;
const ATTRIBUTE = /([^\s=/>]+)\s*=\s*("([^"<]*)"|'([^'<]*)')/y;
const BLANK = /\s+/y;

/**
 * Walks the elements of an XML text from front to back. No document type, no entities, no text between
 * elements: what could expand or fetch is refused, the rest is all a mesh needs.
 */
export function scanXml(text: string, handler: XmlHandler): void {
	const stack: string[] = [];
	let at = text.indexOf('<');
	if (at < 0) refuse('The model holds no XML', 'model', 'a 3MF model');
	for (; at >= 0; at = text.indexOf('<', at)) {
		if (text.startsWith('<?', at)) at = after(text, '?>', at);
		else if (text.startsWith('<!--', at)) at = after(text, '-->', at);
		else if (text.startsWith('<!', at)) {
			refuse(
				'The model declares a document type, entities or raw text',
				`character ${at + 1} of the model`,
				'plain elements and attributes'
			);
		} else if (text.startsWith('</', at)) {
			const end = after(text, '>', at);
			const name = localName(text.slice(at + 2, end - 1).trim());
			if (stack.pop() !== name) {
				refuse(
					`"${name.slice(0, 40)}" is closed and was not open`,
					`character ${at + 1} of the model`,
					'well-formed XML'
				);
			}
			handler.close(name);
			at = end;
		} else at = openElement(text, at, stack, handler);
	}
	if (stack.length > 0) {
		refuse(`The model ends within "${stack.at(-1)}"`, 'end of the model', 'the whole file');
	}
}

function openElement(text: string, from: number, stack: string[], handler: XmlHandler): number {
	let at = from + 1;
	while (at < text.length && !/[\s/>]/.test(text[at]!)) at += 1;
	const name = localName(text.slice(from + 1, at));
	const attributes: Attributes = {};
	for (;;) {
		BLANK.lastIndex = at;
		if (BLANK.test(text)) at = BLANK.lastIndex;
		ATTRIBUTE.lastIndex = at;
		const found = ATTRIBUTE.exec(text);
		if (!found) break;
		attributes[localName(found[1]!)] = found[3] ?? found[4] ?? '';
		at = ATTRIBUTE.lastIndex;
	}
	const isEmpty = text[at] === '/';
	if (isEmpty) at += 1;
	if (text[at] !== '>' || name === '') {
		refuse(
			'An element is not written as XML',
			`character ${from + 1} of the model`,
			'well-formed XML'
		);
	}
	handler.open(name, attributes, from);
	if (isEmpty) handler.close(name);
	else stack.push(name);
	if (stack.length > MOST_DEPTH) {
		refuse(
			'Elements are nested too deep',
			`character ${from + 1} of the model`,
			`up to ${MOST_DEPTH} levels`
		);
	}
	return at + 1;
}

function after(text: string, mark: string, from: number): number {
	const found = text.indexOf(mark, from);
	if (found < 0) refuse('The model ends in the middle', 'end of the model', 'the whole file');
	return found + mark.length;
}

function localName(name: string): string {
	return name.slice(name.indexOf(':') + 1);
}
