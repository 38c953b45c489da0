import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { half, piece } from '../../test/pieces.ts';
import type { Cloth } from '../types.ts';
import { chartOfBlocks, cuttingChart } from './chart.ts';

const print: Cloth = { id: 'sea', name: 'Sea', usableWidth: 40, directional: true };

describe('the cutting chart', () => {
  it('puts pieces of one size from one fabric into one row, turned ones too', () => {
    const rows = cuttingChart([piece('A1', 2, 3), piece('A2', 3, 2), piece('A3', 2, 3, { cloth: 'sky' })]);
    expect(rows).toEqual([
      { cloth: 'sea', shape: 'rectangle', width: 2, height: 3, cut: 2, yields: 2, pieces: ['A1', 'A2'] },
      { cloth: 'sky', shape: 'rectangle', width: 2, height: 3, cut: 1, yields: 1, pieces: ['A3'] },
    ]);
  });

  it('turns no piece of a directional fabric', () => {
    const rows = cuttingChart([piece('A1', 2, 3), piece('A2', 3, 2)], { cloths: [print] });
    expect(rows.map(({ width, height, cut }) => [width, height, cut])).toEqual([
      [2, 3, 1],
      [3, 2, 1],
    ]);
  });

  it('turns no piece of a fabric that lies along its grain, and uses both halves of a rectangle', () => {
    const straight = { ...print, directional: false, straight: true };
    const rows = cuttingChart([piece('A1', 2, 3), piece('A2', 3, 2), half('A3', 2, 2), half('A4', 2, 2)], {
      cloths: [straight],
    });
    expect(rows.map(({ width, height, cut }) => [width, height, cut])).toEqual([
      [2, 3, 1],
      [3, 2, 1],
      [2, 2, 1],
    ]);
  });

  it('counts for several blocks, and cuts half as many half-rectangles, rounded up', () => {
    const pieces = [half('A1', 3, 3), half('A2', 3, 3), half('A3', 3, 3), piece('A4', 6, 2)];
    const counts = (blocks: number) =>
      cuttingChart(pieces, { blocks }).map(({ cut, yields }) => [cut, yields]);
    expect(counts(1)).toEqual([
      [1, 1],
      [2, 3],
    ]);
    expect(counts(5)).toEqual([
      [5, 5],
      [8, 15],
    ]);
  });

  it('cuts one triangle only from each half-rectangle of a directional fabric', () => {
    const [row] = cuttingChart([half('A1', 3, 3), half('A2', 3, 3)], { cloths: [print] });
    expect(row).toMatchObject({ cut: 2, yields: 2 });
  });

  it('keeps triangles and their mirror images apart', () => {
    // The right angle is at the corner where width and height begin, clockwise: exact, plane geometry.
    const rows = cuttingChart([half('A1', 2, 4), half('A2', 4, 2), half('A3', 2, 4)]);
    expect(rows.map(({ width, cut, pieces }) => [width, cut, pieces])).toEqual([
      [2, 1, ['A1', 'A3']],
      [4, 1, ['A2']],
    ]);
    expect(
      cuttingChart([half('A1', 2, 4)], { blocks: 2, mirrored: 2 }).map(({ width, height, cut }) => [
        width,
        height,
        cut,
      ]),
    ).toEqual([
      [2, 4, 1],
      [4, 2, 1],
    ]);
    expect(cuttingChart([half('A1', 3, 3)], { mirrored: 1 })).toMatchObject([{ cut: 1, yields: 2 }]);
  });

  it('has a row for each section when asked for', () => {
    const pieces = [piece('B1', 2, 2), piece('A1', 2, 2), piece('AA1', 2, 2), piece('A2', 3, 2)];
    const rows = cuttingChart(pieces, { bySection: true });
    expect(rows.map(({ section, pieces: names }) => [section, names])).toEqual([
      ['A', ['A2']],
      ['A', ['A1']],
      ['B', ['B1']],
      ['AA', ['AA1']],
    ]);
  });

  it('adds the blocks of a pattern up, pairs across blocks too', () => {
    const rows = chartOfBlocks([{ pieces: [half('Boat A1', 3, 3)] }, { pieces: [half('Lantern A1', 3, 3)] }]);
    expect(rows).toMatchObject([{ cut: 1, yields: 2, pieces: ['Boat A1', 'Lantern A1'] }]);
  });

  it('yields each piece of each block, whatever is merged', () => {
    const size = fc.integer({ min: 1, max: 4 });
    const any = fc.record({
      width: size,
      height: size,
      cloth: fc.constantFrom('sea', 'sky', null),
      shape: fc.constantFrom('rectangle' as const, 'half-rectangle' as const),
    });
    fc.assert(
      fc.property(
        fc.array(any),
        fc.nat(4),
        fc.nat(4),
        fc.boolean(),
        (drafts, blocks, mirrored, bySection) => {
          const pieces = drafts.map((draft, i) => piece(`A${i + 1}`, draft.width, draft.height, draft));
          const rows = cuttingChart(pieces, { blocks, mirrored, bySection, cloths: [print] });
          expect(rows.reduce((sum, { yields }) => sum + yields, 0)).toBe(pieces.length * (blocks + mirrored));
          for (const row of rows) {
            expect(row.yields).toBeLessThanOrEqual(row.cut * (row.shape === 'rectangle' ? 1 : 2));
            for (const name of row.pieces) {
              const { width, height, cloth, shape } = pieces.find((each) => each.name === name)!;
              expect([row.cloth, row.shape]).toEqual([cloth, shape]);
              expect([row.width, row.height].sort()).toEqual([width, height].sort());
            }
          }
        },
      ),
      { seed: 6 },
    );
  });
});
