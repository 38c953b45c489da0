import { distanceToSegment, edgesOf } from '@seamwright/geometry';
import type { Spot } from '../../../e2e/support/pdf.ts';
import type { Mark, PathMark, TextMark } from '../src/index.ts';
import { boxOf } from './boxes.ts';

/** A tick as a sewer reads it: where it stands on the outline, and its number for each of the foundation's sections. */
export interface ReadTick {
  readonly foot: Spot;
  /** By letter; a section that has nothing to match there is left out. */
  readonly numbers: ReadonlyMap<string, number>;
}

/** What pages are held to: 0.01 mm, in points. */
const TRUE = (0.01 / 25.4) * 72;

/** Points from a tick's foot to what stands beside it: a few seams may take the nearest places. */
const BESIDE = 16;

const isText = (mark: Mark): mark is TextMark => mark.kind === 'text';

/** Labels that are neither piece numbers nor the words along the two outlines: what stands beside match points. */
export const besideMatches = (marks: readonly Mark[]): readonly TextMark[] =>
  marks.filter(isText).filter(({ role, content }) => role === 'label' && /^(\d+|[ivxlc]+)$/.test(content));

/** What the caption says of the names that only this foundation has, by name: `on A: i = 5, ii = 2; on B: i = 3, no ii`. */
export function legendOf(marks: readonly Mark[]): ReadonlyMap<string, ReadonlyMap<string, number>> {
  const caption = marks
    .filter(isText)
    .filter(({ role }) => role === 'caption')
    .map(({ content }) => content)
    .join(' ');
  const legend = new Map<string, Map<string, number>>();
  for (const [, letter, said] of caption.matchAll(/(?:match numbers|;) on ([A-Z]+)[^:;]*: ([^;]*)/g))
    for (const [, name, number] of said!.matchAll(/([ivxlc]+) = (\d+)/g))
      legend.set(name!, (legend.get(name!) ?? new Map<string, number>()).set(letter!, Number(number)));
  return legend;
}

/**
 * The ticks of one foundation that have a number or a name; where there is no room for one there is none. What stands nearest to
 * a tick is its own.
 *
 * @param marks its own
 * @param letters of the sections for which it is printed
 */
export function ticksSaid(marks: readonly Mark[], letters: readonly string[]): readonly ReadTick[] {
  const legend = legendOf(marks);
  const pairs = feetOf(marks)
    .flatMap((foot) => besideMatches(marks).map((text) => ({ foot, text, apart: nearBox(text, foot) })))
    .filter(({ apart }) => apart <= BESIDE)
    .sort((p, q) => p.apart - q.apart);
  const taken = new Set<Spot | TextMark>();
  return pairs.flatMap(({ foot, text }) => {
    if (taken.has(foot) || taken.has(text)) return [];
    taken.add(foot).add(text);
    const alike = new Map(letters.map((letter) => [letter, Number(text.content)]));
    return [{ foot, numbers: legend.get(text.content) ?? alike }];
  });
}

/** Where the ticks of a foundation start. */
export function feetOf(marks: readonly Mark[]): readonly Spot[] {
  const outline = marks.find(({ role }) => role === 'finished-outline') as PathMark;
  return marks
    .filter(({ role }) => role === 'match-mark')
    .map((mark) => (mark as PathMark).points.find((p) => awayFrom(p, outline.points) < TRUE)!);
}

export const awayFrom = (p: Spot, outline: readonly Spot[]): number =>
  Math.min(...edgesOf<'page'>(outline).map(({ a, b }) => distanceToSegment<'page'>(p, a, b)));

function nearBox(text: TextMark, { x, y }: Spot): number {
  const { minX, minY, maxX, maxY } = boxOf(text);
  return Math.hypot(Math.max(minX - x, 0, x - maxX), Math.max(minY - y, 0, y - maxY));
}
