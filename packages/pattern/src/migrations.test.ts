import { describe, expect, it } from 'vitest';
import { bringUp, CURRENT_VERSION, MIGRATIONS, type Migration } from './migrations.ts';

/** Made up for the test: version 2 calls the title a heading, version 3 counts the blocks. */
const CHAIN: readonly Migration[] = [
  {
    from: 2,
    note: null,
    migrate: (document) => ({ ...document, count: (document as { blocks: unknown[] }).blocks.length }),
  },
  {
    from: 1,
    note: 'The title is now called heading.',
    migrate: ({ title, ...rest }: { title?: string }) => ({ ...rest, heading: title }),
  },
];

describe('migrations', () => {
  it('go from the version of the document to the newest, one after the other', () => {
    expect(bringUp({ title: 'Boat', blocks: [1, 2] }, 1, CHAIN, 3)).toEqual({
      document: { heading: 'Boat', blocks: [1, 2], count: 2 },
      notes: ['The title is now called heading.'],
    });
    expect(bringUp({ heading: 'Boat', blocks: [] }, 2, CHAIN, 3).document).toEqual({
      heading: 'Boat',
      blocks: [],
      count: 0,
    });
  });

  it('leave a document of the newest version alone', () => {
    const document = { title: 'Boat' };
    expect(bringUp(document, CURRENT_VERSION)).toEqual({ document, notes: [] });
  });

  it('throw when one is missing, rather than pass an old document for a new one', () => {
    expect(() => bringUp({}, 1, CHAIN.slice(0, 1), 3)).toThrow('version 1');
  });

  it('are there for every version before the current one', () => {
    expect(MIGRATIONS.map((m) => m.from)).toEqual(
      Array.from({ length: CURRENT_VERSION - 1 }, (_, i) => i + 1),
    );
  });
});
