import type { Arrangement } from '@seamwright/arrangement';
import type { Touching } from './contact.ts';

/** A block and who touches whom in it. */
export interface Touched {
  readonly arrangement: Arrangement;
  readonly touching: Touching;
}

/** What the patches and lines of one block are called in another of the same structure. */
export interface Renumbering {
  /** By patch index of the one: patch index of the other. */
  readonly patches: readonly number[];
  /** By line index of the one: line index of the other; of lines that bound no patch, undefined. */
  readonly lines: readonly (number | undefined)[];
}

/**
 * How the patches and lines of one block are to be numbered to make those of another, where only places have changed:
 * null where anything else has.
 *
 * Patches, lines and edges are numbered by where they lie and how long they are, so their numbers change while a line is
 * dragged. Lines are known again by what the maker drew on them; the edges of a line follow each other along it; on the
 * left and the right of each lies a patch. Where that brings every patch and every vertex of the one together with one of
 * the other, the same patches touch along the same stretches of the same lines.
 */
export function renumbering(one: Touched, other: Touched): Renumbering | null {
  const runs = runsByLine(other);
  const lines: (number | undefined)[] = [];
  const patches = new Pairs(one.touching.count, other.touching.count);
  const vertices = new Pairs(one.arrangement.vertices.length, other.arrangement.vertices.length);
  for (const [name, run] of runsByLine(one)) {
    const match = runs.get(name);
    if (match === undefined || match.length !== run.length) return null;
    lines[one.touching.line[run.first]!] = other.touching.line[match.first]!;
    for (let i = 0; i < run.length; i += 1) {
      const [rank, rankThere] = [run.first + i, match.first + i];
      const [left, right] = sidesOf(one, rank);
      const [leftThere, rightThere] = sidesOf(other, rankThere);
      const same =
        patches.pair(left, leftThere) &&
        patches.pair(right, rightThere) &&
        vertices.pair(one.touching.start[rank]!, other.touching.start[rankThere]!) &&
        vertices.pair(one.touching.end[rank]!, other.touching.end[rankThere]!);
      if (!same) return null;
    }
  }
  const whole = one.touching.edge.length === other.touching.edge.length && patches.all && vertices.all;
  return whole ? { patches: patches.there, lines } : null;
}

/** The edges of one line along it: the rank of the first, and how many they are. */
interface Run {
  readonly first: number;
  length: number;
}

/** The edges of each line, by what the maker drew on the line; lines without edges are left out. */
function runsByLine({ arrangement, touching: { line } }: Touched): Map<string, Run> {
  const runs = new Map<number, Run>();
  line.forEach((own, rank) => {
    const run = runs.get(own);
    if (run === undefined) runs.set(own, { first: rank, length: 1 });
    else run.length += 1;
  });
  return new Map(
    [...runs].map(([own, run]) => [JSON.stringify([...arrangement.lines[own]!.members].sort()), run]),
  );
}

/** The patches on the left and on the right of an edge along its line's direction, by its rank; -1: outside the block. */
function sidesOf({ arrangement, touching }: Touched, rank: number): readonly [number, number] {
  const { from, left, right } = arrangement.edges[touching.edge[rank]!]!;
  return from === touching.start[rank] ? [left, right] : [right, left];
}

/** Numbers of one kind in two blocks, each paired with at most one of the other block. */
class Pairs {
  readonly there: number[];
  private readonly here: number[];
  private paired = 0;

  constructor(count: number, countThere: number) {
    this.there = new Array<number>(count).fill(-1);
    this.here = new Array<number>(countThere).fill(-1);
  }

  /** False where either is paired with another already. The outside, -1, goes with the outside only. */
  pair(number: number, there: number): boolean {
    if (number < 0 || there < 0) return number === there;
    if (this.there[number] === there) return true;
    if (this.there[number] !== -1 || this.here[there] !== -1) return false;
    this.there[number] = there;
    this.here[there] = number;
    this.paired += 1;
    return true;
  }

  /** Whether every number of both has its partner. */
  get all(): boolean {
    return this.paired === this.there.length && this.paired === this.here.length;
  }
}
