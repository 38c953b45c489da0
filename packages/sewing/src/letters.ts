const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The letter of the section with this number, from 0: A … Z, AA, AB … */
export function letterOf(index: number): string {
  const last = ALPHABET[index % ALPHABET.length]!;
  return index < ALPHABET.length ? last : letterOf(Math.floor(index / ALPHABET.length) - 1) + last;
}

/** What a unit of several sections is called: `ABC`, or `Z+AA` where that could be misread. */
export const unitName = (letters: readonly string[]): string =>
  letters.join(letters.every((letter) => letter.length === 1) ? '' : '+');
