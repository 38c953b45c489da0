import { add, type Point, rotation, transformPoint } from '@seamwright/geometry';
import type { Foundation } from '../foundation/foundation.ts';
import { type Diagram, joinsDiagram } from '../foundation/joins-diagram.ts';
import { DEGREES, type Turn } from '../foundation/turns.ts';
import type { CheckedJob } from '../job.ts';
import { moved, QUIET, STROKES, textMark } from '../marks/marks.ts';
import { textWidth, wrapped } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';
import { type CaptionWords, captionWords, isPlain } from './caption-words.ts';

/** What stands above a foundation, its top left corner at (0, 0). */
export interface Caption {
  /** Points. */
  readonly width: number;
  readonly height: number;
  /** Its marks. Many captions are tried where one is printed, so these are made when they are asked for. */
  draw(): readonly Mark[];
}

const LETTER = { size: 22, weight: 'semibold' } as const;
const NAME = { size: 10, weight: 'semibold' } as const;
const FACT = { size: 8, weight: 'regular', ink: QUIET } as const;
const BETWEEN_FACTS = { ...FACT, anchor: 'middle' } as const;

/** Points: from base line to base line, and from the letter to what stands beside it. */
const NAME_LINE = 11.5;
const FACT_LINE = 10.5;
const LETTER_GAP = 7;
const SEPARATOR_WIDTH = textWidth('  ·  ', FACT.size, FACT.weight);

/** The arrow beside `top of block`: its box is a square of this side, points. */
const ARROW = 7;
const ARROW_GAP = 3;

/** How much of the caption's width the letters may take, set large; where they do not fit, they stand below the name. */
const HEADING_SHARE = 0.4;

/** Lines of the smaller list of letters, at most. */
const MOST_LETTER_LINES = 8;

/** What a caption has besides, or leaves out. */
interface CaptionLook {
  /** What is set large: the name of a tile; the letters where they fit, when left out. */
  readonly heading?: string;
  /** Facts that only this caption has. */
  readonly extra?: readonly string[];
  /** Notes that were found when the foundation was drawn. */
  readonly found?: readonly string[];
  /** Without the block's name, which the foot of the sheet has, too, and without a picture unless the job wants it. */
  readonly brief?: boolean;
}

/**
 * The captions of a foundation: the letters of its sections, the block's name, the finished size, how many to print, and an arrow to
 * the block's top; in `width` points, on as many lines as that takes. What they say is worked out once, and so is where it stands when
 * only the turn is another.
 *
 * @returns a function of the turn and the width: points that a caption should not exceed; a single long word may
 */
export function captionsOf(job: CheckedJob, foundation: Foundation) {
  const words = captionWords(job, foundation);
  const known = new Map<string, SetCaption>();
  return (turn: Turn, width: number, look: CaptionLook = {}): Caption => {
    const { heading = headingFor(foundation, width), extra = [], found = [], brief = false } = look;
    const pictured = job.joinsDiagram ?? !brief;
    const diagram = pictured ? joinsDiagram(job, foundation, turn) : null;
    const parts = { words, width, found, heading, extra, name: brief ? null : job.title, diagram };
    if (diagram === null) {
      const key = JSON.stringify([width, found, heading, extra, brief]);
      const set = known.get(key) ?? setCaption(foundation, { ...parts, where: null });
      known.set(key, set);
      return drawable(foundation, turn, set, null);
    }
    const below = setCaption(foundation, { ...parts, where: 'below' });
    const beside = setCaption(foundation, { ...parts, where: 'beside' });
    const better = beside.width <= width && beside.height < below.height ? beside : below;
    return drawable(foundation, turn, better, diagram);
  };
}

/** Where the picture of the joins stands: below the letter, or between it and the words. */
type DiagramPlace = 'below' | 'beside';

interface CaptionParts {
  readonly words: CaptionWords;
  readonly width: number;
  readonly found: readonly string[];
  readonly heading: string;
  readonly extra: readonly string[];
  /** The block's. */
  readonly name: string | null;
  readonly diagram: Diagram | null;
  readonly where: DiagramPlace | null;
}

/** Points from the caption's top to a picture below the letter. */
const BELOW_LETTER = 22;

type Look = typeof LETTER | typeof NAME | typeof FACT | typeof BETWEEN_FACTS;

