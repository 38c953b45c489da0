import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parsePattern, writePattern } from '../src/index.ts';

it('the pattern file that the documents show opens, and is written as they say', () => {
  const document = readFileSync(new URL('../../../docs/file-format.md', import.meta.url), 'utf8');
  const shown = /```json\n([^`]*)```/.exec(document)![1]!;
  const parsed = parsePattern(shown);
  if (!parsed.ok) throw new Error(parsed.problem.what);
  expect(JSON.parse(writePattern(parsed.value.pattern))).toEqual(JSON.parse(shown));
  expect(parsed.value.pattern.blocks[0]!.name).toBe('Horizon');
});
