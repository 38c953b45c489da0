import type { Arrangement } from '@seamwright/arrangement';
import { distance } from '@seamwright/geometry';
import type { Assembly } from './assembly.ts';
import { contactsOf, runOf, type Touching } from './contact.ts';
import { letterOf, unitNames } from './letters.ts';
import { isGoodOrder, laidOut, sewSection } from './order.ts';
import type { Region } from './region.ts';
import { Copies, type Shape, shapeOf, Templates } from './templates.ts';
import type { Figures, Join, Section } from './types.ts';
import type { Will } from './will.ts';

/** An assembly with letters, orders and joins: what the maker works by. */
export interface WrittenPlan {
  readonly sections: readonly Section[];
  readonly joins: readonly Join[];
  readonly figures: Figures;
  /** Parts that cannot be sewn. */
  readonly stuck: readonly Region[];
}

/**
 * Names sections and joins in working order: from the top left of the block, smaller units before what they make.
 *
 * @param letters the letters that the maker wants, by patch
 * @param orders good orders of sections that are known already. Those sections are sewn so, and taken for no copies.
 */
export function writePlan(
  arrangement: Arrangement,
  touching: Touching,
  assembly: Assembly,
  will: Will,
  letters: ReadonlyMap<number, string>,
  orders: readonly (readonly number[])[] = [],
): WrittenPlan {
  return new PlanWriter(arrangement, touching, will, letters, orders).write(assembly);
}

/** Sections that are joined already. */
interface Unit {
  readonly letters: readonly string[];
  readonly patches: number[];
  /** Its number in {@link PlanWriter.unitOf}. */
  readonly number: number;
}

/** A join before it is known how units are named: the letters of the two that it joins. */
interface MadeJoin extends Omit<Join, 'units' | 'makes'> {
  readonly of: readonly [readonly string[], readonly string[]];
}

class PlanWriter {
  private readonly sections: Section[] = [];
  private readonly joins: MadeJoin[] = [];
  private readonly stuck: Region[] = [];
  private readonly templates: Templates;
  private readonly copies: Copies;
  /** The sections that others are copies of, by the numbers of their templates. */
  private readonly firstOf = new Map<number, Section>();
  private copied = 0;
  /** Orders that are known, by the least patch of their sections. */
  private readonly orderOf = new Map<number, readonly number[]>();
  private readonly taken: ReadonlySet<string>;
  /** For each patch, the number of the unit that it is in so far. */
  private readonly unitOf: Int32Array;
  private readonly leastOf = new Map<Assembly, number>();
  private matchPoints = 0;
  private nextLetter = 0;

  constructor(
    private readonly arrangement: Arrangement,
    private readonly touching: Touching,
    private readonly will: Will,
    private readonly letters: ReadonlyMap<number, string>,
    orders: readonly (readonly number[])[],
  ) {
    for (const order of orders) this.orderOf.set(Math.min(...order), order);
    this.templates = new Templates(arrangement);
    this.copies = new Copies(arrangement, touching);
    this.taken = new Set(letters.values());
    this.unitOf = new Int32Array(touching.count).fill(-1);
  }

  write(assembly: Assembly): WrittenPlan {
    this.unit(assembly);
    const { sections, stuck, matchPoints } = this;
    const nameOf = unitNames(sections.map(({ letter }) => letter));
    const joins = this.joins.map(
      ({ of: [a, b], ...join }): Join => ({
        units: [nameOf(a), nameOf(b)],
        makes: nameOf([...a, ...b]),
        ...join,
      }),
    );
    const figures = {
      foundations: sections.length,
      matchPoints,
      templates: sections.length - this.copied,
      joinLength: joins.reduce((sum, { seam }) => sum + distance(seam.a, seam.b), 0),
    };
    return { sections, joins, figures, stuck };
  }

