import { hexOf, lightnessOf, oklabOf } from './lightness.ts';
import type { NamedColour } from './palettes.ts';

/**
 * For each colour one of the palette in its place, by lightness: the lightest gets the palette's lightest, the darkest its
 * darkest, those between what lies between. A palette with fewer colours than are asked for is mixed from, so that no two
 * come out alike.
 *
 * @param colours `#rrggbb`
 * @returns in the order of `colours`
 */
export function matchedByLightness(
  colours: readonly string[],
  palette: readonly NamedColour[],
): readonly NamedColour[] {
  const light = <T extends { readonly colour: string }>(of: readonly T[]) =>
    [...of].sort((a, b) => lightnessOf(b.colour) - lightnessOf(a.colour));
  const from = light(palette);
  const order = light(colours.map((colour, index) => ({ colour, index })));
  const last = Math.max(order.length - 1, 1);
  const mixes = order.length > from.length;
  const matched = new Map(
    order.map(({ index }, rank) => {
      const place = (rank * (from.length - 1)) / last;
      return [index, mixes ? mixedAt(from, place) : from[Math.round(place)]!];
    }),
  );
  return colours.map((_, index) => matched.get(index)!);
}

/** The colour at a place of a list that may lie between two of them. */
function mixedAt(list: readonly NamedColour[], place: number): NamedColour {
  const [one, other] = [list[Math.floor(place)]!, list[Math.ceil(place)]!];
  if (one === other) return one;
  const share = place - Math.floor(place);
  const [p, q] = [oklabOf(one.colour), oklabOf(other.colour)];
  const at = (a: number, b: number) => a + (b - a) * share;
  return {
    name: `Between ${one.name} and ${other.name}`,
    colour: hexOf({ l: at(p.l, q.l), a: at(p.a, q.a), b: at(p.b, q.b) }),
  };
}
