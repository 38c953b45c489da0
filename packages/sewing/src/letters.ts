const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The letter of the section with this number, from 0: A … Z, AA, AB … */
export function letterOf(index: number): string {
  const last = ALPHABET[index % ALPHABET.length]!;
  return index < ALPHABET.length ? last : letterOf(Math.floor(index / ALPHABET.length) - 1) + last;
}

/**
 * How the units of a block are named whose sections have these letters: `ABC`, or `A+B+C` where there is a section with two letters.
 * There `AB` is that section, and not what A and B make.
 */
export function unitNames(letters: readonly string[]): (unit: readonly string[]) => string {
  const between = letters.every((letter) => letter.length === 1) ? '' : '+';
  return (unit) => unit.join(between);
}
