import { readdirSync, readFileSync } from 'node:fs';
import { plainWords } from '@seamwright/arrangement';
import { type Result, sentence } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEEPEST_NESTING, LARGEST_FILE, MOST_CORNERS, MOST_SPLITS } from '../src/limits.ts';
import { readSvgDrawing, type SvgDrawing } from '../src/svg/read-svg.ts';

/** A file is a case: `svg-read` holds drawings with what is read of them, `svg-refused` those that cannot be used. */
const fixtures = new URL('./fixtures/', import.meta.url);
const textOf = (path: string) => readFileSync(new URL(path, fixtures), 'utf8');
const namesIn = (folder: string) =>
  readdirSync(new URL(folder, fixtures))
    .filter((file) => file.endsWith('.svg'))
    .map((file) => file.replace(/\.svg$/, ''));

const value = (result: Result<SvgDrawing>): SvgDrawing => {
  if (!result.ok) throw new Error(sentence(result.problem));
  return result.value;
};

const refusal = (text: string): string => {
  const result = readSvgDrawing(text);
  if (result.ok) throw new Error('This drawing was read');
  return sentence(result.problem);
};

/** As the files of expected answers have it. Twelve digits: units such as mm leave rounding behind them. */
function plain({ drawing, name, findings }: SvgDrawing) {
  const at = (id: string) => {
    const { x, y } = drawing.points[id]!;
    return [x, y].map((v) => Number(v.toFixed(12)) + 0);
  };
  return {
    ...(name !== undefined && { name }),
    outline: drawing.outline.map(at),
    splits: drawing.splits.map(({ from, to }) => [at(from), at(to)]),
    findings: findings.map(({ kind, message }) => `${kind}: ${plainWords(message)}`),
  };
}

describe('SVG drawings that are read', () => {
  it.each(namesIn('svg-read'))('%s', (name) => {
    const text = textOf(`svg-read/${name}.svg`);
    expect(plain(value(readSvgDrawing(text)))).toEqual(JSON.parse(textOf(`svg-read/${name}.json`)));
    // The same file gives the same ids.
    expect(readSvgDrawing(text)).toEqual(readSvgDrawing(text));
  });
});

describe('SVG drawings that cannot be used', () => {
  const sentences: Record<string, string> = JSON.parse(textOf('svg-refused/sentences.json'));

  it('each have a sentence', () => {
    expect(Object.keys(sentences).sort()).toEqual(namesIn('svg-refused').sort());
  });

  it.each(namesIn('svg-refused'))('%s', (name) => {
    expect(refusal(textOf(`svg-refused/${name}.svg`))).toBe(sentences[name]);
  });
});

