/**
 * What can be sewn, by trying everything. It shares nothing with the solver: it sees polygons, finds from their
 * coordinates who touches whom on which line, and tries all orders and all joins of all sets of patches.
 */

export type Pair = readonly [number, number];
export type Stretch = readonly [Pair, Pair];

/** Inches: sides of two polygons nearer than this lie on each other. Far above rounding, far below any real gap. */
const TOUCH = 1e-5;

/** Inches: ends nearer than this to one line lie on it… */
const STRAIGHT = 1e-4;

/** Inches: … and stretches of which none is farther than this from one line must lie on it; what is between is unclear. */
const CLEARLY_BENT = 1 / 32;

export interface BruteAnswer {
  readonly oneFoundation: boolean;
  readonly straightSeams: boolean;
  /** Null where straight seams do not suffice. */
  readonly fewest: number | null;
}

/**
 * How patches are sewn, from their polygons alone.
 *
 * @param polygons of at most 16 patches without holes, which fill the block
 * @returns null where two seams so nearly lie on one line that the coordinates do not say whether they do
 */
export function byBruteForce(polygons: readonly (readonly Pair[])[]): BruteAnswer | null {
  const contacts = contactsOf(polygons);
  return contacts === null ? null : new Trial(contacts.lines).answer();
}

/** Where patches touch. */
export interface Contacts {
  readonly stretches: readonly { readonly i: number; readonly j: number; readonly stretch: Stretch }[];
  /** For any two patches, the numbers of the lines on which they touch. */
  readonly lines: readonly (readonly (readonly number[])[])[];
}

/** Null where it is unclear which stretches lie on one line. */
export function contactsOf(polygons: readonly (readonly Pair[])[]): Contacts | null {
  const stretches = polygons.flatMap((p, i) =>
    polygons.slice(0, i).flatMap((q, j) => sharedBy(p, q).map((stretch) => ({ i, j, stretch }))),
  );
  const known: Stretch[] = [];
  const lines: number[][][] = polygons.map(() => polygons.map(() => []));
  for (const { i, j, stretch } of stretches) {
    const bends = known.map((other) => bendOf(stretch, other));
    if (bends.some((bend) => bend > STRAIGHT && bend < CLEARLY_BENT)) return null;
    const same = bends.findIndex((bend) => bend <= STRAIGHT);
    const line = same < 0 ? known.push(stretch) - 1 : same;
    // The longer a line is known to be, the better it tells.
    if (same >= 0) known[same] = farthest([...known[same]!, ...stretch]);
    lines[i]![j]!.push(line);
    lines[j]![i]!.push(line);
  }
  return { stretches, lines };
}

function sharedBy(p: readonly Pair[], q: readonly Pair[]): Stretch[] {
  const sides = (polygon: readonly Pair[]): Stretch[] =>
    polygon.map((corner, i) => [corner, polygon[(i + 1) % polygon.length]!]);
  return sides(p).flatMap((side) => sides(q).flatMap((other) => overlap(side, other)));
}

