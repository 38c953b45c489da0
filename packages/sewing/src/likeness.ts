import type { Touching } from './contact.ts';
import { isInside } from './corners.ts';
import { emptyMask, type Region } from './region.ts';

/** Rounds of colour refinement: patches that far apart are told apart when their regions are compared. */
const ROUNDS = 2;

/**
 * Tells whether two regions of a block are alike: whether the patches of one can be laid on those of the other, as they
 * are, turned or mirrored, so that the same patches touch in the same order round each patch, on the same line where they
 * did, and lines go on where they did. All that sewing depends on is the same in regions that are alike, so what is
 * proved of one holds for the other. No coordinates are looked at.
 */
export class Likeness {
  private readonly inRegion: Uint8Array;
  private readonly inImage: Uint8Array;
  private readonly colours: Int32Array;
  private readonly imageColours: Int32Array;
  /** The patch that each patch of the region comes to lie on; -1 while that is open. */
  private readonly imageOf: Int32Array;
  private readonly taken: Uint8Array;
  /** The same for edges, by their ranks. */
  private readonly imageOfRank: Int32Array;
  /** The same for the lines of the patch that is looked at, both ways. */
  private readonly imageOfSlot: Int32Array;
  private readonly slotOfImage: Int32Array;

  constructor(private readonly touching: Touching) {
    const patches = touching.count;
    this.inRegion = emptyMask(touching);
    this.inImage = emptyMask(touching);
    this.colours = new Int32Array(patches);
    this.imageColours = new Int32Array(patches);
    this.imageOf = new Int32Array(patches).fill(-1);
    this.taken = new Uint8Array(patches);
    this.imageOfRank = new Int32Array(touching.goesOn.length).fill(-1);
    this.imageOfSlot = new Int32Array(touching.slot.length).fill(-1);
    this.slotOfImage = new Int32Array(touching.slot.length).fill(-1);
  }

  /**
   * A number for the surroundings of each patch within the region, in the region's order: the same for patches that lie
   * on each other when the region is laid on one that is alike. (Colour refinement, as for graphs: Weisfeiler, Leman,
   * 1968; from memory.)
   */
  coloursOf(region: Region): Int32Array {
    const { inRegion: mask, colours, imageColours: before } = this;
    const { first, neighbour } = this.touching;
    for (const p of region) mask[p] = 1;
    for (const p of region) {
      let contacts = 0;
      for (let c = first[p]!; c < first[p + 1]!; c += 1) contacts += mask[neighbour[c]!]!;
      colours[p] = contacts;
    }
    for (let round = 0; round < ROUNDS; round += 1) {
      for (const p of region) before[p] = colours[p]!;
      for (const p of region) {
        let sum = 0;
        for (let c = first[p]!; c < first[p + 1]!; c += 1) {
          const q = neighbour[c]!;
          if (mask[q] === 1) sum = (sum + mixed(before[q]!, round)) | 0;
        }
        colours[p] = mixed(before[p]!, sum);
      }
    }
    for (const p of region) mask[p] = 0;
    return Int32Array.from(region, (p) => colours[p]!);
  }

  /**
   * Whether two regions are alike, given the colours of their patches.
   *
   * @param root the place in the region of a patch that is to be found in the image first; best one of a rare colour
   */
  areAlike(
    region: Region,
    colours: Int32Array,
    root: number,
    image: Region,
    imageColours: Int32Array,
  ): boolean {
    if (region.length !== image.length) return false;
    // A patch by itself touches nothing.
    if (region.length === 1) return true;
    for (let i = 0; i < region.length; i += 1) {
      this.inRegion[region[i]!] = 1;
      this.colours[region[i]!] = colours[i]!;
      this.inImage[image[i]!] = 1;
      this.imageColours[image[i]!] = imageColours[i]!;
    }
    const alike = image.some(
      (q, i) => imageColours[i] === colours[root] && this.canLay(region, region[root]!, image, q),
    );
    for (const p of region) this.inRegion[p] = 0;
    for (const q of image) this.inImage[q] = 0;
    return alike;
  }

  /** Whether the region can be laid on its image so that `p` comes to lie on `q`. */
  private canLay(region: Region, p: number, image: Region, q: number): boolean {
    const { first, neighbour } = this.touching;
    const contact = this.nextIn(this.inRegion, first[p + 1]! - 1);
    for (let c = first[q]!; c < first[q + 1]!; c += 1) {
      if (this.inImage[neighbour[c]!] === 0) continue;
      for (const mirrored of [false, true]) {
        const fits = this.lay(contact, c, mirrored) && this.linesAgree(region, image);
        this.liftAll(region);
        if (fits) return true;
      }
    }
    return false;
  }

  /** Lays patch on patch, from one contact and its image on. */
  private lay(contact: number, image: number, mirrored: boolean): boolean {
    const { owner, twin, neighbour } = this.touching;
    if (!this.put(owner[contact]!, owner[image]!)) return false;
    const open = [contact, image];
    while (open.length > 0) {
      const d = open.pop()!;
      const c = open.pop()!;
      if (!this.contactsAgree(c, d, mirrored)) return false;
      let [a, b] = [c, d];
      do {
        const [n, m] = [neighbour[a]!, neighbour[b]!];
        if (this.imageOf[n] === -1) {
          if (!this.put(n, m)) return false;
          open.push(twin[a]!, twin[b]!);
        } else if (this.imageOf[n] !== m) return false;
        [a, b] = [this.nextIn(this.inRegion, a), this.stepIn(b, mirrored)];
      } while (a !== c);
    }
    return true;
  }

