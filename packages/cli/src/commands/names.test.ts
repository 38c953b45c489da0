import { describe, expect, it } from 'vitest';
import { pagePath } from '../write-pages.ts';
import { reportNames } from './sewing.ts';

describe('names of files to write', () => {
  it('are the file’s own for a single block, and tell several apart', () => {
    const named = (...names: string[]) =>
      reportNames(
        'room',
        names.map((name) => ({ name })),
      );
    expect(named('Paper boat')).toEqual(['room']);
    expect(named('Paper boat', 'Étoile, grande', 'paper  BOAT', '', '../x')).toEqual([
      'room-paper-boat',
      'room-étoile-grande',
      'room-paper-boat-2',
      'room-block',
      'room-x',
    ]);
  });

  it('count the pages from the second on', () => {
    expect([0, 1, 2].map((i) => pagePath('a.b/F.svg', i))).toEqual([
      'a.b/F.svg',
      'a.b/F-2.svg',
      'a.b/F-3.svg',
    ]);
  });
});
