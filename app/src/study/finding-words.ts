import { inWords, type Message } from '@seamwright/arrangement';
import { formatLength, type LengthUnit, MM_PER_INCH, SAME_COORDINATE } from '@seamwright/geometry';
import { placeWords } from '../ui/measures.ts';
import { listed } from '../ui/plural.ts';
import { roughLength } from '../ui/rough-length.ts';

/**
 * What a finding or a repair says, in the pattern's unit and with the patches' names.
 *
 * @param names by patch index; `?` is none
 */
export const findingWords = (message: Message, unit: LengthUnit, names: readonly string[] = []): string =>
  inWords(message, {
    length: (inches) => unbroken(lengthTold(inches, unit)),
    place: (x, y) => unbroken(`(${placeWords({ x, y }, BLOCK_CORNER, unit)})`),
    patches: (patches) => unbroken(patchesTold(patches, names)),
  });

const BLOCK_CORNER = { x: 0, y: 0 };

/** Inches: what is shorter is told as finely as rulers are marked, for how short it is matters. */
const SMALL = 1 / 2;

/** The finest marks by which lengths are told, inches: a tenth of a millimetre is hardly one, and needs no “about”. */
const FINEST: Readonly<Record<LengthUnit, number>> = { in: 1 / 64, cm: 0.1 / MM_PER_INCH };

function lengthTold(inches: number, unit: LengthUnit): string {
  if (inches >= SMALL) return roughLength(inches, unit);
  const finest = FINEST[unit];
  if (inches < finest / 2) return `less than ${formatLength(finest, unit)}`;
  if (unit === 'cm') return formatLength(inches, unit);
  const rounded = Math.round(inches / finest) * finest;
  return `${Math.abs(rounded - inches) <= SAME_COORDINATE ? '' : 'about '}${formatLength(rounded, unit)}`;
}

/** More patches than these are counted. */
const MOST_NAMED = 4;

function patchesTold(patches: readonly number[], names: readonly string[]): string {
  const known = patches.map((patch) => names[patch] ?? '?');
  const named = known.length <= MOST_NAMED && !known.includes('?');
  if (patches.length === 1) return named ? `patch ${known[0]}` : 'a patch';
  return named ? `patches ${listed(known)}` : `${patches.length} patches`;
}

const unbroken = (words: string): string => words.replaceAll(' ', '\u00a0');
