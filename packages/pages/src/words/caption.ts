import { add, formatSize, type Point, rotation, transformPoint } from '@seamwright/geometry';
import type { Foundation } from '../foundation/foundation.ts';
import { DEGREES, type Turn } from '../foundation/foundation-marks.ts';
import { type Diagram, joinsDiagram } from '../foundation/joins-diagram.ts';
import type { CheckedJob } from '../job.ts';
import { moved, QUIET, STROKES, textMark } from '../marks/marks.ts';
import { textWidth, wrapped } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';
import { matchLegend } from './match-words.ts';
import { shortUnit } from './open-words.ts';

/** What stands above a foundation, its top left corner at (0, 0). */
export interface Caption {
  readonly marks: readonly Mark[];
  /** Points. */
  readonly width: number;
  readonly height: number;
}

const LETTER = { size: 22, weight: 'semibold' } as const;
const NAME = { size: 10, weight: 'semibold' } as const;
const FACT = { size: 8, weight: 'regular', ink: QUIET } as const;

/** Points: from base line to base line, and from the letter to what stands beside it. */
const NAME_LINE = 11.5;
const FACT_LINE = 10.5;
const LETTER_GAP = 7;
const SEPARATOR = '  ·  ';

/** The arrow beside `top of block`: its box is a square of this side, points. */
const ARROW = 7;
const ARROW_GAP = 3;

/** How much of the caption's width the letters may take, set large; where they do not fit, they stand below the name. */
const HEADING_SHARE = 0.4;

/** Lines of the smaller list of letters, at most. */
const MOST_LETTER_LINES = 8;

/**
 * The letters of the foundation's sections, the block's name, the finished size, how many to print, and an arrow to
 * the block's top; in `width` points, on as many lines as that takes.
 *
 * @param width points that it should not exceed; a single long word may
 */
export function captionFor(
  job: CheckedJob,
  foundation: Foundation,
  turn: Turn,
  width: number,
  more: CaptionWords = {},
): Caption {
  const { heading = headingFor(foundation, width), extra = [], found = [], brief = false } = more;
  const pictured = job.joinsDiagram ?? !brief;
  const diagram = pictured ? joinsDiagram(job, foundation, turn) : null;
  const set = (where: DiagramPlace | null) =>
    captionAround(job, foundation, turn, { width, found, heading, extra, brief, diagram, where });
  if (diagram === null) return set(null);
  const [below, beside] = [set('below'), set('beside')];
  return beside.width <= width && beside.height < below.height ? beside : below;
}

/** What else a caption says, or leaves out. */
interface CaptionWords {
  /** What is set large: the name of a tile; the letters where they fit, when left out. */
  readonly heading?: string;
  /** Facts that only this caption has. */
  readonly extra?: readonly string[];
  /** Notes that were found when the foundation was drawn. */
  readonly found?: readonly string[];
  /** Without the block's name, which the foot of the sheet has, too, and without a picture unless the job wants it. */
  readonly brief?: boolean;
}

/** Where the picture of the joins stands: below the letter, or between it and the words. */
type DiagramPlace = 'below' | 'beside';

interface CaptionParts {
  readonly width: number;
  readonly found: readonly string[];
  readonly heading: string;
  readonly extra: readonly string[];
  readonly brief: boolean;
  readonly diagram: Diagram | null;
  readonly where: DiagramPlace | null;
}

/** Points from the caption's top to a picture below the letter. */
const BELOW_LETTER = 22;

