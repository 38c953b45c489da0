import { boundingBox, distance, midpoint, type Polygon, SAME_COORDINATE } from '@seamwright/geometry';
import type { Drawing, LineId } from './drawing.ts';
import {
  connectedParts,
  type Faces,
  isBridge,
  type Link,
  type Links,
  Outgoing,
  opposite,
  originOf,
} from './graph.ts';
import type { Place } from './incidence.ts';
import { FINEST_MARK, inches, type Message, placeOn, say } from './message.ts';
import type { Nodes } from './nodes.ts';
import { sightOver } from './sight.ts';
import type { Finding, Severity } from './types.ts';

/** What the findings are read from, once the attempt is known to be sound. */
export interface Evidence {
  readonly drawing: Drawing;
  readonly outline: Polygon;
  readonly nodes: Nodes;
  readonly places: readonly Place[];
  readonly links: Links;
  /** Faces of `links.inside`. */
  readonly faces: Faces;
  /** Inside links that divide two faces. */
  readonly kept: readonly Link[];
  readonly tooShort: readonly LineId[];
}

/** So many findings of one kind are told one by one; a drawing with more of them has one reason for all. */
export const TOLD_ONE_BY_ONE = 50;

/** All that is to be said of how the lines of a drawing meet; in a fixed order, most hindering first. */
export function collectFindings(evidence: Evidence): Finding[] {
  return [looseEnds, islands, beyondOutline, overlaps, tooShort, snappedEnds].flatMap((collect) =>
    toldOneByOne(collect(evidence)),
  );
}

/** Findings of one kind as the maker is told of them: beyond the first fifty, the others are one finding. */
export function toldOneByOne(found: readonly Finding[]): readonly Finding[] {
  if (found.length <= TOLD_ONE_BY_ONE) return found;
  const rest = found.slice(TOLD_ONE_BY_ONE);
  return [
    ...found.slice(0, TOLD_ONE_BY_ONE),
    finding(rest[0]!.kind, rest[0]!.severity, say`There are ${rest.length} more places of the same kind.`, {
      at: rest.flatMap((f) => f.at),
      lines: [...new Set(rest.flatMap((f) => f.lines))].sort(),
    }),
  ];
}

const finding = (
  kind: string,
  severity: Severity,
  message: Message,
  more: Partial<Pick<Finding, 'at' | 'lines' | 'repairs'>>,
): Finding => ({ kind, severity, message, at: [], lines: [], repairs: [], ...more });

/** Ends that stop in the middle of a patch, farther from the next line than an imprecise hand explains. */
function looseEnds({ outline, places, links, faces, kept }: Evidence): Finding[] {
  const outgoing = new Outgoing(links.inside);
  const tips: number[] = [];
  for (let place = 0; place < outgoing.places; place += 1) {
    if (outgoing.degree(place) !== 1) continue;
    const half = outgoing.half(place, 0);
    if (isBridge(faces, half >> 1)) tips.push(half);
  }
  if (tips.length === 0) return [];
  const dividing = new Set(kept.flatMap((link) => link.drawn));
  const lineAhead = sightOver(kept, places);
  const found: Finding[] = [];
  for (const half of tips) {
    const link = links.inside[half >> 1]!;
    const at = places[originOf(links.inside, half)]!.at;
    const back = places[originOf(links.inside, opposite(half))]!.at;
    const ahead = lineAhead(back, at, link.line);
    if (ahead === null) continue;
    const gap = distance(at, ahead);
    const tail = distance(at, back);
    const where = placeOn(at, outline);
    const runsPast = tail < gap && link.drawn.some((id) => dividing.has(id));
    found.push(
      finding(
        'loose-end',
        'error',
        runsPast
          ? say`A line runs ${inches(tail)} past the line it meets and ends loose at ${where}. Trim it, or extend it to the next line.`
          : say`A line ends loose at ${where}, ${inches(gap)} short of the next line. Extend it, or take it away.`,
        {
          at: [at],
          lines: link.drawn,
          repairs: [
            { message: say`Extend the line by ${inches(gap)} to the next one`, splits: [[at, ahead]] },
          ],
        },
      ),
    );
  }
  return found.sort((f, g) => f.at[0]!.y - g.at[0]!.y || f.at[0]!.x - g.at[0]!.x);
}

/** How far something is off at most, in marks of a ruler: nobody reads a thousandth off one. */
function offWords(most: number): Message {
  if (most < FINEST_MARK) return say`by less than ${inches(FINEST_MARK)}`;
  return say`by no more than ${inches(Math.ceil((most - SAME_COORDINATE) / FINEST_MARK) * FINEST_MARK)}`;
}

/** Shapes that no line connects with the outline: the patch round them touches them on all sides. */
function islands({ outline, places, kept }: Evidence): Finding[] {
  const part = connectedParts(kept);
  const main = part[kept.find((link) => link.onOutline)!.from]!;
  const shapes = new Map<number, Link[]>();
  for (const link of kept) {
    const p = part[link.from]!;
    if (p !== main) push(shapes, p, link);
  }
  return [...shapes.values()].map((links) => {
    const corners = [...new Set(links.flatMap(({ from, to }) => [from, to]))].map(
      (place) => places[place]!.at,
    );
    const box = boundingBox(corners);
    const middle = midpoint({ x: box.minX, y: box.minY }, { x: box.maxX, y: box.maxY });
    return finding(
      'island',
      'error',
      say`The shape round ${placeOn(middle, outline)} lies wholly inside another patch, which would have to be sewn to it on all sides at once. Draw at least two lines from it, each to the edge or to another line.`,
      { at: corners, lines: namesOf(links) },
    );
  });
}

