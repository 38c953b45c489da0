import type { Finding } from '@seamwright/arrangement';
import type { Point } from '@seamwright/geometry';

/** What a drawing may hold that is not read, run, fetched or applied. */
export type Unread =
  | 'curve'
  | 'text'
  | 'image'
  | 'script'
  | 'external-reference'
  | 'clip-path'
  | 'copy'
  | 'nested-drawing'
  | 'hidden'
  | 'other';

/** Something that was passed over. */
export interface Passed {
  readonly kind: Unread;
  /** The line of the file, from 1. */
  readonly line: number;
  /** Where it is on the block, inches, when that is known. */
  readonly at?: Point;
}

/** One, many, and what follows for the maker. */
const WORDS: Readonly<Record<Unread, readonly [one: string, many: string, consequence: string]>> = {
  curve: ['curve is', 'curves are', 'not read. Draw short straight lines in place of curves.'],
  text: ['text is', 'texts are', 'not read. Only lines make seams.'],
  image: ['image is', 'images are', 'not read. Draw lines over it to have its shapes.'],
  script: ['script is', 'scripts are', 'not run. Save the drawing without scripts.'],
  'external-reference': [
    'reference to something outside the file is',
    'references to something outside the file are',
    'not followed. What the drawing needs has to be in the file.',
  ],
  'clip-path': [
    'clip path or mask is',
    'clip paths or masks are',
    'not applied, so what it hides is read too. Cut the lines themselves.',
  ],
  copy: [
    'copy made by "use" is',
    'copies made by "use" are',
    'not read. Turn copies into lines of their own.',
  ],
  'nested-drawing': [
    'drawing inside the drawing is',
    'drawings inside the drawing are',
    'not read. Move its lines into the drawing itself.',
  ],
  hidden: ['hidden part is', 'hidden parts are', 'left out. Show it if its lines belong to the block.'],
  other: [
    'element that draws no plain line is',
    'elements that draw no plain line are',
    'not read. Only lines make seams.',
  ],
};

/** So many lines of the file are named; a drawing with more of a kind shows the rest by their places. */
const LINES_NAMED = 5;

/** One finding for each kind of thing that was passed over, with how many there are and where. */
export function findingsOf(passed: readonly Passed[]): Finding[] {
  return (Object.keys(WORDS) as Unread[]).flatMap((kind) => {
    const some = passed.filter((each) => each.kind === kind);
    if (some.length === 0) return [];
    const [one, many, consequence] = WORDS[kind];
    const subject = some.length === 1 ? `1 ${one}` : `${some.length} ${many}`;
    return [
      caution(
        `svg-${kind}`,
        `In the SVG, ${linesText(some)}, ${subject} ${consequence}`,
        some.flatMap(({ at }) => (at === undefined ? [] : [at])),
      ),
    ];
  });
}

/** A caution about the file as a whole or about places on the block. */
export const caution = (kind: string, message: string, at: readonly Point[] = []): Finding => ({
  kind,
  severity: 'caution',
  message: [message],
  at,
  lines: [],
  repairs: [],
});

function linesText(passed: readonly Passed[]): string {
  const lines = [...new Set(passed.map(({ line }) => line))];
  if (lines.length === 1) return `line ${lines[0]}`;
  if (lines.length > LINES_NAMED) {
    return `lines ${lines.slice(0, LINES_NAMED).join(', ')} and ${lines.length - LINES_NAMED} more`;
  }
  return `lines ${lines.slice(0, -1).join(', ')} and ${lines.at(-1)}`;
}
