import type { Cloth } from '@seamwright/cloth';
import { describe, expect, test } from 'vitest';
import { hasPoppler, readPdf } from '../../../e2e/support/pdf.ts';
import { type FoundationJob, layFoundations, type TextMark, writePdf } from '../src/index.ts';
import { type Block, block, lantern, pinwheel, rectangle, usual } from './blocks.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';
import { openPdf } from './pdfjs.ts';

const textsOf = (job: FoundationJob): readonly TextMark[] =>
  laid(job)
    .sheets.flatMap(({ marks }) => marks)
    .filter((mark) => mark.kind === 'text');

const SEA: Cloth = { id: 'sea', name: 'Sea', usableWidth: 40, directional: false };

/** All patches from one fabric, cut with a quarter inch of spare and rounded up to the next quarter. */
const cutOf = ({ arrangement }: Block, cloth: Cloth | null = SEA): NonNullable<FoundationJob['cutting']> => ({
  rules: { spare: 1 / 4, turn: 0, roundUpTo: 1 / 4 },
  cloths: arrangement.patches.map(() => cloth),
});

describe('what to cut, beside the patches', () => {
  const two = block(rectangle(4, 4), [[0, 0.1, 4, 0.1]]);

  test('stands under the number where there is room, else in the caption', () => {
    const texts = textsOf(usual(two, 'Two', { cutting: cutOf(two) }));
    const said = texts.filter(({ content }) => /\bcut \d/.test(content));
    // 4 × 0.1 and 4 × 3.9 in finished; 1/4 in allowance and 1/4 in spare on every side are 1 in more each way: 5 × 1.1 and
    // 5 × 4.9, to the next quarter.
    expect(said.map(({ role, content }) => [role, content.replace(/cut 1¼ × 5/, 'cut 5 × 1¼')])).toEqual(
      expect.arrayContaining([
        ['label', expect.stringMatching(/^cut 5 × 5 in$/)],
        ['caption', 'cut 5 × 1¼ in: A1'],
      ]),
    );
    expect(said).toHaveLength(2);
  });

  test('is each size’s own, with the allowance that stays the same', () => {
    const plain = block(rectangle(4, 4), []);
    const sizes = [1, 2].map((scale) => ({ scale, copies: 1 }));
    const said = textsOf(usual(plain, 'Plain', { cutting: cutOf(plain), sizes, unit: 'cm' })).filter(
      ({ content }) => /^cut \d/.test(content),
    );
    // 4 + 1 and 8 + 1 in, of exactly 2.54 cm.
    expect(said.map(({ content }) => content).sort()).toEqual(['cut 12.7 × 12.7 cm', 'cut 22.86 × 22.86 cm']);
  });

  /** Whether the first side is the longer one, of each half that is told of by foundations of that name. */
  const firstIsLonger = (job: FoundationJob, name: string) =>
    textsOf(job).flatMap(({ content, section }) => {
      const sides = /^half of (\d)(\S*) × (\d)(\S*) in/.exec(content);
      return sides === null || section !== name ? [] : [Number(sides[1]) > Number(sides[3])];
    });

  // Cut from bottom left to top right, the half at the top left has its right angle there, the first side to the right of it and the
  // second below. Such are both halves of a block that is divided from bottom left to top right; of its mirror image, none is.
  test('tells from which rectangle a half comes, and how it is cut; the mirrored block’s comes from the other', () => {
    const rising = block(rectangle(6, 2), [[0, 2, 6, 0]]);
    const falling = block(rectangle(6, 2), [[0, 0, 6, 2]]);
    const job = (of: Block) =>
      usual(of, 'Sail', { cutting: cutOf(of), sizes: [{ scale: 1, copies: 1, mirrored: 1 }] });
    expect(firstIsLonger(job(rising), 'A')).toEqual([true, true]);
    expect(firstIsLonger(job(rising), 'A-mirrored')).toEqual([false, false]);
    expect(firstIsLonger(job(falling), 'A')).toEqual([false, false]);
    expect(firstIsLonger(job(falling), 'A-mirrored')).toEqual([true, true]);
    const words = textsOf(job(rising)).map(({ content }) => content);
    expect(words.join(' ')).toMatch(/half of a rectangle: .* from bottom left to top right/);
  });

  test('of a square only says to cut it corner to corner', () => {
    const halved = block(rectangle(4, 4), [[0, 0, 4, 4]]);
    const words = textsOf(usual(halved, 'Halved', { cutting: cutOf(halved) })).map(({ content }) => content);
    expect(words).toContain('half of a square: cut it corner to corner');
    expect(words.join(' ')).not.toContain('right side up');
  });

  test('is not said where a foundation is for sections of which pieces are cut unlike', () => {
    const shared = pinwheel(4);
    const upright: Cloth = { ...SEA, id: 'boats', directional: true };
    const job = (cloths: readonly Cloth[]) =>
      usual(shared, 'Pinwheel', {
        shareTemplates: true,
        cutting: {
          ...cutOf(shared),
          cloths: shared.arrangement.patches.map((_, i) => cloths[i % cloths.length]!),
        },
      });
    const [a] = shared.plan.sections;
    const said = (of: FoundationJob) =>
      textsOf(of).filter(({ content }) => /^(cut|half of) \d/.test(content) && !content.includes(':'));
    expect(said(job([SEA])).length).toBe(a!.order.length);
    // One piece of a print with an up is a rectangle along the grain, its like on the other section is half of one.
    const mixed = usual(shared, 'Pinwheel', {
      shareTemplates: true,
      cutting: {
        ...cutOf(shared),
        cloths: shared.arrangement.patches.map((_, i) => (i === a!.order[0] ? upright : SEA)),
      },
    });
    expect(said(mixed).length).toBe(a!.order.length - 1);
  });

  test('by rules that nothing can be cut by is a problem', () => {
    const of = lantern(4);
    const { cloths } = cutOf(of);
    const cutting = { rules: { spare: 1 / 4, turn: 90, roundUpTo: 1 / 4 }, cloths };
    expect(layFoundations(usual(of, 'Lantern', { cutting }))).toMatchObject({
      ok: false,
      problem: { what: 'A piece cannot be turned by 90° and still cover' },
    });
  });

  test.skipIf(!hasPoppler)('is read from the saved file', async () => {
    const bytes = await writePdf(laid(usual(two, 'Two', { cutting: cutOf(two) })), pageFonts);
    const { pages } = await openPdf(bytes);
    const read = [
      pages.map(({ text }) => text).join('\n'),
      readPdf(bytes)
        .map(({ text }) => text)
        .join('\n'),
    ];
    for (const text of read) {
      expect(text).toMatch(/cut 5 × 5 in/);
      expect(text).toMatch(/cut (5 × 1¼|1¼ × 5) in: A1/);
    }
  });
});
