import { readFileSync } from 'node:fs';
import { demoPattern, writePattern } from '@seamwright/pattern';
import { describe, expect, it } from 'vitest';
import { readSvg } from '../../../e2e/support/svg.ts';
import { Folder, HORIZON, PANES, ran } from './harness.ts';

const folder = new Folder();
const horizon = folder.file('horizon.svg', HORIZON);

/** The pages of a call as SVG. */
async function pagesOf(file: string, ...options: string[]): Promise<readonly string[]> {
  const out = folder.file('pages.svg');
  const { status, out: said, complaints } = await ran('foundations', file, '--out', out, ...options);
  expect([status, complaints]).toEqual([0, []]);
  const [, paths] = /Wrote (.*): \d+ pages?/.exec(said)!;
  return paths!.split(', ').map((path) => readFileSync(path, 'utf8'));
}

const wordsOf = (svg: string): readonly string[] =>
  [...svg.matchAll(/<text [^>]*>([^<]*)</g)].map(([, words]) => words!);

describe('what stands on foundations', () => {
  it('is in light ink where that is asked for', async () => {
    const [[dark], [light]] = [await pagesOf(horizon), await pagesOf(horizon, '--ink', 'LIGHT')];
    const blacks = (svg: string) => svg.match(/stroke="#000(000)?"/g)?.length ?? 0;
    expect(blacks(light!)).toBeLessThan(blacks(dark!));
    expect(new Set(wordsOf(light!))).toEqual(new Set(wordsOf(dark!)));
  });

  it('are lengths of seam lines', async () => {
    const [plain, told] = [await pagesOf(horizon), await pagesOf(horizon, '--seam-lengths')];
    // The seam across the square of 6 in.
    expect(wordsOf(plain[0]!)).not.toContain('6 in');
    expect(wordsOf(told[0]!)).toContain('6 in');
  });

  it('is what to cut, by the rules of "cutting"', async () => {
    // 6 × 4 and 6 × 2 in finished and, on every side, 1/4 in allowance and 1/8 in spare: 6 3/4 × 4 3/4 and × 2 3/4, rounded up.
    const cut = (words: readonly string[]) => words.filter((text) => /^cut \d/.test(text)).sort();
    const [page] = await pagesOf(horizon, '--cut-sizes', '--spare', '1/8', '--round-up-to', '1/2');
    expect(cut(wordsOf(page!))).toEqual(['cut 7 × 3 in', 'cut 7 × 5 in']);
    const [spare] = await pagesOf(horizon, '--cut-sizes');
    expect(cut(wordsOf(spare!))).toEqual(['cut 7 × 3 in', 'cut 7 × 5 in']);
  });

  it('are the fabrics of the colourway that is asked for', async () => {
    const pattern = demoPattern();
    const [sea, sail] = pattern.fabrics!.map(({ id }) => id);
    const block = pattern.blocks.find(({ name }) => name === 'Lantern')!;
    const dressed = {
      ...pattern,
      colourways: [
        { id: 'day', name: 'Day' },
        { id: 'night', name: 'Night' },
      ],
      blocks: [
        {
          ...block,
          patches: block.patches.map((patch) => ({ ...patch, fabric: sea, fabrics: { night: sail } })),
        },
      ],
    };
    const file = folder.file('dressed.json', writePattern(dressed as typeof pattern));
    const [first, second] = pattern.fabrics!.map(({ name }) => name);
    const legend = async (...options: string[]) =>
      wordsOf((await pagesOf(file, ...options))[0]!).filter((words) => / = /.test(words));
    expect(await legend()).toEqual([]);
    expect(await legend('--fabrics')).toEqual([`a = ${first}`]);
    expect(await legend('--fabrics', '--colourway', 'night')).toEqual([`b = ${second}`]);
    const { out } = await ran('foundations', horizon, '--out', folder.file('none.pdf'), '--fabrics');
    expect(out).toContain('There are no fabrics in the file, so none is named.');
  });
});