  private put(p: number, q: number): boolean {
    if (this.taken[q] === 1 || this.colours[p] !== this.imageColours[q]) return false;
    this.imageOf[p] = q;
    this.taken[q] = 1;
    return true;
  }

  /** Whether the contacts round a patch, from `c` on, agree with those round its image, from `d` on. */
  private contactsAgree(c: number, d: number, mirrored: boolean): boolean {
    const { rank, slot } = this.touching;
    const { inRegion, imageOfSlot, slotOfImage, imageOfRank } = this;
    let agree = true;
    let [a, b] = [c, d];
    do {
      const [nextA, nextB] = [this.nextIn(inRegion, a), this.stepIn(b, mirrored)];
      const [s, t] = [slot[a]!, slot[b]!];
      if (imageOfSlot[s] === -1 && slotOfImage[t] === -1) {
        imageOfSlot[s] = t;
        slotOfImage[t] = s;
      }
      if (imageOfRank[rank[a]!] === -1) imageOfRank[rank[a]!] = rank[b]!;
      // The corner after a contact comes, mirrored, before its image.
      const sameCorner =
        this.hasCornerAfter(inRegion, a) === this.hasCornerAfter(this.inImage, mirrored ? nextB : b);
      agree = imageOfSlot[s] === t && imageOfRank[rank[a]!] === rank[b] && sameCorner;
      agree &&= (nextA === c) === (nextB === d);
      [a, b] = [nextA, nextB];
    } while (agree && a !== c);
    this.forgetSlots(c, d);
    return agree;
  }

  private forgetSlots(c: number, d: number): void {
    const { first, owner, slot } = this.touching;
    const [p, q] = [owner[c]!, owner[d]!];
    for (let i = first[p]!; i < first[p + 1]!; i += 1) this.imageOfSlot[slot[i]!] = -1;
    for (let i = first[q]!; i < first[q + 1]!; i += 1) this.slotOfImage[slot[i]!] = -1;
  }

  /** Whether lines go on in the image wherever they do in the region, and nowhere else. */
  private linesAgree(region: Region, image: Region): boolean {
    const { first, rank, owner, neighbour } = this.touching;
    const { inRegion, inImage, imageOfRank } = this;
    let more = 0;
    for (const p of region) {
      for (let c = first[p]!; c < first[p + 1]!; c += 1) {
        if (owner[c]! > neighbour[c]! || inRegion[neighbour[c]!] === 0) continue;
        const r = rank[c]!;
        if (!this.goesOn(inRegion, r)) continue;
        more += 1;
        const [here, next] = [imageOfRank[r]!, imageOfRank[r + 1]!];
        const least = Math.min(here, next);
        if (Math.abs(here - next) !== 1 || !this.goesOn(inImage, least)) return false;
      }
    }
    for (const q of image) {
      for (let c = first[q]!; c < first[q + 1]!; c += 1) {
        if (owner[c]! > neighbour[c]! || inImage[neighbour[c]!] === 0) continue;
        if (this.goesOn(inImage, rank[c]!)) more -= 1;
      }
    }
    return more === 0;
  }

  /** Whether the line of an edge goes on, through a vertex inside, to another edge inside. */
  private goesOn(mask: Uint8Array, r: number): boolean {
    const { goesOn, end, contactAt } = this.touching;
    return goesOn[r] === 1 && contactAt[r + 1] !== -1 && isInside(this.touching, mask, end[r]!);
  }

  /** Whether a vertex inside lies between a contact and the next; of two contacts, each comes after the other. */
  private hasCornerAfter(mask: Uint8Array, contact: number): boolean {
    if (this.isCornerInside(mask, contact)) return true;
    const next = this.nextIn(mask, contact);
    return this.nextIn(mask, next) === contact && this.isCornerInside(mask, next);
  }

  private isCornerInside(mask: Uint8Array, contact: number): boolean {
    const corner = this.touching.cornerAfter[contact]!;
    return corner >= 0 && isInside(this.touching, mask, corner);
  }

  /** The next contact round the same patch with a patch of the mask. */
  private nextIn(mask: Uint8Array, contact: number): number {
    const { first, owner, neighbour } = this.touching;
    const p = owner[contact]!;
    let c = contact;
    do c = c + 1 === first[p + 1] ? first[p]! : c + 1;
    while (mask[neighbour[c]!] === 0);
    return c;
  }

  /** From a contact round a patch of the image to the one that the next contact in the region comes to lie on. */
  private stepIn(contact: number, mirrored: boolean): number {
    if (!mirrored) return this.nextIn(this.inImage, contact);
    const { first, owner, neighbour } = this.touching;
    const q = owner[contact]!;
    let c = contact;
    do c = c === first[q] ? first[q + 1]! - 1 : c - 1;
    while (this.inImage[neighbour[c]!] === 0);
    return c;
  }

  private liftAll(region: Region): void {
    const { first, rank } = this.touching;
    for (const p of region) {
      if (this.imageOf[p] !== -1) this.taken[this.imageOf[p]!] = 0;
      this.imageOf[p] = -1;
      for (let c = first[p]!; c < first[p + 1]!; c += 1) this.imageOfRank[rank[c]!] = -1;
    }
  }
}

/** The place of a colour that is as rare as any. */
export function rarest(colours: Int32Array): number {
  const counts = new Map<number, number>();
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  let best = 0;
  colours.forEach((colour, i) => {
    if (counts.get(colour)! < counts.get(colours[best]!)!) best = i;
  });
  return best;
}

/** Two numbers made one, so that others are unlikely to make the same (constants of the murmur3 hash, public domain). */
function mixed(a: number, b: number): number {
  let h = Math.imul(a ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(b + 0x7f4a7c15, 0xc2b2ae35);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  return h ^ (h >>> 13);
}