/** Where all of a caption stands. */
interface SetCaption {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly { readonly content: string; readonly at: Point<'page'>; readonly look: Look }[];
  /** The corner of the arrow's box, and of the picture. */
  readonly arrowAt: Point<'page'>;
  readonly diagramAt: Point<'page'>;
}

function setCaption(foundation: Foundation, parts: CaptionParts): SetCaption {
  const { words, width, found, heading, extra, name, diagram, where } = parts;
  const headingWidth = textWidth(heading, LETTER.size, LETTER.weight);
  const corner = where === 'below' ? { x: 0, y: BELOW_LETTER } : { x: headingWidth + LETTER_GAP, y: 1 };
  const left = Math.max(headingWidth, diagram === null ? 0 : corner.x + diagram.width) + LETTER_GAP;
  const column = Math.max(width - left, 1);
  const texts: SetCaption['texts'][number][] = [{ content: heading, at: { x: 0, y: 16.5 }, look: LETTER }];
  let base = 8;
  let widest = 0;
  let arrowAt = { x: left, y: base };
  const setLine = (content: string, look: typeof NAME | typeof FACT) => {
    texts.push({ content, at: { x: left, y: base }, look });
    widest = Math.max(widest, textWidth(content, look.size, look.weight));
    base += look === NAME ? NAME_LINE : FACT_LINE;
  };
  for (const line of name === null ? [] : wrapped(name, NAME.size, NAME.weight, column, 2))
    setLine(line, NAME);
  if (foundation.mirroredBlock) setLine('mirrored block', NAME);
  if (heading !== foundation.letters.join(', ') && words.sections !== null)
    for (const line of wrapped(words.sections, NAME.size, NAME.weight, column, MOST_LETTER_LINES))
      setLine(line, NAME);
  if (base > 8) base -= NAME_LINE - FACT_LINE;
  const { top } = words;
  for (const line of factLines([...words.facts, ...extra, words.count, top], top, column)) {
    let x = left;
    line.forEach((fact, i) => {
      if (i > 0) {
        texts.push({ content: '·', at: { x: x + SEPARATOR_WIDTH / 2, y: base }, look: BETWEEN_FACTS });
        x += SEPARATOR_WIDTH;
      }
      if (fact === top) arrowAt = { x, y: base - 6.2 };
      texts.push({ content: fact, at: { x: fact === top ? x + ARROW + ARROW_GAP : x, y: base }, look: FACT });
      x += factWidth(fact, top);
    });
    widest = Math.max(widest, x - left);
    base += FACT_LINE;
  }
  for (const note of [...words.notes, ...found])
    for (const line of wrapped(note, FACT.size, FACT.weight, column, Infinity)) setLine(line, FACT);
  const picture = diagram === null ? 0 : corner.y + diagram.height + 3;
  return {
    width: left + widest,
    height: Math.max(18, picture, base - FACT_LINE + 2.5),
    texts,
    arrowAt,
    diagramAt: corner,
  };
}

const drawable = (
  { key }: Foundation,
  turn: Turn,
  { width, height, texts, arrowAt, diagramAt }: SetCaption,
  diagram: Diagram | null,
): Caption => ({
  width,
  height,
  draw: () => [
    ...texts.map(({ content, at, look }) => textMark('caption', key, content, at, look)),
    ...arrowMarks(key, arrowAt, turn),
    ...(diagram?.marks.map((mark) => moved(mark, diagramAt)) ?? []),
  ],
});

/** All letters, or the first where they would leave too little room for the rest. */
function headingFor({ letter, letters }: Foundation, width: number): string {
  const all = letters.join(', ');
  const fits = textWidth(all, LETTER.size, LETTER.weight) <= HEADING_SHARE * width;
  // Large, `A, A (mirrored)` would read as two foundations.
  return letters.length === 1 || (fits && letters.every(isPlain)) ? all : letter;
}

const factWidth = (fact: string, top: string): number =>
  textWidth(fact, FACT.size, FACT.weight) + (fact === top ? ARROW + ARROW_GAP : 0);

/** The facts, as many to a line as fit; `top` takes an arrow with it. */
function factLines(facts: readonly string[], top: string, column: number): readonly (readonly string[])[] {
  const lines: string[][] = [];
  let used = Infinity;
  for (const fact of facts) {
    const more = SEPARATOR_WIDTH + factWidth(fact, top);
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
