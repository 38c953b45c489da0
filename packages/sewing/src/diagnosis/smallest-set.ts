import { type ContactGraph, isInterlocked, isMinimal, linesWithin, partsWithout } from './labelled-graph.ts';

/**
 * How many sets of patches are looked at to prove that none smaller is interlocked: about a tenth of a second. Counted and
 * not timed, so that the same drawing has the same answer on every machine.
 */
export const SETS_LOOKED_AT = 5_000;

/**
 * Makes a set smaller for as long as what is wanted of it holds without one of its nodes.
 *
 * @param keep what is left of a smaller set that still serves, or null when it does not
 */
export function shrunk(
  nodes: ReadonlySet<number>,
  keep: (smaller: ReadonlySet<number>) => ReadonlySet<number> | null,
): ReadonlySet<number> {
  let set = nodes;
  for (const node of nodes) {
    if (!set.has(node)) continue;
    const smaller = new Set(set);
    smaller.delete(node);
    set = keep(smaller) ?? set;
  }
  return set;
}

/** What {@link smallestInterlocked} found out. */
export interface SmallestSet {
  /** The smallest set, or null when there is none of that size, or none was found. */
  readonly set: ReadonlySet<number> | null;
  /** Whether all smaller sets were looked at. */
  readonly proved: boolean;
  readonly effortLeft: number;
}

/**
 * The smallest interlocked set of at most `most` nodes that holds one of the roots and is minimal: no part of it is
 * interlocked.
 *
 * A set is interlocked when it is connected and stays so whichever line's contacts are left out. So a set that is not has a
 * line without which a part of it hangs loose, and an interlocked set that holds it all must hold one more neighbour of that
 * part, on another line. Sets are grown by these neighbours only, each neighbour tried once and then ruled out. A minimal
 * set cannot be taken apart at one node either (each half would be interlocked), so in it no two nodes are farther apart
 * than half its size.
 *
 * @param accept what else is wanted of the set
 */
export function smallestInterlocked(
  graph: ContactGraph,
  roots: readonly number[],
  most: number,
  accept: (set: ReadonlySet<number>) => boolean,
  effort = SETS_LOOKED_AT,
): SmallestSet {
  const search = new Search(graph, accept, effort);
  for (let size = 2; size <= most; size += 1) {
    const set = search.ofSize(size, roots);
    if (search.spent) return { set, proved: false, effortLeft: 0 };
    if (set !== null) return { set, proved: true, effortLeft: search.left };
  }
  return { set: null, proved: true, effortLeft: search.left };
}

class Search {
  /** For nodes that were asked about, those that may be in a set with them. */
  private readonly near = new Map<number, ReadonlySet<number>>();

  constructor(
    private readonly graph: ContactGraph,
    private readonly accept: (set: ReadonlySet<number>) => boolean,
    private effort: number,
  ) {}

  get left(): number {
    return Math.max(0, this.effort);
  }

  get spent(): boolean {
    return this.effort <= 0;
  }

  ofSize(size: number, roots: readonly number[]): ReadonlySet<number> | null {
    this.near.clear();
    const ruledOut = new Set<number>();
    for (const root of roots) {
      const found = this.grown(new Set([root]), ruledOut, size);
      if (found !== null || this.spent) return found;
      ruledOut.add(root);
    }
    return null;
  }

  private grown(set: Set<number>, ruledOut: Set<number>, size: number): ReadonlySet<number> | null {
    this.effort -= 1;
    if (this.spent) return null;
    if (isInterlocked(this.graph, set)) {
      const wanted = set.size === size && isMinimal(this.graph, set) && this.accept(set);
      return wanted ? set : null;
    }
    if (set.size === size) return null;
    const ruledOutHere: number[] = [];
    let found: ReadonlySet<number> | null = null;
    for (const node of this.waysOn(set)) {
      if (ruledOut.has(node) || !this.isNear(node, set, size)) continue;
      found = this.grown(new Set(set).add(node), ruledOut, size);
      if (found !== null || this.spent) break;
      ruledOut.add(node);
      ruledOutHere.push(node);
    }
    for (const node of ruledOutHere) ruledOut.delete(node);
    return found;
  }

  /** The neighbours of which an interlocked set that holds `set` must hold one: as few as a loose part has. */
  private waysOn(set: ReadonlySet<number>): number[] {
    if (set.size === 1) return this.neighbours(set, set, null);
    let fewest: number[] | null = null;
    for (const line of linesWithin(this.graph, set)) {
      const parts = partsWithout(this.graph, set, line);
      if (parts.length === 1) continue;
      for (const part of parts) {
        const ways = this.neighbours(part, set, line);
        if (fewest === null || ways.length < fewest.length) fewest = ways;
      }
    }
    return fewest ?? [];
  }

  private neighbours(part: ReadonlySet<number>, set: ReadonlySet<number>, without: number | null): number[] {
    const found = new Set<number>();
    for (const node of part) {
      for (const { neighbour, line } of this.graph.get(node)!)
        if (line !== without && !set.has(neighbour)) found.add(neighbour);
    }
    return [...found].sort((p, q) => p - q);
  }

  private isNear(node: number, set: ReadonlySet<number>, size: number): boolean {
    const near = this.nodesNear(node, size);
    for (const other of set) if (!near.has(other)) return false;
    return true;
  }

  /** The nodes no farther from one than half the size of a set. */
  private nodesNear(start: number, size: number): ReadonlySet<number> {
    const known = this.near.get(start);
    if (known !== undefined) return known;
    const distances = new Map([[start, 0]]);
    for (const [node, distance] of distances) {
      if (distance + 1 > size / 2) break;
      for (const { neighbour } of this.graph.get(node)!)
        if (!distances.has(neighbour)) distances.set(neighbour, distance + 1);
    }
    const near = new Set(distances.keys());
    this.near.set(start, near);
    return near;
  }
}
