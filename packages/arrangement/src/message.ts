import {
  boundingBox,
  formatLength,
  type LengthUnit,
  type Point,
  type Polygon,
  SAME_COORDINATE,
} from '@seamwright/geometry';

/**
 * A sentence for the maker, whose lengths, places and patches are kept as data: the unit is known, and the patches have
 * their names, only where it is shown.
 */
export type Message = readonly (string | Said)[];

/** What a sentence speaks of. */
export type Said =
  | { readonly kind: 'length'; readonly inches: number }
  /** Across and down from the top left of the block, inches. */
  | { readonly kind: 'place'; readonly across: number; readonly down: number }
  /** Patches by index. */
  | { readonly kind: 'patches'; readonly patches: readonly number[] };

/** Puts a sentence together: say`A line ends loose at ${placeOn(tip, outline)}.` Messages within it become part of it. */
export const say = (
  texts: TemplateStringsArray,
  ...told: readonly (string | number | Said | Message)[]
): Message =>
  texts.flatMap((text, i) => {
    const one = told[i];
    if (one === undefined) return [text];
    return typeof one === 'object' ? [text, one].flat() : [`${text}${one}`];
  });

export const inches = (value: number): Said => ({ kind: 'length', inches: value });

/** A place as the maker can find it: across and down from the top left of the block. */
export function placeOn({ x, y }: Point, outline: Polygon): Said {
  const { minX, minY } = boundingBox(outline);
  return { kind: 'place', across: x - minX, down: y - minY };
}

/** `a patch`, `3 patches`, or their names where they have some; at the start of a sentence with a capital. */
export const thePatches = (patches: readonly number[]): Said => ({ kind: 'patches', patches });

/** How lengths, places and patches are written. */
export interface Wording {
  readonly length: (inches: number) => string;
  /** Inches from the left and from the top of the block. */
  readonly place: (across: number, down: number) => string;
  readonly patches: (patches: readonly number[]) => string;
}

/** A message in words. */
export function inWords(message: Message, wording: Wording): string {
  const words = message.map((part) => (typeof part === 'string' ? part : worded(part, wording))).join('');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function worded(said: Said, wording: Wording): string {
  switch (said.kind) {
    case 'length':
      return wording.length(said.inches);
    case 'place':
      return wording.place(said.across, said.down);
    case 'patches':
      return wording.patches(said.patches);
  }
}

/**
 * A message for programs and for text: lengths as fractions where they are marks of a ruler, else to a thousandth of an inch
 * or a hundredth of a centimetre; patches have no names.
 */
export const plainWords = (message: Message, unit: LengthUnit = 'in'): string =>
  inWords(message, {
    length: (value) => formatLength(tidy(value), unit),
    place: (across, down) =>
      `(${[across, down].map((value) => formatLength(tidy(value), unit).slice(0, -unit.length - 1)).join(', ')})`,
    patches: ({ length }) => (length === 1 ? 'a patch' : `${length} patches`),
  });

/** Inches: the finest marks of the rulers by which lengths are told. */
export const FINEST_MARK = 1 / 64;

/** A length as it is read off a ruler where it is one of its marks, to a thousandth where it is not. */
function tidy(value: number): number {
  const mark = Math.round(value / FINEST_MARK) * FINEST_MARK;
  return Math.abs(value - mark) <= SAME_COORDINATE ? mark : Math.round(value * 1000) / 1000;
}
