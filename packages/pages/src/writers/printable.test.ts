import { describe, expect, test } from 'vitest';
import { lantern, usual } from '../../test/blocks.ts';
import { pageFonts } from '../../test/fonts.ts';
import { laid } from '../../test/laid.ts';
import { printable } from './printable.ts';

const texts = (title: string): readonly string[] =>
  printable(laid(usual(lantern(3), title)), pageFonts).plan.sheets.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'text' ? [mark.content] : [])),
  );

describe('names in any script', () => {
  test.each(['Paper boat', 'Båten på øya', 'Лодка', 'Βάρκα', 'Thuyền giấy', '¾ + ⅜ … – “boat”'])(
    '%s is set as written',
    (title) => {
      const plan = laid(usual(lantern(3), title));
      const result = printable(plan, pageFonts);
      expect(result.notes).toEqual([]);
      expect(result.plan).toBe(plan);
      expect(texts(title)).toContain(title);
    },
  );

  test('what the font does not have is replaced where it can be seen, and said', () => {
    const result = printable(laid(usual(lantern(3), '紙船 Paper boat 🚢')), pageFonts);
    expect(texts('紙船 Paper boat 🚢')).toContain('?? Paper boat ?');
    expect(result.notes).toEqual([
      'The pages’ font has no 紙 船 🚢: ? is printed instead. The name in the document’s title and outline is whole.',
    ]);
    expect(result.plan.title).toBe('紙船 Paper boat 🚢');
    expect(printable(result.plan, pageFonts).notes).toEqual([]);
  });

  test('accents typed as separate characters are put together', () => {
    expect(texts('Bate\u0301l')).toContain('Batél');
  });
});

test('the words of the pages themselves can all be set', () => {
  for (const [unit, allowance] of [
    ['in', 0.25],
    ['in', 0],
    ['cm', 0.3],
  ] as const)
    for (const size of [3, 12])
      expect(printable(laid(usual(lantern(size), 'Lantern', { unit, allowance })), pageFonts).notes).toEqual(
        [],
      );
});
