import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pictures } from './pictures/why-not-sewable.ts';

/**
 * The pictures of docs/why-not-sewable.md are what the solver says. After a change that is meant, they are drawn anew by
 *
 *     SEAMWRIGHT_PICTURES=renew npm run unit -- packages/sewing/test/pictures
 */
const folder = new URL('../../../docs/images/', import.meta.url);

test.each([...pictures()])('docs/images/%s.svg is what the solver says', (name, svg) => {
  const file = new URL(`${name}.svg`, folder);
  if (process.env.SEAMWRIGHT_PICTURES === 'renew') writeFileSync(file, svg);
  expect(existsSync(file), 'the picture has not been drawn yet').toBe(true);
  expect(readFileSync(file, 'utf8')).toBe(svg);
});
