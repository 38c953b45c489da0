/**
 * How sections are told apart: each has a letter (from the plan), a tint and a hatching, never the tint alone.
 * Tints and hatchings go round in steps that have no common divisor, so 56 sections differ.
 */
export interface SectionLook {
  readonly tint: string;
  readonly hatching: Hatching;
}

export type Hatching = 'none' | 'rising' | 'dots' | 'level' | 'falling' | 'upright' | 'crossed' | 'net';

const HATCHINGS: readonly Hatching[] = [
  'none',
  'rising',
  'dots',
  'level',
  'falling',
  'upright',
  'crossed',
  'net',
];

/** Pale by day, deep by night: dark text on the first and light text on the second stay above 4.5 : 1. */
const TINTS: readonly (readonly [light: string, dark: string])[] = [
  ['#e3d9c3', '#4a4130'],
  ['#cfdde6', '#2f4350'],
  ['#e6d0ca', '#54382f'],
  ['#d4dfc8', '#394830'],
  ['#ded3e3', '#463a4f'],
  ['#cde0db', '#2d4843'],
  ['#e8dcb4', '#504623'],
];

export function sectionLook(index: number, dark: boolean): SectionLook {
  const tint = TINTS[index % TINTS.length]!;
  return { tint: dark ? tint[1] : tint[0], hatching: HATCHINGS[index % HATCHINGS.length]! };
}

/** CSS pixels: the side of one tile of hatching. */
export const TILE = 12;

const STROKES: Readonly<Record<Hatching, readonly (readonly [number, number, number, number])[]>> = {
  none: [],
  rising: [
    [0, 12, 12, 0],
    [-3, 3, 3, -3],
    [9, 15, 15, 9],
  ],
  falling: [
    [0, 0, 12, 12],
    [9, -3, 15, 3],
    [-3, 9, 3, 15],
  ],
  level: [[0, 6, 12, 6]],
  upright: [[6, 0, 6, 12]],
  crossed: [
    [6, 0, 6, 12],
    [0, 6, 12, 6],
  ],
  net: [
    [0, 0, 12, 12],
    [0, 12, 12, 0],
  ],
  dots: [
    [3, 3, 3, 3],
    [9, 9, 9, 9],
  ],
};

const tiles = new Map<string, HTMLCanvasElement>();

/** One tile of a section's fill: tint and hatching. Drawn once for each look. */
export function tile(look: SectionLook, ink: string): HTMLCanvasElement {
  const key = `${look.tint} ${look.hatching} ${ink}`;
  const known = tiles.get(key);
  if (known !== undefined) return known;
  const fresh = drawTile(look, ink);
  tiles.set(key, fresh);
  return fresh;
}

/** Device pixels per CSS pixel in a tile: fine enough for close screens. */
export const TILE_DENSITY = 2;

function drawTile(look: SectionLook, ink: string): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = TILE * TILE_DENSITY;
  canvas.height = TILE * TILE_DENSITY;
  const context = canvas.getContext('2d')!;
  context.scale(TILE_DENSITY, TILE_DENSITY);
  context.fillStyle = look.tint;
  context.fillRect(0, 0, TILE, TILE);
  context.strokeStyle = ink;
  context.globalAlpha = 0.32;
  context.lineWidth = look.hatching === 'dots' ? 2.5 : 1;
  context.lineCap = look.hatching === 'dots' ? 'round' : 'butt';
  context.beginPath();
  for (const [x1, y1, x2, y2] of STROKES[look.hatching]) {
    context.moveTo(x1, y1);
    context.lineTo(x2, y2);
  }
  context.stroke();
  return canvas;
}
