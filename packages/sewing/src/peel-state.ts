import type { Contacts } from './contact.ts';
import { holdsWithout } from './holds-without.ts';
import { type Region, withMask } from './region.ts';
import type { Will } from './will.ts';
import { WorkingMemory } from './working-memory.ts';

/** What peeling counts, and the patches that it is to ask about. */
interface PeelMemory {
  /** For each slot, the edges on that line to patches that are left. */
  readonly edgesLeft: Int32Array;
  /** For each patch, the lines on which it touches patches that are left. */
  readonly linesLeft: Int32Array;
  /** Empty between peelings. */
  readonly stack: PatchStack;
}

const memories = new WorkingMemory(
  ({ count, neighbour }): PeelMemory => ({
    edgesLeft: new Int32Array(neighbour.length),
    linesLeft: new Int32Array(count),
    stack: new PatchStack(count),
  }),
);

/** Gives `use` a region to be peeled and an empty stack, which it leaves empty. */
export const peeling = <T>(
  contacts: Contacts,
  region: Region,
  will: Will,
  use: (state: PeelState, stack: PatchStack) => T,
): T =>
  memories.lend(contacts, (memory) =>
    withMask(contacts, region, (mask) =>
      use(new PeelState(contacts, region, will, mask, memory), memory.stack),
    ),
  );

/** Patches, each at most once at a time; the one put in last comes out first. */
class PatchStack {
  private readonly patches: Int32Array;
  private readonly isIn: Uint8Array;
  private size = 0;

  constructor(count: number) {
    this.patches = new Int32Array(count);
    this.isIn = new Uint8Array(count);
  }

  push(patch: number): void {
    if (this.isIn[patch] === 1) return;
    this.isIn[patch] = 1;
    this.patches[this.size] = patch;
    this.size += 1;
  }

  /** -1 where none is left. */
  pop(): number {
    if (this.size === 0) return -1;
    this.size -= 1;
    const patch = this.patches[this.size]!;
    this.isIn[patch] = 0;
    return patch;
  }
}

/** Which patches of a region are left, and on how many lines each touches the others that are left. */
export class PeelState {
  private left: number;

  constructor(
    private readonly contacts: Contacts,
    region: Region,
    private readonly will: Will,
    private readonly mask: Uint8Array,
    private readonly memory: PeelMemory,
  ) {
    this.left = region.length;
    const { first, neighbour, slot } = contacts;
    const { edgesLeft, linesLeft } = memory;
    for (const p of region) {
      const [from, to] = [first[p]!, first[p + 1]!];
      for (let c = from; c < to; c += 1) edgesLeft[c] = 0;
      let lines = 0;
      for (let c = from; c < to; c += 1) {
        if (mask[neighbour[c]!] === 0) continue;
        const own = slot[c]!;
        if (edgesLeft[own] === 0) lines += 1;
        edgesLeft[own]! += 1;
      }
      linesLeft[p] = lines;
    }
  }

  has(patch: number): boolean {
    return this.mask[patch] === 1;
  }

  touchesOnOneLine(patch: number): boolean {
    return this.has(patch) && this.memory.linesLeft[patch] === 1;
  }

  comesOff(patch: number): boolean {
    return (
      this.left > 1 &&
      this.touchesOnOneLine(patch) &&
      !this.will.firsts.has(patch) &&
      !this.will.before.get(patch)?.some((later) => this.has(later)) &&
      holdsWithout(this.contacts, this.mask, patch)
    );
  }

  /**
   * Takes a patch off.
   *
   * @param mayComeOff is told each neighbour that now touches the rest on one line; also one that did before, since it may
   *   have held the patch that is gone
   */
  take(patch: number, mayComeOff: (neighbour: number) => void): void {
    const { first, neighbour, slotAcross } = this.contacts;
    const { edgesLeft, linesLeft } = this.memory;
    this.mask[patch] = 0;
    this.left -= 1;
    const to = first[patch + 1]!;
    for (let c = first[patch]!; c < to; c += 1) {
      const q = neighbour[c]!;
      if (this.mask[q] === 0) continue;
      const theirs = slotAcross[c]!;
      edgesLeft[theirs]! -= 1;
      if (edgesLeft[theirs] === 0) linesLeft[q]! -= 1;
      if (linesLeft[q] === 1) mayComeOff(q);
    }
    for (const [earlier, later] of this.will.before) {
      if (later.includes(patch) && this.touchesOnOneLine(earlier)) mayComeOff(earlier);
    }
  }
}
