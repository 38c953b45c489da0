import { describe, expect, test } from 'vitest';
import { lantern, pinwheel, usual } from '../../test/blocks.ts';
import { laid } from '../../test/laid.ts';
import { writeSvg } from './svg.ts';

/** Opens and closes of tags in order; the ids of what is open at each path and text. */
function walk(svg: string): readonly { tag: string; attributes: string; inside: readonly string[] }[] {
  const open: { tag: string; id: string }[] = [];
  const found: { tag: string; attributes: string; inside: readonly string[] }[] = [];
  for (const [, close, tag, attributes, empty] of svg.matchAll(/<(\/?)([a-zA-Z]+)([^>]*?)(\/?)>/g)) {
    if (close) {
      expect(open.pop()?.tag).toBe(tag);
      continue;
    }
    found.push({
      tag: tag!,
      attributes: attributes!,
      inside: open.map(({ id }) => id).filter((id) => id !== ''),
    });
    if (!empty) open.push({ tag: tag!, id: /id="([^"]*)"/.exec(attributes!)?.[1] ?? '' });
  }
  expect(open).toEqual([]);
  return found;
}

const attribute = (attributes: string, name: string): string | undefined =>
  new RegExp(`(?:^| )${name}="([^"]*)"`).exec(attributes)?.[1];

const cornersOf = (d: string): number[][] =>
  [...d.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

describe('a sheet as SVG', () => {
  const plan = laid(usual(pinwheel(2.5), 'Pin & <wheel> "2"'));
  const svg = writeSvg(plan, 0);
  const parts = walk(svg);
  const paths = parts.filter(({ tag }) => tag === 'path');

  test('has the paper’s true size', () => {
    // Letter: ANSI/ASME Y14.1. 1/72 in: ISO 32000-1, table 30.
    expect(attribute(parts[0]!.attributes, 'width')).toBe('8.5in');
    expect(attribute(parts[0]!.attributes, 'height')).toBe('11in');
    expect(attribute(parts[0]!.attributes, 'viewBox')).toBe('0 0 612 792');
    // A4: ISO 216.
    const [a4] = walk(writeSvg(laid(usual(lantern(3), 'Lantern', { paper: 'a4' })), 0));
    expect(attribute(a4!.attributes, 'width')).toBe('210mm');
    expect(attribute(a4!.attributes, 'height')).toBe('297mm');
    expect(attribute(a4!.attributes, 'viewBox')).toBe('0 0 595.2756 841.8898');
  });

  test('has one group for each section, and in it one for each kind of mark', () => {
    const groups = parts.filter(({ tag }) => tag === 'g');
    const ids = (inside: readonly string[]) =>
      groups
        .filter((group) => group.inside.join() === inside.join())
        .map(({ attributes }) => attribute(attributes, 'id'));
    expect(ids([])).toEqual(['section-A', 'section-B', 'sheet']);
    expect(ids(['section-A'])).toEqual([
      'cutting-line',
      'sew-lines',
      'finished-outline',
      'match-marks',
      'labels',
      'check-squares',
    ]);
    expect(ids(['section-B'])).toEqual([
      'cutting-line',
      'sew-lines',
      'finished-outline',
      'match-marks',
      'labels',
    ]);
  });

  test('outline solid and closed, cutting line dashed and closed, sew lines straight', () => {
    const of = (group: string) => paths.filter(({ inside }) => inside.at(-1) === group);
    for (const { attributes } of of('finished-outline')) {
      expect(attribute(attributes, 'd')).toMatch(/ Z$/);
      expect(attribute(attributes, 'stroke-dasharray')).toBeUndefined();
    }
    for (const { attributes } of of('cutting-line')) {
      expect(attribute(attributes, 'd')).toMatch(/ Z$/);
      expect(attribute(attributes, 'stroke-dasharray')).toBe('5 3');
    }
    for (const { attributes } of [...of('sew-lines'), ...of('match-marks')]) {
      expect(attribute(attributes, 'd')).toMatch(/^M[-\d.]+ [-\d.]+ L[-\d.]+ [-\d.]+$/);
      expect(attribute(attributes, 'stroke-dasharray')).toBeUndefined();
    }
    expect(of('finished-outline')).toHaveLength(2);
    expect(of('cutting-line')).toHaveLength(2);
  });

  test('the check squares are exactly 1 in and 50 mm', () => {
    const sides = paths
      .filter(({ inside }) => inside.at(-1) === 'check-squares')
      .map(({ attributes }) => {
        const [p, q, r, s] = cornersOf(attribute(attributes, 'd')!);
        expect([q![1], r![0], s![1], s![0]]).toEqual([p![1], q![0], r![1], p![0]]);
        expect(q![0]! - p![0]!).toBeCloseTo(r![1]! - q![1]!, 4);
        return (q![0]! - p![0]!) / 72;
      });
    // 1 in = 25.4 mm: addendum to NBS Circular 572.
    expect(sides.map((side) => side * 25.4).sort((p, q) => p - q)).toEqual([
      expect.closeTo(25.4, 4),
      expect.closeTo(50, 4),
    ]);
  });

  test('names are escaped', () => {
    expect(svg).toContain('Pin &amp; &lt;wheel&gt; &quot;2&quot;');
  });

  test('every mark of the sheet is written once', () => {
    expect(parts.filter(({ tag }) => tag === 'path' || tag === 'text')).toHaveLength(
      plan.sheets[0]!.marks.length,
    );
  });

  test('on a tile each outline is whole, and seen through a window that is defined', () => {
    const tile = walk(writeSvg(laid(usual(lantern(10), 'Lantern')), 0));
    const windows = tile
      .filter(({ tag }) => tag === 'clipPath')
      .map(({ attributes: a }) => attribute(a, 'id'));
    const [rect, ...others] = tile.filter(({ tag }) => tag === 'rect').map(({ attributes: a }) => a);
    expect(others).toEqual([]);
    for (const group of ['finished-outline', 'cutting-line']) {
      const [outline, ...more] = tile.filter(({ tag, inside }) => tag === 'path' && inside.at(-1) === group);
      expect(more).toEqual([]);
      expect(attribute(outline!.attributes, 'd')).toMatch(/ Z$/);
      const id = /^url\(#(.*)\)$/.exec(attribute(outline!.attributes, 'clip-path')!)?.[1];
      expect(windows).toEqual([id]);
      const [xs, ys] = [0, 1].map((k) => cornersOf(attribute(outline!.attributes, 'd')!).map((p) => p[k]!));
      // 10 in finished, 1/4 in allowance.
      const side = group === 'finished-outline' ? 720 : 756;
      expect(Math.max(...xs!) - Math.min(...xs!)).toBeCloseTo(side, 3);
      expect(Math.max(...ys!) - Math.min(...ys!)).toBeCloseTo(side, 3);
    }
    // The window keeps the margin of 1/4 in, and shows less than all.
    expect(Number(attribute(rect!, 'x'))).toBeGreaterThanOrEqual(18);
    expect(Number(attribute(rect!, 'width'))).toBeLessThan(720);
  });

  test('a sheet that is not there is a bug of the caller', () => {
    expect(() => writeSvg(plan, 1)).toThrow(RangeError);
  });
});