describe('where foundations stand', () => {
  const panes = folder.file('panes.svg', PANES);

  it('is as far apart as is asked for', async () => {
    const apart = async (gap: string) => {
      const [page] = await pagesOf(panes, '--width', '4', '--gap', gap);
      const boxes = readSvg(page!)
        .paths.filter(({ dashed, closed }) => dashed && closed)
        .map(({ points }) => points.map(({ y }) => y));
      expect(boxes).toHaveLength(2);
      const [upper, lower] = boxes.sort((p, q) => Math.min(...p) - Math.min(...q));
      return (Math.min(...lower!) - Math.max(...upper!)) / 72;
    };
    // Two oblongs of 4 1/2 × 2 1/2 in with their captions one below the other: what is between them grows by the gap.
    expect((await apart('1in')) - (await apart('1/4'))).toBeCloseTo(0.75, 3);
  });

  it('is upright where that is asked for', async () => {
    const across = async (...options: string[]) => {
      const [page] = await pagesOf(panes, '--width', '16', ...options);
      const [outline] = readSvg(page!).paths.filter(({ dashed, closed }) => dashed && closed);
      const [xs, ys] = [outline!.points.map(({ x }) => x), outline!.points.map(({ y }) => y)];
      return Math.max(...xs) - Math.min(...xs) > Math.max(...ys) - Math.min(...ys);
    };
    // Of 16 1/2 × 8 1/2 in, wider than the sheet: it lies along the sheet where it may, and else is cut in two.
    expect(await across('--paper', '12x22')).toBe(false);
    expect(await across('--paper', '12x22', '--keep-upright')).toBe(true);
  });

  it('is on sheets that overlap as is asked for', async () => {
    const overlap = async (...options: string[]) => {
      const seen = (await pagesOf(horizon, '--width', '12', ...options)).map((page) => {
        const { points, window } = readSvg(page).paths.find(({ dashed, closed }) => dashed && closed)!;
        const left = Math.min(...points.map(({ x }) => x));
        return { from: window![0] - left, to: window![2] - left };
      });
      // The first two sheets are the first row.
      return (seen[0]!.to - seen[1]!.from) / 72;
    };
    expect(await overlap()).toBeCloseTo(0.5, 3);
    expect(await overlap('--overlap', '3/4')).toBeCloseTo(0.75, 3);
  });
});

describe('the check page', () => {
  it('has both squares and rulers in the unit that is asked for, on any paper', async () => {
    const out = folder.file('check.svg');
    const { status, out: said } = await ran('check-page', '--out', out, '--paper', 'a4', '--unit', 'cm');
    expect(status).toBe(0);
    expect(said).toMatch(
      /: 1 page, A4, with a ruler of \d+ cm across and one of \d+ cm down\. Print at 100 %/,
    );
    expect(readFileSync(out, 'utf8')).toMatch(/<svg [^>]*width="210mm" height="297mm"/);
  });

  it('comes out true on the printer that it is corrected for', async () => {
    const sides = async (...options: string[]) => {
      const out = folder.file('check.svg');
      expect((await ran('check-page', '--out', out, ...options)).status).toBe(0);
      return readSvg(readFileSync(out, 'utf8'))
        .paths.filter(({ closed, points }) => closed && points.length === 4)
        .map(({ points }) => {
          const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
          return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)] as const;
        });
    };
    const has = (found: readonly (readonly [number, number])[], across: number, down: number) =>
      found.some(([w, h]) => Math.abs(w - across) < 0.02 && Math.abs(h - down) < 0.02);
    // An inch and 50 mm are 72 and 141.732 points.
    const [plain, corrected] = [await sides(), await sides('--printer', '97.3%x98.9%')];
    expect([has(plain, 72, 72), has(plain, 141.732, 141.732)]).toEqual([true, true]);
    expect([
      has(corrected, 72 / 0.973, 72 / 0.989),
      has(corrected, 141.732 / 0.973, 141.732 / 0.989),
    ]).toEqual([true, true]);
  });
});
