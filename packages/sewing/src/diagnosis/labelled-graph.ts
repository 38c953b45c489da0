/** A neighbour in a contact graph, and the line of the contact. */
export interface Link {
  readonly neighbour: number;
  readonly line: number;
}

/**
 * Who touches whom on which line, of some patches of a block: nodes are patches (or several patches taken for one), links
 * their contacts. Two nodes may be linked along several lines.
 */
export interface ContactGraph {
  get(node: number): readonly Link[] | undefined;
}

/** The connected parts of `nodes` when contacts on the line `without` do not count (none: all count), in their order. */
export function partsWithout(
  graph: ContactGraph,
  nodes: ReadonlySet<number>,
  without: number | null,
): Set<number>[] {
  const seen = new Set<number>();
  const parts: Set<number>[] = [];
  for (const start of nodes) {
    if (seen.has(start)) continue;
    const part = new Set([start]);
    seen.add(start);
    const open = [start];
    for (let node = open.pop(); node !== undefined; node = open.pop()) {
      for (const { neighbour, line } of graph.get(node)!) {
        if (line === without || seen.has(neighbour) || !nodes.has(neighbour)) continue;
        seen.add(neighbour);
        part.add(neighbour);
        open.push(neighbour);
      }
    }
    parts.push(part);
  }
  return parts;
}

/** A set with all its neighbours. */
export function withNeighbours(graph: ContactGraph, nodes: ReadonlySet<number>): Set<number> {
  const wider = new Set(nodes);
  for (const node of nodes) for (const { neighbour } of graph.get(node)!) wider.add(neighbour);
  return wider;
}

/** The lines of the contacts inside a set, ascending. */
export function linesWithin(graph: ContactGraph, nodes: ReadonlySet<number>): number[] {
  const lines = new Set<number>();
  for (const node of nodes) {
    for (const { neighbour, line } of graph.get(node)!) if (nodes.has(neighbour)) lines.add(line);
  }
  return [...lines].sort((k, l) => k - l);
}

/**
 * The parts of a set that no straight seam takes apart: each is connected and stays so whichever line's contacts are left
 * out, so the last seam between its patches cannot be straight. Empty when straight seams suffice.
 *
 * Every interlocked set of patches lies inside one of them: a straight cut through it would leave it connected.
 */
export function interlockedParts(graph: ContactGraph, nodes: ReadonlySet<number>): Set<number>[] {
  const found: Set<number>[] = [];
  const open = partsWithout(graph, nodes, null);
  for (let part = open.pop(); part !== undefined; part = open.pop()) {
    if (part.size < 2) continue;
    const apart = takenApart(graph, part);
    if (apart === null) found.push(part);
    else open.push(...apart);
  }
  return found;
}

/** Whether a connected set of two or more stays connected whichever line is left out. */
export const isInterlocked = (graph: ContactGraph, nodes: ReadonlySet<number>): boolean =>
  nodes.size > 1 && takenApart(graph, nodes) === null;

/** Whether straight seams suffice for whatever is left of an interlocked set without any one of its nodes. */
export const isMinimal = (graph: ContactGraph, nodes: ReadonlySet<number>): boolean =>
  [...nodes].every((node) => {
    const rest = new Set(nodes);
    rest.delete(node);
    return interlockedParts(graph, rest).length === 0;
  });

function takenApart(graph: ContactGraph, nodes: ReadonlySet<number>): Set<number>[] | null {
  for (const line of linesWithin(graph, nodes)) {
    const parts = partsWithout(graph, nodes, line);
    if (parts.length > 1) return parts;
  }
  return null;
}