const namesOf = (links: readonly Link[]): LineId[] =>
  [...new Set(links.flatMap((link) => link.drawn))].sort();

/** Splits that reach beyond the outline, in part or altogether. */
function beyondOutline({ drawing, outline, places, links }: Evidence): Finding[] {
  if (links.outside.length === 0) return [];
  const insideNames = new Set(namesOf(links.inside));
  const outsideOf = linksByName(links.outside);
  return drawing.splits.flatMap(({ id }) => {
    const beyond = outsideOf.get(id);
    if (beyond === undefined) return [];
    const ends = beyond.flatMap(({ from, to }) => [places[from]!.at, places[to]!.at]);
    if (!insideNames.has(id)) {
      const at = midpoint(ends[0]!, ends[1]!);
      const message = say`A line at ${placeOn(at, outline)} lies outside the block and divides nothing. Move it in, or take it away.`;
      return [finding('outside-outline', 'caution', message, { at: [at], lines: [id] })];
    }
    const message = say`A line runs past the block’s edge near ${placeOn(ends[0]!, outline)}; the part outside is cut off.`;
    return [finding('beyond-outline', 'caution', message, { at: ends, lines: [id] })];
  });
}

/** Lines that were drawn twice, in whole or in part, or along the edge of the block. */
function overlaps({ drawing, outline, places, links }: Evidence): Finding[] {
  const linksOf = linksByName(links.inside);
  const splits = new Set(drawing.splits.map(({ id }) => id));
  const found: Finding[] = [];
  const told = new Set<string>();
  for (const { id } of drawing.splits) {
    const own = linksOf.get(id) ?? [];
    if (own.every((link) => link.drawn.length === 1)) continue;
    if (own.every((link) => link.onOutline)) {
      const at = midpoint(places[own[0]!.from]!.at, places[own[0]!.to]!.at);
      const message = say`A line lies along the block’s edge at ${placeOn(at, outline)} and divides nothing. Take it away, or move it in.`;
      found.push(finding('along-edge', 'caution', message, { at: [at], lines: [id] }));
      continue;
    }
    for (const [other, shared] of linksByName(own)) {
      const pair = [id, other].sort().join(' ');
      if (other === id || !splits.has(other) || told.has(pair)) continue;
      told.add(pair);
      const at = midpoint(places[shared[0]!.from]!.at, places[shared[0]!.to]!.at);
      const whole = shared.length === own.length || shared.length === linksOf.get(other)!.length;
      const message = whole
        ? say`A line was drawn twice at ${placeOn(at, outline)}; it counts once.`
        : say`Two lines lie on each other for a stretch at ${placeOn(at, outline)}; it counts once.`;
      const kind = whole ? 'repeated-split' : 'overlapping-splits';
      found.push(finding(kind, 'caution', message, { at: [at], lines: [id, other] }));
    }
  }
  return found;
}

/** For each drawn line, the links that it covers, in order; lines in the order of their first links. */
function linksByName(links: readonly Link[]): Map<LineId, Link[]> {
  const linksOf = new Map<LineId, Link[]>();
  for (const link of links) for (const id of link.drawn) push(linksOf, id, link);
  return linksOf;
}

function push<K, V>(lists: Map<K, V[]>, key: K, value: V): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [value]);
  else list.push(value);
}

function tooShort({ drawing, outline, tooShort: ids }: Evidence): Finding[] {
  const short = new Set(ids);
  return drawing.splits.flatMap(({ id, from }) => {
    if (!short.has(id)) return [];
    const at = drawing.points[from]!;
    const message = say`A line at ${placeOn(at, outline)} is too short to be a seam and is left out.`;
    return [finding('too-short', 'caution', message, { at: [at], lines: [id] })];
  });
}

/** Ends that were not drawn where they count: one finding for all, since they have one cause. */
function snappedEnds({ drawing, nodes, places, tooShort: ids }: Evidence): Finding[] {
  const left = new Set(ids);
  const splits = drawing.splits.filter((split) => !left.has(split.id));
  const ends = new Set(splits.flatMap(({ from, to }) => [from, to]));
  const moved = [...ends].flatMap((id) => {
    const at = drawing.points[id]!;
    const off = distance(at, places[nodes.nodeOf.get(id)!]!.at);
    return off > SAME_COORDINATE ? [{ id, at, off }] : [];
  });
  if (moved.length === 0) return [];
  const most = moved.reduce((max, { off }) => Math.max(max, off), 0);
  const movedIds = new Set(moved.map(({ id }) => id));
  const off = offWords(most);
  const message =
    moved.length === 1
      ? say`One line end misses the line or corner beside it ${off}; it is taken to meet it.`
      : say`${moved.length} line ends miss the lines or corners beside them ${off}; they are taken to meet them.`;
  return [
    finding('snapped-ends', 'caution', message, {
      at: moved.map(({ at: { x, y } }) => ({ x, y })),
      lines: splits.filter(({ from, to }) => movedIds.has(from) || movedIds.has(to)).map(({ id }) => id),
    }),
  ];
}
