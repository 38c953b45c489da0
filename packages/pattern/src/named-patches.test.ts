import { expect, it } from 'vitest';
import { namedPatches } from './named-patches.ts';
import { NO_WISHES } from './wishes.ts';

it('the patches that a block names are those of its pins and of its pressings', () => {
  expect(namedPatches({})).toEqual([]);
  const sewing = {
    ...NO_WISHES,
    pins: [
      { kind: 'first', patch: 'patch2' },
      { kind: 'before', patch: 'patch1', than: 'patch3' },
      { kind: 'letter', patch: 'patch4', letter: 'C' },
    ],
  } as const;
  const pressings = [{ patches: ['patch5', 'patch1'], under: 'open' }] as const;
  expect(new Set(namedPatches({ sewing, pressings }))).toEqual(
    new Set(['patch1', 'patch2', 'patch3', 'patch4', 'patch5']),
  );
});
