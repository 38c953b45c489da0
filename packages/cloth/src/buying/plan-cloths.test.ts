import { sentence } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { half, piece } from '../../test/pieces.ts';
import { load } from '../../test/solver.ts';
import { layerCautions } from '../chart/cautions.ts';
import { cuttingChart } from '../chart/chart.ts';
import { cuttingReport } from '../chart/report.ts';
import type { Cloth, PieceCut } from '../types.ts';
import { type ClothPlan, noteText, PLAIN_RULES, type PlanRules, planCloths } from './plan-cloths.ts';

const SEA: Cloth = { id: 'sea', name: 'Sea', usableWidth: 40, directional: false };
const SKY: Cloth = { id: 'sky', name: 'Sky', usableWidth: 42, directional: true };

async function planned(
  pieces: readonly PieceCut[],
  blocks: number,
  rules: Partial<PlanRules> = {},
  cloths: readonly Cloth[] = [SEA, SKY],
): Promise<readonly ClothPlan[]> {
  const rows = cuttingChart(pieces, { blocks, cloths });
  const plans = await planCloths(rows, cloths, { ...PLAIN_RULES, ...rules }, load);
  if (!plans.ok) throw new Error(sentence(plans.problem));
  return plans.value;
}

describe('what is cut from each fabric, and bought', () => {
  // quiltingboard.com, post 6228687: 63 squares of 9 1/2 at 40 in take 152 in. Bought 4 1/4 yd: exact. The waste by hand:
  // 152 × 40 = 6080, 63 × 9.5² = 5685.75.
  it('is the published example', async () => {
    const [plan] = await planned([piece('A1', 9.5, 9.5)], 63);
    expect(plan).toMatchObject({ purchase: { buyYards: 4.25, buyMetres: 3.9 }, notes: [] });
    expect(plan!.wastePercent).toBeCloseTo(100 * (1 - 5685.75 / 6080), 9);
  });

  it('follows each fabric’s own width and print, and cuts the unnamed one at the usual width', async () => {
    const plans = await planned(
      [
        piece('A1', 3, 13),
        piece('A2', 14, 3, { cloth: 'sky' }),
        piece('A3', 20, 2, { cloth: null }),
        piece('A4', 20, 2, { cloth: 'gone' }),
      ],
      3,
    );
    expect(plans.map(({ cloth, plan }) => [cloth.id, cloth.usableWidth, plan.lengthInches])).toEqual([
      ['sea', 40, 3],
      ['sky', 42, 3],
      ['', 40, 4],
      ['gone', 40, 4],
    ]);
  });

  it('takes one more of the largest size when the maker wants a spare', async () => {
    const pieces = [piece('A1', 5, 5), piece('A2', 4, 4)];
    const [plain] = await planned(pieces, 8);
    const [spared] = await planned(pieces, 8, { spareOfLargest: true });
    expect([plain!.plan.lengthInches, spared!.plan.lengthInches]).toEqual([9, 14]);
    expect(spared!.wastePercent).toBeGreaterThan(plain!.wastePercent);
  });

  it('counts the odd half of a square as waste', async () => {
    // Three halves from two squares of 4: 24 of 4 × 40 square inches are used.
    const [plan] = await planned([piece('A1', 4, 4, { shape: 'half-rectangle' })], 3);
    expect(plan!.plan.lengthInches).toBe(4);
    expect(plan!.wastePercent).toBeCloseTo(85, 9);
  });

  it('tells how many fat quarters and eighths would do', async () => {
    const [plan] = await planned([piece('A1', 4, 4)], 21);
    // docsbay.net, Number of squares from a fat quarter: 20 squares of 4. From 9 × 22: 5 × 2, exact. 50 × 55 cm: 5 × 4.
    expect(
      plan!.sheets.map(({ sheet, sheets, provenLeast }) => [sheet.name, sheets.length, provenLeast]),
    ).toEqual([
      ['fat quarter', 2, true],
      ['fat eighth', 3, true],
      ['metric fat quarter', 2, true],
    ]);
  });

  it('says what is too long or too large, and plans the rest', async () => {
    const plans = await planned(
      [
        piece('A1', 45, 3),
        piece('A2', 45, 41),
        piece('A3', 5, 5),
        piece('B1', 45, 3, { cloth: 'sky' }),
        half('B2', 43, 50, { cloth: 'sky' }),
      ],
      1,
    );
    expect(plans.map(({ plan }) => plan.lengthInches)).toEqual([50, 45]);
    expect(plans.flatMap(({ notes, cloth }) => notes.map((note) => noteText(note, cloth, 'in')))).toEqual([
      'A1: cut 45 × 3 in, and the fabric is 40 in wide: cut along the length of the fabric',
      'A2: cut 45 × 41 in, and the fabric is 40 in wide: choose a wider fabric, or divide the patch; nothing is planned for it',
      'B1: cut 45 × 3 in, and the fabric is 42 in wide: cut along the length of the fabric, so the print lies on its side',
      'B2: cut 43 × 50 in, and the fabric is 42 in wide: choose a wider fabric, or divide the patch; nothing is planned for it',
    ]);
    const straight = { ...SKY, directional: false, straight: true };
    const [along] = await planned([piece('B1', 45, 3, { cloth: 'sky' })], 1, {}, [straight]);
    expect(along!.notes.map(({ kind }) => kind)).toEqual(['grain-across']);
    const [nothing] = await planned([piece('A2', 45, 41)], 1);
    expect(nothing).toMatchObject({ wastePercent: 0, purchase: { buyYards: 0 } });
  });

  it.each([
    [{ usableWidth: 0 }, [], 'The usable width of the fabric is no length above 0. Give it, such as 40.'],
    [
      {},
      [{ ...SEA, usableWidth: Number.NaN }],
      'The usable width of the fabric is no length above 0 (fabric "Sea"). Give it, such as 40.',
    ],
    [{ shrinkage: -0.1 }, [], 'The shrinkage is no part from 0 % to below 100 %. Give it, such as 5 %.'],
  ])('refuses %j with a sentence', async (rules, cloths, expected) => {
    const rows = cuttingChart([piece('A1', 3, 3)]);
    const plans = await planCloths(rows, cloths, { ...PLAIN_RULES, ...rules });
    expect(plans.ok ? '' : sentence(plans.problem)).toBe(expected);
  });

  it('warns of folded fabric where triangles have mirror images, and only there', () => {
    const cautions = (pieces: readonly PieceCut[]) => layerCautions(cuttingChart(pieces)).length;
    expect(cautions([half('A1', 2, 3)])).toBe(1);
    expect(cautions([half('A1', 3, 3), piece('A2', 2, 3)])).toBe(0);
  });
});

