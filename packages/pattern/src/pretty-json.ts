/** Longest line, in characters, on which a whole object or list is written. */
const LINE_WIDTH = 110;

/**
 * JSON for people and for version control: two spaces a level, and what fits on one line stays on one line, so
 * that a point of a drawing is a line of the file. Keys keep their order. Ends without a line break.
 *
 * @param value Plain data without cycles; undefined members are left out, as by `JSON.stringify`.
 */
export function prettyJson(value: unknown): string {
  return written(value, '', 0);
}

function written(value: unknown, indent: string, taken: number): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const short = onOneLine(value);
  if (indent.length + taken + short.length <= LINE_WIDTH) return short;

  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    return `[\n${value.map((item) => inner + written(item, inner, 1)).join(',\n')}\n${indent}]`;
  }
  const members = present(value).map(([key, member]) => {
    const name = `${JSON.stringify(key)}: `;
    return inner + name + written(member, inner, name.length + 1);
  });
  return `{\n${members.join(',\n')}\n${indent}}`;
}

function onOneLine(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(', ')}]`;
  const members = present(value).map(([key, member]) => `${JSON.stringify(key)}: ${onOneLine(member)}`);
  return members.length === 0 ? '{}' : `{ ${members.join(', ')} }`;
}

const present = (value: object) => Object.entries(value).filter(([, member]) => member !== undefined);
