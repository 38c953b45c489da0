import { PLAIN_FABRICS } from '@seamwright/pattern';
import { describe, expect, test } from 'vitest';
import { studyOf } from '../test/study-of.ts';
import { alikeInLightness, LEAST_DIFFERENCE } from './contrast.ts';
import { greyOf, lightnessOf } from './lightness.ts';

const fabric = (id: string, colour: string) => ({ id, name: id, colour });

/** Three strips beside each other, and one across below them. */
const { arrangement } = studyOf([
  [0, 3, 4, 3],
  [1, 0, 1, 3],
  [3, 0, 3, 3],
]);

/** The patch that holds the middle of a strip. */
const at = (x: number, y: number) =>
  arrangement!.patches.findIndex(({ heart }) => Math.abs(heart.x - x) < 0.6 && Math.abs(heart.y - y) < 1.6);
const [left, middle, right, below] = [at(0.5, 1.5), at(2, 1.5), at(3.5, 1.5), at(2, 3.5)];

const found = (colours: Readonly<Record<number, string>>) =>
  alikeInLightness(arrangement!, (patch) =>
    colours[patch] === undefined ? undefined : fabric(colours[patch], colours[patch]),
  );

describe('fabrics alike in lightness', () => {
  test('the least difference is one step of ten L* between greys', () => {
    // sRGB greys of L* 50 and 60 (CIE 15, by the inverse of L* = 116 Y^(1/3) − 16, and IEC 61966-2-1): #777777, #919191.
    expect(Math.abs(lightnessOf('#919191') - lightnessOf('#777777') - LEAST_DIFFERENCE)).toBeLessThan(0.005);
  });

  test('a grey looks as light as its colour', () => {
    for (const { colour } of PLAIN_FABRICS) {
      const grey = greyOf(colour);
      expect(grey).toMatch(/^#(..)\1\1$/);
      expect(Math.abs(lightnessOf(grey) - lightnessOf(colour))).toBeLessThan(0.004);
    }
  });

  test('plain fabrics are told apart, all of them', () => {
    const light = PLAIN_FABRICS.map(({ colour }) => lightnessOf(colour)).sort((a, b) => a - b);
    light.slice(1).forEach((one, i) => {
      expect(one - light[i]!).toBeGreaterThan(LEAST_DIFFERENCE);
    });
  });

  test('only neighbours count, with the seams between them; the same fabric twice is no pair', () => {
    // Red and green of the same lightness lie side by side; the other red does not touch the green.
    const [red, green] = ['#c04040', '#3b8a3b'];
    expect(Math.abs(lightnessOf(red) - lightnessOf(green))).toBeLessThan(LEAST_DIFFERENCE);
    const [pair, ...others] = found({ [left]: red, [middle]: green, [right]: '#ffffff', [below]: '#000000' });
    expect(others).toEqual([]);
    expect(pair!.neighbours).toEqual([[Math.min(left, middle), Math.max(left, middle)]]);
    expect(pair!.seams.map(({ a, b }) => [a.x, b.x, Math.abs(a.y - b.y)])).toEqual([[1, 1, 3]]);
    expect(found({ [left]: red, [right]: green })).toEqual([]);
    expect(found({ [left]: red, [middle]: red, [below]: red })).toEqual([]);
  });

  test('the pair that is most alike comes first', () => {
    const pairs = found({ [left]: '#808080', [middle]: '#828282', [right]: '#8c8c8c', [below]: '#ffffff' });
    expect(pairs.map(({ fabrics }) => fabrics.map(({ id }) => id))).toEqual([
      ['#808080', '#828282'],
      ['#828282', '#8c8c8c'],
    ]);
  });
});
