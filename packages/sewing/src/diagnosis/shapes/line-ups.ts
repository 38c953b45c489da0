import { type Arrangement, type Finding, inches, placeOn, say } from '@seamwright/arrangement';
import {
  cross,
  distance,
  dot,
  LINE_UP_ANGLE,
  LINE_UP_DISTANCE,
  midpoint,
  type Point,
  subtract,
} from '@seamwright/geometry';

/** Two seams that nearly make one straight line: where each of them ends, and its other end. */
export interface NearLineUp {
  readonly ends: readonly [NearEnd, NearEnd];
  /** The line on either side of which they end; null where they meet and bend. */
  readonly across: number | null;
}

export interface NearEnd {
  readonly line: number;
  readonly vertex: number;
  /** The next vertex of the line, away from the other seam. */
  readonly next: number;
  /** The edge between the two. */
  readonly edge: number;
}

/** Where seams nearly line up: they bend by a little where they meet, or stop beside each other on either side of a line. */
export function nearLineUps(arrangement: Arrangement): Finding[] {
  return findNearLineUps(arrangement).map((found): Finding => {
    const [{ vertex: v }, { vertex: w }] = found.ends;
    const [p, q] = [arrangement.vertices[v]!.at, arrangement.vertices[w]!.at];
    const where = placeOn(midpoint(p, q), arrangement.outline);
    const how =
      v === w
        ? say`bend by ${Math.round(bendOf(arrangement, found) * 10) / 10}° where they meet at ${where}`
        : say`miss each other by ${inches(distance(p, q))} at ${where}`;
    return {
      kind: 'near-line-up',
      severity: 'caution',
      message: say`Two lines nearly line up, but ${how}. Line them up, or move them clearly apart.`,
      at: v === w ? [p] : [p, q],
      lines: [...new Set(found.ends.flatMap(({ edge }) => arrangement.edges[edge]!.drawn))].sort(),
      repairs: [],
    };
  });
}

export function findNearLineUps(arrangement: Arrangement): NearLineUp[] {
  const { vertices, edges, lines } = arrangement;
  const ending: NearEnd[][] = vertices.map(() => []);
  const alongAt: Omit<NearEnd, 'vertex'>[][] = vertices.map(() => []);
  for (const { index, from, to, line } of edges) {
    alongAt[from]!.push({ line, next: to, edge: index });
    alongAt[to]!.push({ line, next: from, edge: index });
  }
  const onOutline = new Set(edges.flatMap(({ left, right, line }) => (left < 0 || right < 0 ? [line] : [])));
  vertices.forEach(({ index }) => {
    for (const along of alongAt[index]!) {
      const here = alongAt[index]!.filter((other) => other.line === along.line).length;
      if (here === 1 && !onOutline.has(along.line)) ending[index]!.push({ ...along, vertex: index });
    }
  });

  const found: NearLineUp[] = [];
  const consider = (end: NearEnd, other: NearEnd, across: number | null) => {
    const pair: NearLineUp = { ends: [end, other], across };
    if (end.line !== other.line && bendOf(arrangement, pair) <= LINE_UP_ANGLE) found.push(pair);
  };
  for (const here of ending) {
    here.forEach((end, i) => {
      for (const other of here.slice(i + 1)) consider(end, other, null);
    });
  }
  for (const { from, to, line } of edges) {
    const { a, b } = lines[line]!;
    if (distance(vertices[from]!.at, vertices[to]!.at) > LINE_UP_DISTANCE) continue;
    const side = (end: NearEnd) => Math.sign(cross(subtract(b, a), subtract(vertices[end.next]!.at, a)));
    for (const end of ending[from]!) {
      for (const other of ending[to]!) {
        if (end.line !== line && other.line !== line && side(end) * side(other) < 0)
          consider(end, other, line);
      }
    }
  }
  return found;
}

/** By how much a walk along one of the seams would turn to go on along the other, degrees. */
function bendOf({ vertices }: Arrangement, { ends: [end, other] }: NearLineUp): number {
  const at = (vertex: number): Point => vertices[vertex]!.at;
  const u = subtract(at(end.vertex), at(end.next));
  const v = subtract(at(other.next), at(other.vertex));
  return (Math.abs(Math.atan2(cross(u, v), dot(u, v))) * 180) / Math.PI;
}
