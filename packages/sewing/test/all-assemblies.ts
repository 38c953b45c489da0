/**
 * All assemblies of small blocks, by trying everything, each with its figures by definition. As brute-force.ts, it shares
 * nothing with the solver: it sees polygons.
 */
import { type Contacts, contactsOf, type Pair, type Stretch, Trial } from './brute-force.ts';

/** The figures by which plans are compared, in that order. */
export interface Key {
  readonly foundations: number;
  readonly matchPoints: number;
  readonly templates: number;
  readonly joinLength: number;
}

/** Inches: nearer than this, corners are the same. */
const SAME = 1e-4;

/** Different outcomes of one set of patches: with more, the drawing is too much for this. */
const MOST_OUTCOMES = 20_000;

/** An assembly, but for the order of its joins: its sections as sets of patches, and what its joins add up to. */
interface Outcome {
  readonly sections: readonly number[];
  readonly matchPoints: number;
  readonly joinLength: number;
}

/** Which assemblies are wanted; in all of them, what one foundation holds is one section. */
export type Wanted = 'those with the fewest foundations' | 'all';

/**
 * The figures of every assembly; those that occur more than once, once.
 *
 * @param polygons of at most 12 patches without holes, which fill the block
 * @returns null where that is too much, or unclear what was drawn; none where straight seams do not suffice
 */
export function keysOf(wanted: Wanted, polygons: readonly (readonly Pair[])[]): Key[] | null {
  const contacts = contactsOf(polygons);
  if (contacts === null) return null;
  const outcomes = new AllAssemblies(contacts, polygons, wanted).outcomes();
  if (outcomes === null) return null;
  const copies = new Copies(polygons);
  return outcomes.map(({ sections, matchPoints, joinLength }) => ({
    foundations: sections.length,
    matchPoints,
    templates: copies.different(sections),
    joinLength,
  }));
}

/** The best of some keys: the first figure decides, then the next. */
export function leastKey(keys: readonly Key[], figures: readonly (keyof Key)[]): Key {
  return keys.reduce((best, key) => {
    const figure = figures.find((name) => Math.abs(key[name] - best[name]) > SAME);
    return figure !== undefined && key[figure] < best[figure] ? key : best;
  });
}

class AllAssemblies {
  private readonly trial: Trial;
  private readonly known = new Map<number, Outcome[] | null>();

  constructor(
    private readonly contacts: Contacts,
    private readonly polygons: readonly (readonly Pair[])[],
    private readonly wanted: Wanted,
  ) {
    this.trial = new Trial(contacts.lines);
  }

  outcomes(): Outcome[] | null {
    return Number.isFinite(this.trial.costOf(this.trial.all)) ? this.of(this.trial.all) : [];
  }

  private of(set: number): Outcome[] | null {
    if (this.trial.isSection(set)) return [{ sections: [set], matchPoints: 0, joinLength: 0 }];
    let outcomes = this.known.get(set);
    if (outcomes === undefined) {
      outcomes = this.anew(set);
      this.known.set(set, outcomes);
    }
    return outcomes;
  }

  private anew(set: number): Outcome[] | null {
    const found = new Map<string, Outcome>();
    for (const [part, rest] of this.trial.joinsOf(set)) {
      const foundations = this.trial.costOf(part) + this.trial.costOf(rest);
      if (this.wanted !== 'all' && foundations > this.trial.costOf(set)) continue;
      const [first, second] = [this.of(part), this.of(rest)];
      if (first === null || second === null) return null;
      const { matchPoints, length } = this.seam(part, rest);
      for (const a of first) {
        for (const b of second) {
          const sections = [...a.sections, ...b.sections].sort((s, t) => s - t);
          const points = a.matchPoints + b.matchPoints + matchPoints;
          const joinLength = a.joinLength + b.joinLength + length;
          found.set(`${sections} ${points} ${joinLength.toFixed(4)}`, {
            sections,
            matchPoints: points,
            joinLength,
          });
        }
      }
      if (found.size > MOST_OUTCOMES) return null;
    }
    return [...found.values()];
  }

