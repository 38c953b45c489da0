import type { Arrangement } from '@seamwright/arrangement';
import { determinant, transformPolygon } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { touching } from '../src/contact.ts';
import { planAlternatives, planSewing, replay, sewingReport } from '../src/index.ts';
import { orderCosts } from '../src/order/choose.ts';
import { blockOf, grid, l, patchAt } from './grid-block.ts';

const sawtooth = [
  l(1, 0, 1, 4),
  l(3, 0, 3, 4),
  l(0, 1, 4, 1),
  l(0, 3, 4, 3),
  l(1, 0, 2, 1),
  l(4, 1, 3, 2),
  l(3, 4, 2, 3),
  l(0, 3, 1, 2),
  l(2, 1, 3, 0),
  l(3, 2, 4, 3),
  l(2, 3, 1, 4),
  l(1, 2, 0, 1),
];
const pinwheel = [
  ...[l(2, 0, 2, 4), l(0, 2, 4, 2)],
  l(0, 0, 2, 2),
  l(4, 0, 2, 2),
  l(4, 4, 2, 2),
  l(0, 4, 2, 2),
];

describe('sections that repeat', () => {
  it('a pinwheel is two of one template', () => {
    const plan = planSewing(blockOf(4, 4, pinwheel));
    expect(plan.figures).toMatchObject({ foundations: 2, templates: 1 });
    const copy = plan.sections[1]!.copyOf!;
    expect(copy.letter).toBe('A');
  });

  it('a copy is the template, carried over: same outline, same order, patch by patch', () => {
    for (const splits of [sawtooth, pinwheel, grid(4)]) {
      const block = blockOf(4, 4, splits);
      const plan = planSewing(block);
      const copies = plan.sections.filter(({ copyOf }) => copyOf !== undefined);
      expect(copies.length).toBe(plan.figures.foundations - plan.figures.templates);
      for (const copy of copies) {
        const template = plan.sections.find(({ letter }) => letter === copy.copyOf!.letter)!;
        expect(template.copyOf).toBeUndefined();
        expect(copy.optimal).toBe(template.optimal);
        // What is taken over from the template is what counting anew comes to.
        expect(copy.costs).toEqual(orderCosts(block, touching(block), copy.order));
        template.order.forEach((p, k) => {
          const image = transformPolygon(copy.copyOf!.transform, block.patches[p]!.polygon);
          const target = block.patches[copy.order[k]!]!.polygon;
          for (const corner of image) {
            expect(Math.min(...target.map((q) => Math.hypot(q.x - corner.x, q.y - corner.y)))).toBeLessThan(
              1e-9,
            );
          }
        });
      }
      expect(replay(sewingReport(block, plan))).toEqual([]);
    }
  });

  it('of several ways the one that brings match points on to match points, then the one that turns least', () => {
    const turnOf = (block: Arrangement, letter: string) => {
      const { transform } = planSewing(block).sections.find((s) => s.letter === letter)!.copyOf!;
      return Math.round((Math.atan2(transform.b, transform.a) * 180) / Math.PI);
    };
    // Moved to the right, the left half of a window would have to meet its other half at its outer edge.
    expect(Math.abs(turnOf(blockOf(2, 2, grid(2)), 'B'))).toBe(180);
    // The middle strip of a nine-patch has match points on both sides: moved or turned, it meets those of the first.
    expect(turnOf(blockOf(3, 3, grid(3)), 'B')).toBe(0);
    expect(Math.abs(turnOf(blockOf(3, 3, grid(3)), 'C'))).toBe(180);
  });

  it('a section that the maker wants in an order of its own is no copy, and is counted as none', () => {
    const block = blockOf(2, 2, grid(2));
    const plan = planSewing(block, { pins: [{ kind: 'first', patch: patchAt(block, 1.5, 1.5) }] });
    expect(plan.sections.every(({ copyOf }) => copyOf === undefined)).toBe(true);
    expect(plan.figures).toMatchObject({ foundations: 2, templates: 2 });
  });

  it('mirrored copies are known as such', () => {
    // Two halves of an oblong, each with one slanting seam: mirror images of each other, and no turned ones.
    const block = blockOf(4, 2, [l(2, 0, 2, 2), l(0, 2, 1, 0), l(4, 2, 3, 0)]);
    const plan = planSewing(block, {
      pins: [{ kind: 'apart', patches: [patchAt(block, 1.5, 1), patchAt(block, 2.5, 1)] }],
    });
    expect(plan.figures).toMatchObject({ foundations: 2, templates: 1 });
    expect(plan.sections[1]!.copyOf).toMatchObject({ letter: 'A', mirrored: true });
    expect(determinant(plan.sections[1]!.copyOf!.transform)).toBeCloseTo(-1, 12);
  });
});

describe('alternatives side by side', () => {
  it('are all good, differ, and each is best by its own figure', () => {
    const block = blockOf(4, 4, sawtooth);
    const all = planAlternatives(block, {}, 3);
    for (const { plan } of all) expect(replay(sewingReport(block, plan))).toEqual([]);
    const by = (name: string) => all.find((a) => a.name === name)?.plan.figures ?? all[0]!.plan.figures;
    expect(by('fewest foundations').foundations).toBe(4);
    expect(by('most repetition').templates).toBeLessThanOrEqual(by('fewest foundations').templates);
    const small = all.find(({ name }) => name === 'small sections')!.plan;
    expect(Math.max(...small.sections.map(({ order }) => order.length))).toBeLessThanOrEqual(3);
  });

  it('one that comes out the same is left out', () => {
    expect(planAlternatives(blockOf(2, 2, [l(1, 0, 1, 2)])).map(({ name }) => name)).toEqual([
      'fewest foundations',
    ]);
  });
});
