import { PAPERS, type PagePlan, type Print, type Sheet } from '@seamwright/pages';
import { describe, expect, it } from 'vitest';
import { bindPlans } from './bind-plans.ts';

const sheet = (letter: string): Sheet => ({ marks: [], sections: [letter] });
const print = (block: string, letter: string, on: number): Print => ({
  key: letter,
  block,
  letters: [letter],
  size: { width: 6, height: 6 },
  mirrored: false,
  count: 2,
  sheets: [on],
});
const plan = (title: string, letters: string): PagePlan => ({
  title,
  paper: PAPERS.a4,
  sheets: [...letters].map(sheet),
  prints: [...letters].map((letter, i) => print(title, letter, i)),
  outline: [...letters].map((letter, i) => ({
    title: `Foundation ${letter}`,
    sheet: i,
    children: [{ title: `${letter} 1/1`, sheet: i, children: [] }],
  })),
});

describe('binding the plans of several blocks', () => {
  it('puts their sheets one after the other and their outlines under the blocks’ names', () => {
    const bound = bindPlans('Harbour', [plan('Boat', 'AB'), plan('Lantern', 'A')]);
    expect(bound.sheets).toEqual([sheet('A'), sheet('B'), sheet('A')]);
    expect(bound.prints).toEqual([print('Boat', 'A', 0), print('Boat', 'B', 1), print('Lantern', 'A', 2)]);
    expect([bound.title, bound.paper.label]).toEqual(['Harbour', 'A4']);
    const entry = (letter: string, at: number) => ({
      title: `Foundation ${letter}`,
      sheet: at,
      children: [{ title: `${letter} 1/1`, sheet: at, children: [] }],
    });
    expect(bound.outline).toEqual([
      { title: 'Boat', sheet: 0, children: [entry('A', 0), entry('B', 1)] },
      { title: 'Lantern', sheet: 2, children: [entry('A', 2)] },
    ]);
  });

  it('has a title of letters only, as each block has', () => {
    const plans = [plan('Boat', 'AB'), plan('Lantern', 'A')];
    // XML 1.0, section 2.2: no document may hold U+0001, not even escaped.
    expect(bindPlans('The\u0001 harbour\n', plans).title).toBe('The harbour');
    expect(bindPlans(' \u0001 ', plans).title).toBe('Boat');
  });

  it('leaves a single one as it is', () => {
    const only = plan('Boat', 'AB');
    expect(bindPlans('Harbour', [only])).toBe(only);
    expect(() => bindPlans('Harbour', [])).toThrow(RangeError);
  });
});