  /** The one straight seam between two sets: its length, and the corners of patches that lie inside it. */
  private seam(part: number, rest: number): { matchPoints: number; length: number } {
    const has = (set: number, p: number) => ((set >> p) & 1) === 1;
    const ends = this.contacts.stretches
      .filter(({ i, j }) => (has(part, i) && has(rest, j)) || (has(part, j) && has(rest, i)))
      .flatMap(({ stretch }) => stretch);
    const [a, b] = farthest(ends);
    const length = apart(a, b);
    const inside: Pair[] = [];
    for (const corner of this.polygons.filter((_, p) => has(part | rest, p)).flat()) {
      // On the seam, the ways to its two ends add up to its length.
      const onSeam = apart(a, corner) + apart(corner, b) - length < 1e-6;
      const atEnd = apart(a, corner) < SAME || apart(corner, b) < SAME;
      if (onSeam && !atEnd && inside.every((other) => apart(other, corner) > SAME)) inside.push(corner);
    }
    return { matchPoints: inside.length, length };
  }
}

const apart = ([x, y]: Pair, [u, v]: Pair): number => Math.hypot(u - x, v - y);

function farthest(points: readonly Pair[]): Stretch {
  let best: Stretch = [points[0]!, points[0]!];
  for (const p of points) for (const q of points) if (apart(p, q) > apart(...best)) best = [p, q];
  return best;
}

/** Which sets of patches are turned or mirrored copies of each other. */
class Copies {
  /** One set of each kind, by how many patches it has. */
  private readonly kinds = new Map<number, number[]>();
  private readonly kindOf = new Map<number, number>();

  constructor(private readonly polygons: readonly (readonly Pair[])[]) {}

  different(sets: readonly number[]): number {
    return new Set(sets.map((set) => this.kind(set))).size;
  }

  private kind(set: number): number {
    const known = this.kindOf.get(set);
    if (known !== undefined) return known;
    const shapes = this.shapesOf(set);
    const alike = this.kinds.get(shapes.length) ?? [];
    const kind = alike.find((other) => this.areCopies(this.shapesOf(other), shapes)) ?? set;
    if (kind === set) this.kinds.set(shapes.length, [...alike, set]);
    this.kindOf.set(set, kind);
    return kind;
  }

  private shapesOf(set: number): readonly (readonly Pair[])[] {
    return this.polygons.filter((_, p) => ((set >> p) & 1) === 1);
  }

  /** Whether some motion lays each patch on another: the first patch must come to lie on one of them in one of its ways. */
  private areCopies(some: readonly (readonly Pair[])[], others: readonly (readonly Pair[])[]): boolean {
    const [first] = some;
    return others.some((target) =>
      target.some((p, i) =>
        [1, -1].some((turn) => {
          const q = target[(i + turn + target.length) % target.length]!;
          const moved = motion(first![0]!, first![1]!, p, q, turn);
          return some.every((shape) => others.some((other) => sameShape(shape.map(moved), other)));
        }),
      ),
    );
  }
}

/** Carries a to p and the way to b to the way to q; mirrored where the corners run the other way round. */
function motion(a: Pair, b: Pair, p: Pair, q: Pair, turn: number): (point: Pair) => Pair {
  const way = ([x, y]: Pair, [u, v]: Pair): Pair => {
    const size = Math.hypot(u - x, v - y);
    return [(u - x) / size, (v - y) / size];
  };
  const [from, to] = [way(a, b), way(p, q)];
  return ([x, y]) => {
    const along = (x - a[0]) * from[0] + (y - a[1]) * from[1];
    const beside = turn * ((y - a[1]) * from[0] - (x - a[0]) * from[1]);
    return [p[0] + along * to[0] - beside * to[1], p[1] + along * to[1] + beside * to[0]];
  };
}

const sameShape = (shape: readonly Pair[], other: readonly Pair[]): boolean =>
  shape.length === other.length && shape.every((corner) => other.some((p) => apart(p, corner) < SAME));
