import { sentence } from '@seamwright/geometry';
import { expect, test } from 'vitest';
import { USUAL } from '../../test/blocks.ts';
import { checkCutRules } from './check-rules.ts';

test('usual rules pass as they are', () => {
  expect(checkCutRules(USUAL)).toEqual({ ok: true, value: USUAL });
  expect(checkCutRules({ allowance: 0, spare: 0, turn: 45, roundUpTo: 5 / 25.4 }).ok).toBe(true);
});

test.each([
  [{ allowance: -0.25 }, 'The seam allowance cannot be -0.25 in. Give 0 to 2 in.'],
  [{ allowance: Number.NaN }, 'The seam allowance cannot be NaN in. Give 0 to 2 in.'],
  [{ spare: 3 }, 'The spare cannot be 3 in. Give 0 to 2 in.'],
  [{ turn: 90 }, 'A piece cannot be turned by 90° and still cover. Give 0 to 45°.'],
  [{ roundUpTo: 0 }, 'Sizes cannot be rounded up to 0 in. Give 1/64 to 1 in.'],
])('refused: %o', (wrong, message) => {
  const checked = checkCutRules({ ...USUAL, ...wrong });
  expect(checked.ok ? '' : sentence(checked.problem)).toBe(message);
});
