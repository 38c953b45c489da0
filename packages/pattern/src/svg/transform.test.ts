import { transformPoint } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { parseTransform } from './transform.ts';

/** Values worked out by hand from SVG 1.1, section 7.6. */
describe('transform attributes', () => {
  it.each([
    ['', [3, 1]],
    ['translate(10)', [13, 1]],
    ['translate(10, -4)', [13, -3]],
    ['scale(2)', [6, 2]],
    ['scale(2 -1)', [6, -1]],
    ['rotate(90)', [-1, 3]],
    ['rotate(90 3 0)', [2, 0]],
    ['rotate(-450)', [1, -3]],
    ['skewX(45)', [4, 1]],
    ['skewY(45)', [3, 4]],
    ['matrix(1 2 3 4 5 6)', [11, 16]],
    ['translate(10) scale(2)', [16, 2]],
    ['scale(2),translate(10)', [26, 2]],
    ['  translate( 1e1 ,.5 )rotate(90)\n', [9, 3.5]],
  ])('%j', (text, [x, y]) => {
    const moved = transformPoint(parseTransform(text)!, { x: 3, y: 1 });
    expect(moved.x).toBeCloseTo(x!, 12);
    expect(moved.y).toBeCloseTo(y!, 12);
  });

  it('turn by quarters without rounding', () => {
    expect(parseTransform('rotate(270)')).toMatchObject({ a: 0, b: -1, c: 1, d: 0 });
  });

  it.each([
    'translate',
    'translate()',
    'scale(1 2 3)',
    'rotate(1 2)',
    'matrix(1 2 3)',
    'turn(3)',
    'scale(x)',
    'scale(1e999)',
    'none',
    'scale(2) and more',
  ])('are refused when they are no SVG: %j', (text) => {
    expect(parseTransform(text)).toBeNull();
  });
});
