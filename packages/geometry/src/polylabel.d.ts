/** The library ships no types. Rings of [x, y], the outer one first. */
declare module 'polylabel' {
  export default function polylabel(
    rings: readonly (readonly (readonly [number, number])[])[],
    precision?: number,
    debug?: boolean,
  ): [number, number] & { distance: number };
}