describe('the cutting report', () => {
  const rules = { allowance: 0.25, spare: 0.25, turn: 5, roundUpTo: 0.25 };

  it('has the shape that other programs rely on', async () => {
    const pieces = [
      piece('A1', 3.5, 7, { toleranceAngle: 3.2 }),
      half('A2', 2.5, 3.5),
      half('A3', 2.5, 3.5),
      piece('A4', 3 - 1e-12, 3, { cloth: null }),
    ];
    const rows = cuttingChart(pieces, { blocks: 4 });
    const report = cuttingReport(pieces, rules, rows, await planned(pieces, 4));
    expect(report).toEqual({
      format: 'seamwright-cutting/1',
      unit: 'in',
      allowance: 0.25,
      spare: 0.25,
      roundUpTo: 0.25,
      pieces: [
        {
          name: 'A1',
          cloth: 'Sea',
          shape: 'rectangle',
          width: 3.5,
          height: 7,
          angle: 0,
          toleranceShift: 0.25,
          toleranceAngle: 3.2,
        },
        expect.objectContaining({ name: 'A2', shape: 'half-rectangle' }),
        expect.objectContaining({ name: 'A3' }),
        expect.objectContaining({ name: 'A4', cloth: '', width: 3 }),
      ],
      rows: [
        { cloth: 'Sea', shape: 'rectangle', width: 3.5, height: 7, cut: 4, yields: 4, pieces: ['A1'] },
        {
          cloth: 'Sea',
          shape: 'half-rectangle',
          width: 2.5,
          height: 3.5,
          cut: 4,
          yields: 8,
          pieces: ['A2', 'A3'],
        },
        { cloth: '', shape: 'rectangle', width: 3, height: 3, cut: 4, yields: 4, pieces: ['A4'] },
      ],
      cloths: [
        {
          cloth: 'Sea',
          usableWidth: 40,
          // By hand: 4 × 7 and 4 × 2½ are 38 in of one strip of 3½, the least height that either has beside 7 and 2½.
          strips: [
            {
              height: 3.5,
              count: 1,
              cuts: [
                { width: 7, count: 4 },
                { width: 2.5, count: 4 },
              ],
            },
          ],
          lengthInches: 3.5,
          buyYards: 0.125,
          buyMetres: 0.1,
          provenLeast: true,
          wastePercent: 5,
        },
        expect.objectContaining({
          cloth: '',
          lengthInches: 3,
          strips: [expect.objectContaining({ height: 3, count: 1 })],
        }),
      ],
    });
  });

  it('tells fabrics of one name apart', async () => {
    const twin = { ...SEA, id: 'sea2' };
    const pieces = [piece('A1', 3, 3), piece('A2', 3, 3, { cloth: 'sea2' })];
    const plans = await planned(pieces, 1, {}, [SEA, twin]);
    const report = cuttingReport(pieces, rules, cuttingChart(pieces), plans);
    expect(report.pieces.map(({ cloth }) => cloth)).toEqual(['Sea (sea)', 'Sea (sea2)']);
  });
});