/** The stretch that two sides share, if one lies along the other. */
function overlap([a, b]: Stretch, other: Stretch): Stretch[] {
  const length = distance(a, b);
  const [dx, dy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const along = ([x, y]: Pair) => (x - a[0]) * dx + (y - a[1]) * dy;
  const [s, t] = other.map(along) as [number, number];
  const [low, high] = [Math.max(0, Math.min(s, t)), Math.min(length, Math.max(s, t))];
  if (high - low <= TOUCH) return [];
  const at = (u: number): Pair => [a[0] + u * dx, a[1] + u * dy];
  const stretch: Stretch = [at(low), at(high)];
  return stretch.every((end) => offLine(end, other) <= TOUCH) ? [stretch] : [];
}

/** How far the ends of two stretches are from the line through the farthest two of them, at most. */
function bendOf(stretch: Stretch, other: Stretch): number {
  const ends = [...stretch, ...other];
  const line = farthest(ends);
  return Math.max(...ends.map((end) => offLine(end, line)));
}

function farthest(points: readonly Pair[]): Stretch {
  let best: Stretch = [points[0]!, points[0]!];
  for (const p of points) for (const q of points) if (distance(p, q) > distance(...best)) best = [p, q];
  return best;
}

const distance = (p: Pair, q: Pair): number => Math.hypot(q[0] - p[0], q[1] - p[1]);

const offLine = ([x, y]: Pair, [a, b]: Stretch): number =>
  Math.abs((x - a[0]) * (b[1] - a[1]) - (y - a[1]) * (b[0] - a[0])) / distance(a, b);

/** All sets of patches as bits of a number. */
export class Trial {
  readonly all: number;
  private readonly count: number;
  /** `linesTo[p][set]`: on how many lines patch p touches the set, as bits. */
  private readonly linesTo: Int32Array[];
  private readonly connected: Uint8Array;
  /** Sets that have a piecing order, on one foundation. */
  private readonly ordered: Uint8Array;
  private readonly costs = new Map<number, number>();

  constructor(lines: readonly (readonly (readonly number[])[])[]) {
    this.count = lines.length;
    const sets = 1 << this.count;
    this.all = sets - 1;
    if (lines.flat(2).some((line) => line > 30)) throw new Error('more lines than bits');
    const between = lines.map((row) => row.map((on) => on.reduce((bits, line) => bits | (1 << line), 0)));
    this.linesTo = between.map((row) => {
      const to = new Int32Array(sets);
      for (let set = 1; set < sets; set += 1) to[set] = to[set & (set - 1)]! | row[lowest(set)]!;
      return to;
    });
    this.connected = new Uint8Array(sets);
    this.ordered = new Uint8Array(sets);
    for (let set = 1; set < sets; set += 1) {
      if ((set & (set - 1)) === 0) {
        this.connected[set] = 1;
        this.ordered[set] = 1;
        continue;
      }
      for (let patch = 0; patch < this.count; patch += 1) {
        const rest = set & ~(1 << patch);
        const contact = this.linesTo[patch]![rest]!;
        if (rest === set || contact === 0) continue;
        // A connected set has a patch that can be left out last of all: one farthest from some other.
        if (this.connected[rest] === 1) this.connected[set] = 1;
        // The patch is sewn last, along one line.
        if (this.ordered[rest] === 1 && isOneLine(contact)) this.ordered[set] = 1;
      }
    }
  }

  answer(): BruteAnswer {
    const cost = this.costOf(this.all);
    return {
      oneFoundation: this.ordered[this.all] === 1,
      straightSeams: Number.isFinite(cost),
      fewest: Number.isFinite(cost) ? cost : null,
    };
  }

  /** The fewest foundations of a connected set, infinite where no joins along straight seams make it. */
  costOf(set: number): number {
    if (this.ordered[set] === 1) return 1;
    const known = this.costs.get(set);
    if (known !== undefined) return known;
    let least = Number.POSITIVE_INFINITY;
    for (const [part, rest] of this.joinsOf(set)) {
      least = Math.min(least, this.costOf(part) + this.costOf(rest));
    }
    this.costs.set(set, least);
    return least;
  }

  /** Whether one foundation holds the set. */
  isSection(set: number): boolean {
    return this.ordered[set] === 1;
  }

  /** All pairs of connected sets that one straight join makes the set of. */
  *joinsOf(set: number): Generator<readonly [number, number]> {
    const first = set & -set;
    // Every part that holds the first patch, and the rest.
    const others = set ^ first;
    for (let more = (others - 1) & others; ; more = (more - 1) & others) {
      const part = first | more;
      const rest = set ^ part;
      if (this.connected[part] === 1 && this.connected[rest] === 1 && this.touchOnOneLine(part, rest)) {
        yield [part, rest];
      }
      if (more === 0) break;
    }
  }

  private touchOnOneLine(part: number, rest: number): boolean {
    let contact = 0;
    for (let left = part; left !== 0; left &= left - 1) contact |= this.linesTo[lowest(left)]![rest]!;
    return isOneLine(contact);
  }
}

const lowest = (set: number): number => 31 - Math.clz32(set & -set);

const isOneLine = (lines: number): boolean => lines !== 0 && (lines & (lines - 1)) === 0;