function captionAround(
  job: CheckedJob,
  foundation: Foundation,
  turn: Turn,
  { width, found, heading, extra, brief, diagram, where }: CaptionParts,
): Caption {
  const { key, letters } = foundation;
  const headingWidth = textWidth(heading, LETTER.size, LETTER.weight);
  const corner = where === 'below' ? { x: 0, y: BELOW_LETTER } : { x: headingWidth + LETTER_GAP, y: 1 };
  const left = Math.max(headingWidth, diagram === null ? 0 : corner.x + diagram.width) + LETTER_GAP;
  const column = Math.max(width - left, 1);
  const marks: Mark[] = [
    textMark('caption', key, heading, { x: 0, y: 16.5 }, LETTER),
    ...(diagram?.marks.map((mark) => moved(mark, corner)) ?? []),
  ];
  let base = 8;
  let widest = 0;
  const setLine = (line: string, look: typeof NAME | typeof FACT) => {
    marks.push(textMark('caption', key, line, { x: left, y: base }, look));
    widest = Math.max(widest, textWidth(line, look.size, look.weight));
  };
  for (const line of brief ? [] : wrapped(job.title, NAME.size, NAME.weight, column, 2)) {
    setLine(line, NAME);
    base += NAME_LINE;
  }
  if (foundation.mirroredBlock) {
    setLine('mirrored block', NAME);
    base += NAME_LINE;
  }
  if (heading !== letters.join(', '))
    for (const line of letterLines(foundation, column)) {
      setLine(line, NAME);
      base += NAME_LINE;
    }
  if (base > 8) base -= NAME_LINE - FACT_LINE;
  const top = topFact(foundation);
  const facts = [
    ...(foundation.mirroredOf === null ? [] : [`mirrored copy of ${foundation.mirroredOf}`]),
    ...sizeFacts(job, foundation),
    ...extra,
    `Print ${foundation.count}`,
    top,
  ];
  for (const line of factLines(facts, top, column)) {
    let x = left;
    line.forEach((fact, i) => {
      if (i > 0) {
        marks.push(
          textMark(
            'caption',
            key,
            '·',
            { x: x + separatorWidth() / 2, y: base },
            { ...FACT, anchor: 'middle' },
          ),
        );
        x += separatorWidth();
      }
      if (fact === top) marks.push(...arrowMarks(key, { x, y: base - 6.2 }, turn));
      const words = fact === top ? x + ARROW + ARROW_GAP : x;
      marks.push(textMark('caption', key, fact, { x: words, y: base }, FACT));
      x += factWidth(fact, top);
    });
    widest = Math.max(widest, x - left);
    base += FACT_LINE;
  }
  for (const line of noteLines(foundation, found, column)) {
    setLine(line, FACT);
    base += FACT_LINE;
  }
  const picture = diagram === null ? 0 : corner.y + diagram.height + 3;
  return {
    marks,
    width: left + widest,
    height: Math.max(18, picture, base - FACT_LINE + 2.5),
  };
}

/** All letters, or the first where they would leave too little room for the rest. */
function headingFor({ letter, letters }: Foundation, width: number): string {
  const all = letters.join(', ');
  const fits = textWidth(all, LETTER.size, LETTER.weight) <= HEADING_SHARE * width;
  // Large, `A, A (mirrored)` would read as two foundations.
  return letters.length === 1 || (fits && letters.every(isPlain)) ? all : letter;
}

/** `A, C; mirrored block: B, D` */
function byFace(letters: readonly string[]): string {
  const plain = letters.filter(isPlain);
  const others = letters.filter((letter) => !isPlain(letter)).map((letter) => letter.split(' ')[0]);
  return others.length === 0 ? plain.join(', ') : `${plain.join(', ')}; mirrored block: ${others.join(', ')}`;
}

/** Of the same face as the section that is laid out. */
const isPlain = (letter: string): boolean => !letter.includes(' ');

/** `for A, C, D`, where a foundation is for several sections. */
const letterLines = ({ letters }: Foundation, column: number): readonly string[] =>
  letters.length === 1
    ? []
    : wrapped(`for ${byFace(letters)}`, NAME.size, NAME.weight, column, MOST_LETTER_LINES);

/** What else there is to know about a foundation. */
function noteLines(foundation: Foundation, found: readonly string[], column: number): readonly string[] {
  const notes = [...notesOf(foundation), ...found];
  return notes.flatMap((note) => wrapped(note, FACT.size, FACT.weight, column, Infinity));
}

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
    formatSize(finished.width, finished.height, unit),
    formatSize(block.width, block.height, unit),
  ];
  return own === whole ? [`${own} finished`] : [`${own} finished`, `block ${whole}`];
}

const factWidth = (fact: string, top: string): number =>
  textWidth(fact, FACT.size, FACT.weight) + (fact === top ? ARROW + ARROW_GAP : 0);

const separatorWidth = (): number => textWidth(SEPARATOR, FACT.size, FACT.weight);

/** The facts, as many to a line as fit; `top` takes an arrow with it. */
function factLines(facts: readonly string[], top: string, column: number): readonly (readonly string[])[] {
  const lines: string[][] = [];
  let used = Infinity;
  for (const fact of facts) {
    const more = separatorWidth() + factWidth(fact, top);
    if (used + more <= column) {
      lines.at(-1)!.push(fact);
      used += more;
    } else {
      lines.push([fact]);
      used = factWidth(fact, top);
    }
  }
  return lines;
}

/** An arrow in a square box at `corner`, pointing where the block's top is. */
function arrowMarks(key: string, corner: Point<'page'>, turn: Turn): readonly Mark[] {
  const half = ARROW / 2;
  const aim = rotation<'page'>(DEGREES[turn], { x: half, y: half });
  const path = (...points: Point<'page'>[]): Mark => ({
    kind: 'path',
    role: 'caption',
    section: key,
    points: points.map((p) => add(transformPoint(aim, p), corner)),
    closed: false,
    stroke: STROKES.arrow,
  });
  return [
    path({ x: half, y: ARROW }, { x: half, y: 0 }),
    path({ x: half - 2.5, y: 2.8 }, { x: half, y: 0 }, { x: half + 2.5, y: 2.8 }),
  ];
}
