import type { AssemblyResult } from './assemble.ts';
import type { Touching } from './contact.ts';

/**
 * What the last plan came to, for the next plan of a block of which only places have changed: while a line is dragged, who
 * touches whom on which line mostly stays as it is, and all that sewability depends on is that.
 * (Patches are known by their numbers: where these change, nothing is recalled.)
 *
 * Lengths and shapes, which decide among assemblies that are equally good otherwise, may have changed: what is recalled
 * holds, but need not be the very assembly that a plan of its own would choose.
 */
export class LastAssembly {
  private last: { touching: Touching; wanted: string; result: AssemblyResult } | null = null;

  /** @param wanted all that the assembly depends on besides */
  recall(touching: Touching, wanted: string): AssemblyResult | null {
    const { last } = this;
    return last !== null && last.wanted === wanted && isSameTouching(last.touching, touching)
      ? last.result
      : null;
  }

  keep(touching: Touching, wanted: string, result: AssemblyResult): void {
    this.last = { touching, wanted, result };
  }
}

/** Whether the same patches touch along the same edges, which follow each other in the same order on the same lines. */
function isSameTouching(a: Touching, b: Touching): boolean {
  return (
    a.count === b.count &&
    a.alongLines.length === b.alongLines.length &&
    a.alongLines.every(({ edge, line, start, end }, rank) => {
      const other = b.alongLines[rank]!;
      return edge === other.edge && line === other.line && start === other.start && end === other.end;
    }) &&
    a.contacts.every((own, patch) => {
      const others = b.contacts[patch]!;
      return (
        own.length === others.length &&
        own.every(({ edge, neighbour }, i) => edge === others[i]!.edge && neighbour === others[i]!.neighbour)
      );
    })
  );
}
