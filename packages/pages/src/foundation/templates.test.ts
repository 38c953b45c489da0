import { identity, rotation, type Transform, transformPolygon, translation } from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import { describe, expect, test } from 'vitest';
import { misfit } from '../../../../e2e/support/pdf.ts';
import { house } from '../../test/blocks.ts';
import { moorings, pilings, star, whirl } from '../../test/repeated.ts';
import { alikeSections, lettersOf, type Sharing, templatesFor } from './templates.ts';

const section = (letter: string, copyOf?: Section['copyOf']): Section => ({
  letter,
  order: [0],
  sewLines: [],
  outline: [],
  ring: [],
  ...(copyOf && { copyOf }),
});

const MIRROR: Transform = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };
const copy = (letter: string, mirrored: boolean, transform: Transform): Section['copyOf'] => ({
  letter,
  mirrored,
  transform,
});

const sharedTemplates = (plan: Sharing['plan']) =>
  templatesFor({ plan, shareTemplates: true, mirrorOf: () => null }, 'as drawn');

const inShort = (sections: readonly Section[]) =>
  sharedTemplates({ sections, joins: [] }).map((template) => [
    lettersOf(template).join(''),
    template.mirroredOf,
  ]);

describe('what shares a foundation', () => {
  test('turned copies with the first, mirrored ones with one another', () => {
    expect(
      inShort([
        section('A'),
        section('B', copy('A', true, MIRROR)),
        section('C', copy('A', false, translation(3, 0))),
        section('D'),
        section('E', copy('D', false, translation(1, 0))),
        section('F', copy('A', true, MIRROR)),
      ]),
    ).toEqual([
      ['AC', null],
      ['BF', 'A'],
      ['DE', null],
    ]);
  });

  test('a copy of a copy is a copy of the first: twice mirrored is not mirrored', () => {
    const sections = [
      section('A'),
      section('B', copy('A', true, MIRROR)),
      section('C', copy('B', true, MIRROR)),
      section('D', copy('C', false, translation(5, 2))),
    ];
    const [a, ...others] = sharedTemplates({ sections, joins: [] });
    expect(others.map((template) => [lettersOf(template), template.mirroredOf])).toEqual([[['B'], 'A']]);
    expect(lettersOf(a!)).toEqual(['A', 'C', 'D']);
    expect(a!.copies.map(({ toTemplate }) => toTemplate)).toEqual([
      expect.objectContaining({ a: 1, d: 1 }),
      expect.objectContaining({ a: 1, d: 1, e: -5, f: -2 }),
    ]);
  });

  test('letters in any order are left as the plan has them', () => {
    const turned = copy('Q', false, rotation(90));
    expect(inShort([section('Q'), section('B'), section('A', turned)])).toEqual([
      ['QA', null],
      ['B', null],
    ]);
  });

  test('a copy of what does not come before it is a bug', () => {
    const lost = [section('A', copy('B', false, identity())), section('B')];
    expect(() => sharedTemplates({ sections: lost, joins: [] })).toThrow('Section A is a copy of B');
  });
});

test('each copy is carried on to the section that is laid out', () => {
  let copies = 0;
  for (const { plan } of [whirl(), moorings(), star(6), pilings(5)])
    for (const template of sharedTemplates(plan))
      for (const { section: one, toTemplate } of template.copies) {
        copies++;
        expect(misfit(transformPolygon(toTemplate, one.outline), template.section.outline)).toBeLessThan(
          1e-9,
        );
        // Not only as a shape: there.
        const [sum, wanted] = [transformPolygon(toTemplate, one.outline), template.section.outline].map(
          (ring) => ring.reduce((total, { x, y }) => total + x + y, 0),
        );
        expect(sum).toBeCloseTo(wanted!, 9);
      }
  expect(copies).toBe(3 + 2 + 1 + 4);
});

test('which sections are alike', () => {
  expect(alikeSections(moorings().plan)).toEqual([
    ['A', 'D'],
    ['B', 'C'],
  ]);
  expect(alikeSections(star(4).plan)).toEqual([['A', 'C']]);
  expect(alikeSections(house().plan)).toEqual([]);
});