  /** @returns null where it holds something that cannot be sewn */
  private unit(assembly: Assembly): Unit | null {
    if (assembly.kind === 'stuck') {
      this.stuck.push(assembly.patches);
      return null;
    }
    if (assembly.kind === 'section') {
      const section = this.section(assembly.patches);
      const number = this.sections.push(section) - 1;
      for (const p of assembly.patches) this.unitOf[p] = number;
      return { letters: [section.letter], patches: [...assembly.patches], number };
    }
    // Patches are numbered from the top left.
    const [first, second] = [...assembly.units].sort((u, v) => this.leastPatch(u) - this.leastPatch(v));
    const a = this.unit(first!);
    const b = this.unit(second!);
    if (a === null || b === null) return null;
    const { seam, inner } = this.seamBetween(a, b, assembly.line);
    this.matchPoints += inner;
    this.joins.push({ of: [a.letters, b.letters], seam, line: assembly.line, partial: false });
    return this.together(a, b);
  }

  /** The larger unit takes in the smaller, so that no patch is moved often. */
  private together(a: Unit, b: Unit): Unit {
    const [small, large] = bySize(a, b);
    for (const p of small.patches) {
      this.unitOf[p] = large.number;
      large.patches.push(p);
    }
    return { ...large, letters: [...a.letters, ...b.letters] };
  }

  private section(patches: Region): Section {
    const letter = this.letterFor(patches);
    const order = this.orderOf.get(patches[0]!);
    if (order !== undefined) return laidOut(this.arrangement, this.touching, order, letter);
    const anew = () => sewSection(this.arrangement, this.touching, patches, letter, { will: this.will });
    // The maker may want another order here than elsewhere.
    if (patches.some((p) => this.will.firsts.has(p) || this.will.before.has(p))) return anew();
    const shape = shapeOf(this.arrangement, patches);
    const template = this.templates.numberOf(shape);
    const first = this.firstOf.get(template);
    const copy =
      first === undefined ? null : this.copyOf(first, this.templates.firstOf(template), shape, letter);
    if (copy !== null) {
      this.copied += 1;
      return copy;
    }
    const section = anew();
    if (first === undefined) this.firstOf.set(template, section);
    return section;
  }

  /** A section as a copy of an earlier one, sewn in its order; null where it is not so like it that it can be sewn so. */
  private copyOf(first: Section, template: Shape, shape: Shape, letter: string): Section | null {
    const copy = this.copies.best(template, shape);
    if (copy === null) return null;
    const order = first.order.map((p) => copy.imageOf.get(p)!);
    if (!isGoodOrder(this.touching, order)) return null;
    return {
      // Alike in all that costs are counted by, they have the same costs and orders.
      ...first,
      ...laidOut(this.arrangement, this.touching, order, letter),
      copyOf: { letter: first.letter, mirrored: copy.mirrored, transform: copy.transform },
    };
  }

  private letterFor(patches: Region): string {
    for (const p of patches) {
      const wanted = this.letters.get(p);
      if (wanted !== undefined) return wanted;
    }
    let letter: string;
    do {
      letter = letterOf(this.nextLetter);
      this.nextLetter += 1;
    } while (this.taken.has(letter));
    return letter;
  }

  private seamBetween(a: Unit, b: Unit, line: number): { seam: Join['seam']; inner: number } {
    const [small, large] = bySize(a, b);
    const edges = small.patches.flatMap((p) =>
      contactsOf(this.touching, p).flatMap(({ edge, neighbour }) =>
        this.unitOf[neighbour] === large.number ? [edge] : [],
      ),
    );
    return { seam: runOf(this.arrangement, line, edges), inner: edges.length - 1 };
  }

  private leastPatch(assembly: Assembly): number {
    if (assembly.kind !== 'join') return assembly.patches[0]!;
    let least = this.leastOf.get(assembly);
    if (least === undefined) {
      least = Math.min(...assembly.units.map((unit) => this.leastPatch(unit)));
      this.leastOf.set(assembly, least);
    }
    return least;
  }
}

const bySize = (a: Unit, b: Unit): readonly [Unit, Unit] =>
  a.patches.length < b.patches.length ? [a, b] : [b, a];