const svg = (content: string, attributes = 'width="6in" height="6in" viewBox="0 0 6 6"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${content}</svg>`;
const SQUARE = '<rect width="6" height="6"/>';

describe('limits of SVG drawings', () => {
  it('refuse 50 MB before they are looked into', () => {
    expect(refusal('<'.repeat(50_000_000))).toBe(
      'The file is larger than 20 MB. Check that this is the right file; take pictures out of it and save it again.',
    );
    expect(refusal(svg(SQUARE + ' '.repeat(LARGEST_FILE)))).toContain('larger than 20 MB');
  });

  it('refuse groups that are nested without end', () => {
    const nested = (depth: number) => svg(`${'<g>'.repeat(depth)}${SQUARE}${'</g>'.repeat(depth)}`);
    expect(readSvgDrawing(nested(DEEPEST_NESTING - 1)).ok).toBe(true);
    expect(refusal(nested(DEEPEST_NESTING))).toMatch(/^Groups are nested more than 200 deep \(line 1\)/);
    expect(refusal(nested(10_000))).toMatch(/^Groups are nested more than 200 deep/);
  });

  it('refuse more tags and attributes than there is room for, before they are read', () => {
    const remedy = 'Save it with nothing but the block’s lines.';
    expect(refusal(svg('<g>'.repeat(2_000_000)))).toBe(`The drawing has more than 60000 tags. ${remedy}`);
    expect(refusal(svg(`<g ${'a="" '.repeat(2_000_000)}/>`))).toBe(
      `The drawing has more than 300000 attributes. ${remedy}`,
    );
  });

  it('refuse more lines than a block can have', () => {
    const line = (i: number) => `<line x1="0" y1="${i / 1000}" x2="6" y2="${i / 1000}"/>`;
    const lines = (count: number) =>
      svg(SQUARE + Array.from({ length: count }, (_, i) => line(i + 1)).join(''));
    expect(value(readSvgDrawing(lines(MOST_SPLITS))).drawing.splits).toHaveLength(MOST_SPLITS);
    expect(refusal(lines(MOST_SPLITS + 1))).toMatch(
      /^The drawing has 2001 lines, and no more than 2000 are read/,
    );
  });

  it('refuse an outline with more corners than a maker draws', () => {
    const round = (count: number) => {
      const corner = (i: number) =>
        `${3 + 3 * Math.cos((2 * Math.PI * i) / count)},${3 + 3 * Math.sin((2 * Math.PI * i) / count)}`;
      return svg(`<polygon points="${Array.from({ length: count }, (_, i) => corner(i)).join(' ')}"/>`);
    };
    expect(value(readSvgDrawing(round(MOST_CORNERS))).drawing.outline).toHaveLength(MOST_CORNERS);
    expect(refusal(round(MOST_CORNERS + 1))).toMatch(/^The outline has 1001 corners/);
  });
});

describe('what an SVG drawing becomes', () => {
  it('has its origin at the top left of the outline, and lines beyond it are kept', () => {
    const { drawing } = value(
      readSvgDrawing(svg('<polygon points="3,1 5,3 3,5 1,3"/><line x1="-20" y1="3" x2="26" y2="3"/>')),
    );
    expect(plain({ drawing, findings: [] })).toEqual({
      outline: [
        [2, 0],
        [4, 2],
        [2, 4],
        [0, 2],
      ],
      splits: [
        [
          [-21, 2],
          [25, 2],
        ],
      ],
      findings: [],
    });
  });

  it('shares points that are at the same place', () => {
    const { drawing } = value(
      readSvgDrawing(
        svg(`${SQUARE}<line x1="0" y1="0" x2="3" y2="3"/><line x1="3.0000001" y1="3" x2="6" y2="0"/>`),
      ),
    );
    expect(Object.keys(drawing.points)).toHaveLength(5);
    expect(drawing.splits[0]!.to).toBe(drawing.splits[1]!.from);
  });

  it('tells on the block where a curve was', () => {
    const { findings } = value(
      readSvgDrawing(
        svg('<rect x="1" y="1" width="4" height="4"/><path d="M 2 3 Q 3 1 4 3" transform="translate(0 1)"/>'),
      ),
    );
    expect(findings.map(({ kind, at }) => ({ kind, at }))).toEqual([
      { kind: 'svg-curve', at: [{ x: 1, y: 3 }] },
    ]);
  });

  it('takes entity declarations in a comment for what they are', () => {
    expect(readSvgDrawing(`<!-- <!ENTITY a "b"> -->\n${svg(SQUARE)}`).ok).toBe(true);
  });

  it('is a drawing or one sentence, whatever the file holds', () => {
    const texts = namesIn('svg-read').map((name) => textOf(`svg-read/${name}.svg`));
    fc.assert(
      fc.property(
        fc.constantFrom(...texts),
        fc.nat(),
        fc.nat(60),
        fc.string({ maxLength: 12 }),
        (text, n, drop, put) => {
          const at = n % text.length;
          const result = readSvgDrawing(text.slice(0, at) + put + text.slice(at + drop));
          if (result.ok) expect(result.value.drawing.outline.length).toBeGreaterThan(2);
          else expect(sentence(result.problem)).toMatch(/^.+\.$/s);
        },
      ),
      { seed: 50, numRuns: 3000 },
    );
  });
});
