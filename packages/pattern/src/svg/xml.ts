import { fail, ok, type Problem, type Result } from '@seamwright/geometry';
import { DOMParser, type Element, ParseError } from '@xmldom/xmldom';
import { MOST_ATTRIBUTES, MOST_TAGS, tooLarge } from '../limits.ts';

const SVG_NAMESPACE = 'http://www.w3.org/2000/svg';

/**
 * The outermost `svg` element of a text. Nothing outside the text is ever fetched, and entities are refused rather
 * than expanded: a few lines of nested ones make gigabytes.
 */
export function parseSvg(text: string): Result<Element> {
  const tooLong = tooLarge(text.length);
  if (tooLong !== null) return { ok: false, problem: tooLong };
  for (const [sign, most, called] of [
    ['<', MOST_TAGS, 'tags'],
    ['=', MOST_ATTRIBUTES, 'attributes'],
  ] as const) {
    if (hasMoreThan(most, sign, text)) {
      return fail(
        `The drawing has more than ${most} ${called}`,
        '',
        'Save it with nothing but the block’s lines',
      );
    }
  }
  const entity = placeOfEntity(text);
  if (entity !== null) {
    return fail(
      'The file declares entities, which are never expanded',
      `line ${entity}`,
      'Save the drawing as plain SVG, without entities in its DOCTYPE',
    );
  }

  let unsound: Problem | null = null;
  const parser = new DOMParser({
    onError: (level, message, handler: { locator?: { lineNumber?: number } }) => {
      if (level === 'warning') return;
      unsound = notXml(text, message, handler.locator?.lineNumber ?? 0);
      // Any exception stops the parser.
      throw new Error(message);
    },
  });
  let root: Element | null;
  try {
    root = parser.parseFromString(text.replace(/^\uFEFF/, ''), 'image/svg+xml').documentElement;
  } catch (error) {
    if (!(error instanceof ParseError)) throw error;
    return { ok: false, problem: unsound ?? notXml(text, error.message, 0) };
  }
  if (root === null || !isSvg(root, 'svg')) {
    return fail(
      `The file is XML but no SVG drawing: its outermost element is "${root?.nodeName ?? ''}"`,
      `line ${root?.lineNumber ?? 1}`,
      'Choose an SVG drawing or a pattern file',
    );
  }
  return ok(root);
}

function hasMoreThan(most: number, sign: string, text: string): boolean {
  let count = 0;
  for (let at = text.indexOf(sign); at >= 0; at = text.indexOf(sign, at + 1)) {
    count += 1;
    if (count > most) return true;
  }
  return false;
}

/** Whether an element is SVG's own (not some drawing program's) and has that name. Files without a namespace are let pass. */
export const isSvg = (element: Element, name: string): boolean =>
  element.localName === name && isOfSvg(element);

export const isOfSvg = (element: Element): boolean =>
  element.namespaceURI === SVG_NAMESPACE || element.namespaceURI === null;

/** The parser's own words are kept where the reason is not plain: whoever mends XML by hand knows them. */
function notXml(text: string, message: string, line: number): Problem {
  const remedy = 'Save the drawing as SVG again, or mend that place';
  if (!text.includes('<svg')) {
    return {
      what: 'The file is no SVG drawing',
      where: '',
      remedy: 'Choose an SVG drawing or a pattern file',
    };
  }
  if (!text.includes('</svg')) {
    return {
      what: 'The SVG drawing is cut short',
      where: `line ${text.trimEnd().split('\n').length}`,
      remedy,
    };
  }
  const reason = message.replace(/^(element parse error: )?(Error: )?/, '').slice(0, 200);
  return { what: `The file is not sound XML: ${reason}`, where: line > 0 ? `line ${line}` : '', remedy };
}

/** The line, from 1, of the first entity declaration that is not in a comment; null when there is none. */
function placeOfEntity(text: string): number | null {
  if (!text.includes('<!ENTITY')) return null;
  const uncommented = text.replace(/<!--[\s\S]*?-->/g, (comment) => comment.replace(/[^\n]/g, ' '));
  const at = uncommented.indexOf('<!ENTITY');
  return at < 0 ? null : uncommented.slice(0, at).split('\n').length;
}
