import type { Foundation } from '../foundation/foundation.ts';
import type { CheckedJob } from '../job.ts';
import { matchLegend } from './match-words.ts';
import { shortUnit } from './open-words.ts';
import { readSize } from './read-lengths.ts';

/** What the caption of a foundation says, however it is set. */
export interface CaptionWords {
  /** `for A, C, D`, where the foundation is for several sections. */
  readonly sections: string | null;
  /** The sizes, and of what it is the mirrored copy. */
  readonly facts: readonly string[];
  readonly count: string;
  /** The arrow's words. */
  readonly top: string;
  /** What else there is to know, a sentence each. */
  readonly notes: readonly string[];
}

export const captionWords = (job: CheckedJob, foundation: Foundation): CaptionWords => ({
  sections: foundation.letters.length === 1 ? null : `for ${byFace(foundation.letters)}`,
  facts: [
    ...(foundation.mirroredOf === null ? [] : [`mirrored copy of ${foundation.mirroredOf}`]),
    ...sizeFacts(job, foundation),
  ],
  // Where several stand on a sheet, the sheet says how often it is printed.
  count: job.fillSheets && foundation.count > 1 ? `${foundation.count} in all` : `Print ${foundation.count}`,
  top: topFact(foundation),
  notes: notesOf(foundation),
});

/** `A, C; mirrored block: B, D` */
function byFace(letters: readonly string[]): string {
  const plain = letters.filter(isPlain);
  const others = letters.filter((letter) => !isPlain(letter)).map((letter) => letter.split(' ')[0]);
  return others.length === 0 ? plain.join(', ') : `${plain.join(', ')}; mirrored block: ${others.join(', ')}`;
}

/** Of the same face as the section that is laid out. */
export const isPlain = (letter: string): boolean => !letter.includes(' ');

function notesOf({ letter, letters, matchMarks, openStretches, pieces }: Foundation): readonly string[] {
  const plain = new Set(letters.map((other) => other.split(' ')[0]!));
  const others = [...plain].filter((other) => other !== letter).map((other) => `${other}1`);
  const last = others.at(-1);
  const matches = [...matchMarks.ticks, ...matchMarks.corners];
  const legend = matchLegend(matches, letters);
  return [
    ...(last === undefined ? [] : [`${letter}1 stands for ${inWords(others)}, too`]),
    ...fabricLegend(pieces),
    ...cutLegend(pieces),
    ...(legend === null ? [] : [legend]),
    ...openStretches.map(({ sewnTo, until }) =>
      sewnTo === null
        ? `leave the edge marked open unsewn, and close it when ${shortUnit(until)} is on`
        : `partial seam with ${shortUnit(sewnTo)}: sew up to the double tick only, and close the rest when ${shortUnit(until)} is on`,
    ),
  ];
}

/** `a = Sea blue, b = Sail white`: what the letters beside the numbers stand for, in their order. */
function fabricLegend(pieces: Foundation['pieces']): readonly string[] {
  const names = new Map(
    pieces.flatMap(({ fabric }) =>
      fabric === null || fabric.name === '' ? [] : [[fabric.letter, fabric.name]],
    ),
  );
  const said = [...names].sort(([p], [q]) => (p < q ? -1 : 1)).map(([letter, name]) => `${letter} = ${name}`);
  return [
    ...(said.length === 0 ? [] : [said.join(', ')]),
    ...(pieces.some(({ differs }) => differs)
      ? ['patches without a fabric or an arrow: not alike in all sections, see the block']
      : []),
  ];
}

/** What the words for halves mean. */
const cutLegend = (pieces: Foundation['pieces']): readonly string[] => [
  ...new Set(pieces.flatMap(({ note }) => note?.meaning ?? [])),
];

/** `C1`, `C1 and D1`, `C1, D1 and E1`, `C1, D1 … P1`. */
function inWords(names: readonly string[]): string {
  const last = names.at(-1)!;
  if (names.length === 1) return last;
  return names.length > 3
    ? `${names.slice(0, 2).join(', ')} … ${last}`
    : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/** The arrow's words. Turned copies have their top elsewhere. */
const topFact = ({ letter, letters }: Foundation): string =>
  letters.length === 1 ? 'top of block' : `top of block for ${letter}`;

/** `3 × 6 in finished`; and the block's size when the section is only a part of it. */
function sizeFacts({ unit }: CheckedJob, { finished, block }: Foundation): readonly string[] {
  const [own, whole] = [
    readSize(finished.width, finished.height, unit),
    readSize(block.width, block.height, unit),
  ];
  return own === whole ? [`${own} finished`] : [`${own} finished`, `block ${whole}`];
}
