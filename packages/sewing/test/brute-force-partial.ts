import type { Arrangement } from '@seamwright/arrangement';

/** One stretch of boundary between two patches. */
interface Contact {
  readonly index: number;
  readonly line: number;
  readonly ends: readonly [number, number];
  /** The two patches, as bits of a set. */
  readonly sides: number;
}

/**
 * The fewest foundations of a block where seams may be left open, by trying everything: all sections, all joins along one
 * straight line, and before each of them all ways of leaving one more seam open from the boundary of what is being sewn up to
 * half of any of its edges, as many as there can be. Of the solver it uses nothing; who touches whom, on which line, is the
 * arrangement's.
 *
 * @param arrangement of at most 12 patches without holes
 * @returns infinite where partial seams do not suffice
 */
export const fewestWithOpenSeams = (arrangement: Arrangement): number => new OpenTrial(arrangement).fewest();

class OpenTrial {
  private readonly contacts: readonly Contact[];
  /** For each vertex, the patches round it; null on the block's edge. */
  private readonly round: readonly (number | null)[];
  private readonly count: number;
  private readonly known = new Map<string, number>();

  constructor({ edges, patches, vertices }: Arrangement) {
    this.count = patches.length;
    const round: (number | null)[] = vertices.map(() => 0);
    const contacts: Contact[] = [];
    for (const { index, line, from, to, left, right } of edges) {
      if (left >= 0 && right >= 0)
        contacts.push({ index, line, ends: [from, to], sides: (1 << left) | (1 << right) });
      for (const vertex of [from, to])
        round[vertex] =
          left < 0 || right < 0 || round[vertex] === null
            ? null
            : round[vertex]! | (1 << left) | (1 << right);
    }
    this.contacts = contacts;
    this.round = round;
  }

  fewest(): number {
    return this.cost((1 << this.count) - 1, new Set(), new Set());
  }

  /**
   * @param open contacts that are open
   * @param tips contacts that are sewn half-way
   */
  private cost(set: number, open: ReadonlySet<number>, tips: ReadonlySet<number>): number {
    const within = this.contacts.filter(({ sides }) => (sides & set) === sides);
    const own = (marked: ReadonlySet<number>) => within.filter(({ index }) => marked.has(index));
    // Which vertices lie on open seams matters beyond the contacts that are still in the set.
    const beside = [...open].filter((i) => this.contacts.some((c) => c.index === i && (c.sides & set) !== 0));
    const key = `${set}|${beside.sort((p, q) => p - q)}|${own(tips).map(({ index }) => index)}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const least = this.costAnew(set, within, open, tips);
    this.known.set(key, least);
    return least;
  }

  private costAnew(
    set: number,
    within: readonly Contact[],
    open: ReadonlySet<number>,
    tips: ReadonlySet<number>,
  ): number {
    const sewn = within.filter(({ index }) => !open.has(index));
    const undivided = sewn.length === within.length && !sewn.some(({ index }) => tips.has(index));
    if (undivided && peels(set, sewn)) return 1;
    let least = Number.POSITIVE_INFINITY;
    const first = set & -set;
    for (let more = (set ^ first) & ((set ^ first) - 1); ; more = (more - 1) & (set ^ first)) {
      const part = first | more;
      const rest = set ^ part;
      const lines = new Set(
        sewn.filter(({ sides }) => (sides & part) !== 0 && (sides & rest) !== 0).map(({ line }) => line),
      );
      if (rest !== 0 && lines.size === 1 && isConnected(part, sewn) && isConnected(rest, sewn))
        least = Math.min(least, this.cost(part, open, tips) + this.cost(rest, open, tips));
      if (more === 0) break;
    }
    for (const { opened, tip } of this.slits(set, sewn, open))
      least = Math.min(least, this.cost(set, new Set([...open, ...opened]), new Set([...tips, tip])));
    return least;
  }

  private slits(set: number, sewn: readonly Contact[], open: ReadonlySet<number>) {
    const onOpen = new Set(this.contacts.filter(({ index }) => open.has(index)).flatMap(({ ends }) => ends));
    const atBoundary = (vertex: number) => {
      const patches = this.round[vertex]!;
      return patches === null || (patches & ~set) !== 0 || onOpen.has(vertex);
    };
    const found: { opened: number[]; tip: number }[] = [];
    for (const start of sewn) {
      for (const from of start.ends) {
        if (!atBoundary(from)) continue;
        const opened = [start.index];
        let [last, at] = [start, other(start, from)];
        while (!atBoundary(at)) {
          const next = sewn.find((c) => c !== last && c.line === start.line && c.ends.includes(at));
          if (next === undefined) break;
          found.push({ opened: [...opened], tip: next.index });
          opened.push(next.index);
          [last, at] = [next, other(next, at)];
        }
      }
    }
    return found;
  }
}

const other = ({ ends: [a, b] }: Contact, end: number): number => (end === a ? b : a);

/** Whether patches come off a set, one by one along one line, and leave it connected, until one is left. */
function peels(set: number, contacts: readonly Contact[]): boolean {
  if ((set & (set - 1)) === 0) return true;
  for (let left = set; left !== 0; left &= left - 1) {
    const patch = left & -left;
    const rest = set ^ patch;
    const lines = new Set(
      contacts.filter(({ sides }) => (sides & patch) !== 0 && (sides & rest) !== 0).map(({ line }) => line),
    );
    const inRest = contacts.filter(({ sides }) => (sides & rest) === sides);
    if (lines.size === 1 && isConnected(rest, inRest) && peels(rest, inRest)) return true;
  }
  return false;
}

function isConnected(set: number, contacts: readonly Contact[]): boolean {
  let reached = set & -set;
  for (let grown = true; grown; ) {
    grown = false;
    for (const { sides } of contacts) {
      if ((sides & set) !== sides || (sides & reached) === 0 || (sides & ~reached) === 0) continue;
      reached |= sides;
      grown = true;
    }
  }
  return reached === set;
}
