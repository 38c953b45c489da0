export interface JsonPlace {
  /** From 1. */
  readonly line: number;
  readonly column: number;
  /** Whether the text stops too early, rather than being wrong inside. */
  readonly atEnd: boolean;
}

/**
 * Where a text stops being JSON. Only for texts that `JSON.parse` has refused: what it says of the place is in words,
 * differs between engines, and is missing for some errors. Grammar: RFC 8259.
 */
export function placeOfJsonError(text: string): JsonPlace {
  const at = lengthOfSoundPart(text);
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: before.at(-1)!.length + 1, atEnd: at === text.length };
}

/** What may come next. `…OrEnd`: or the bracket that closes. */
type Expected = 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'commaOrEnd';

const SPACE = /[ \t\n\r]*/y;
const NUMBER_OR_WORD = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
/** What may stand at the end of a text that was cut in the middle of a number or a word. */
const CUT_NUMBER_OR_WORD =
  /(?:-?\d*(?:\.\d*)?(?:[eE][+-]?\d*)?|t(?:r(?:ue?)?)?|f(?:a(?:l(?:se?)?)?)?|n(?:u(?:ll?)?)?)$/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what JSON forbids in a string
const STRING_BODY = /[^"\\\u0000-\u001f]*/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const CUT_ESCAPE = /\\(?:u[0-9a-fA-F]{0,3})?$/y;

function lengthOfSoundPart(text: string): number {
  const open: ('{' | '[')[] = [];
  let expected: Expected = 'value';
  let at = 0;
  for (;;) {
    at = past(SPACE, text, at) ?? at;
    const sign = text[at];
    if (sign === undefined) return text.length;
    if (expected === 'commaOrEnd' && open.length === 0) return at;

    if (sign === ',' && expected === 'commaOrEnd') {
      expected = open.at(-1) === '{' ? 'key' : 'value';
      at += 1;
    } else if (sign === ':' && expected === 'colon') {
      expected = 'value';
      at += 1;
    } else if (closes(sign, expected, open)) {
      open.pop();
      expected = 'commaOrEnd';
      at += 1;
    } else if ((sign === '{' || sign === '[') && (expected === 'value' || expected === 'valueOrEnd')) {
      open.push(sign);
      expected = sign === '{' ? 'keyOrEnd' : 'valueOrEnd';
      at += 1;
    } else if (sign === '"' && expected !== 'colon' && expected !== 'commaOrEnd') {
      const isKey = (['key', 'keyOrEnd'] as Expected[]).includes(expected);
      const string = pastString(text, at);
      if (!string.closed) return string.at;
      at = string.at;
      expected = isKey ? 'colon' : 'commaOrEnd';
    } else if (expected === 'value' || expected === 'valueOrEnd') {
      if (past(CUT_NUMBER_OR_WORD, text, at) !== null) return text.length;
      const end = past(NUMBER_OR_WORD, text, at);
      if (end === null) return at;
      at = end;
      expected = 'commaOrEnd';
    } else {
      return at;
    }
  }
}

function closes(sign: string, expected: Expected, open: readonly string[]): boolean {
  const bracket = open.at(-1);
  if (sign === '}') return bracket === '{' && (expected === 'keyOrEnd' || expected === 'commaOrEnd');
  return sign === ']' && bracket === '[' && (expected === 'valueOrEnd' || expected === 'commaOrEnd');
}

/** The place after what the sticky pattern matches at `at`; null when it does not. */
function past(pattern: RegExp, text: string, at: number): number | null {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : null;
}

/** From the opening quote to after the closing one, or to where the string stops being one. */
function pastString(text: string, start: number): { at: number; closed: boolean } {
  let at = start + 1;
  for (;;) {
    at = past(STRING_BODY, text, at) ?? at;
    if (text[at] === '"') return { at: at + 1, closed: true };
    if (past(CUT_ESCAPE, text, at) !== null) return { at: text.length, closed: false };
    const end = past(ESCAPE, text, at);
    if (end === null) return { at, closed: false };
    at = end;
  }
}
