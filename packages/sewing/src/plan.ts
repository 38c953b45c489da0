import type { Arrangement, Finding } from '@seamwright/arrangement';
import { assemble } from './assemble.ts';
import type { Assembly } from './assembly.ts';
import { runOf, type Touching, touching as touchingOf } from './contact.ts';
import { crossingsOf } from './crossings.ts';
import { interlockedCore } from './interlock.ts';
import { letterOf, unitName } from './letters.ts';
import { sewSection } from './order.ts';
import { maskOf, type Region } from './region.ts';
import { SEARCH_EFFORT } from './search.ts';
import type { Join, Section, SewingPlan } from './types.ts';

export interface PlanOptions {
  /** How long to look for fewer foundations; see {@link SEARCH_EFFORT}. 0 gives the first answer that stands. */
  readonly effort?: number;
}

/**
 * How a block is sewn: on one foundation or on the fewest that were found, in which order, joined how; or what
 * stands in the way.
 *
 * Every answer holds: the orders and joins are good ones. `provenLeast` says whether fewer foundations are proved
 * impossible; `atLeast` is the proved bound.
 */
export function planSewing(
  arrangement: Arrangement,
  { effort = SEARCH_EFFORT }: PlanOptions = {},
): SewingPlan {
  const touching = touchingOf(arrangement);
  const all: Region = arrangement.patches.map(({ index }) => index);
  const { assembly, sewable, atLeast } = assemble(touching, crossingsOf(arrangement), all, { effort });
  const writer = new PlanWriter(arrangement, touching);
  writer.write(assembly);
  const { sections, joins, unheld } = writer;
  if (!sewable) {
    return {
      verdict: 'not sewable',
      provenLeast: true,
      atLeast: 0,
      sections,
      joins,
      unheld,
      findings: writer.stuck.map((region) => interlocked(arrangement, interlockedCore(touching, region))),
    };
  }
  return {
    verdict: sections.length === 1 ? 'one foundation' : 'several foundations',
    provenLeast: atLeast === sections.length,
    atLeast,
    sections,
    joins,
    unheld,
    findings: [],
  };
}

/** Names sections and joins in working order: from the top left of the block, smaller units before what they make. */
class PlanWriter {
  readonly sections: Section[] = [];
  readonly joins: Join[] = [];
  readonly unheld: number[] = [];
  readonly stuck: Region[] = [];

  constructor(
    private readonly arrangement: Arrangement,
    private readonly touching: Touching,
  ) {}

  /** @returns the unit's letters and patches, or null where it holds something that cannot be sewn */
  write(assembly: Assembly): { letters: string[]; patches: Region } | null {
    if (assembly.kind === 'stuck') {
      this.stuck.push(assembly.patches);
      this.unheld.push(...assembly.patches);
      return null;
    }
    if (assembly.kind === 'section') {
      const letter = letterOf(this.sections.length);
      this.sections.push(sewSection(this.arrangement, this.touching, assembly.patches, letter));
      return { letters: [letter], patches: assembly.patches };
    }
    // Patches are numbered from the top left.
    const [first, second] = [...assembly.units].sort((u, v) => leastPatch(u) - leastPatch(v));
    const a = this.write(first!);
    const b = this.write(second!);
    if (a === null || b === null) return null;
    const letters = [...a.letters, ...b.letters];
    this.joins.push({
      units: [unitName(a.letters), unitName(b.letters)],
      makes: unitName(letters),
      seam: this.seamBetween(a.patches, b.patches, assembly.line),
      line: assembly.line,
      partial: false,
    });
    return { letters, patches: [...a.patches, ...b.patches] };
  }

  private seamBetween(a: Region, b: Region, line: number): Join['seam'] {
    const inB = maskOf(this.touching, b);
    const edges = a.flatMap((p) =>
      this.touching.contacts[p]!.filter(({ neighbour }) => inB[neighbour] === 1).map(({ edge }) => edge),
    );
    return runOf(this.arrangement, line, edges);
  }
}

function leastPatch(assembly: Assembly): number {
  return assembly.kind === 'join'
    ? Math.min(leastPatch(assembly.units[0]), leastPatch(assembly.units[1]))
    : assembly.patches[0]!;
}

function interlocked(arrangement: Arrangement, core: Region): Finding {
  const hearts = core.map((p) => arrangement.patches[p]!.heart);
  return {
    kind: 'interlocked',
    severity: 'error',
    message:
      `${core.length} patches hold each other: every seam between them ends on another, so none can be sewn last. ` +
      'Let one of these seams run through to the edge or to the next line.',
    at: hearts,
    lines: [],
    repairs: [],
  };
}
