import { type Arrangement, patchesOfPin } from '@seamwright/arrangement';
import { type AssemblyResult, assemble, canAssemble, type Joinery } from './assemble.ts';
import { leavesOf } from './assembly.ts';
import { letterConflict, oneByOne, smallestConflict } from './conflict.ts';
import { touching as touchingOf } from './contact.ts';
import { crossingsOf } from './crossings.ts';
import { interlockedFindings } from './interlock.ts';
import type { LastAssembly } from './last-assembly.ts';
import { leastWithPartialSeams } from './partial/bound.ts';
import { setInFindings } from './partial/set-in.ts';
import { writePartialPlan } from './partial/write-partial.ts';
import { assemblePinned } from './partial-plan.ts';
import type { Wish } from './refine.ts';
import type { Region } from './region.ts';
import { SEARCH_EFFORT } from './search.ts';
import { Searches } from './searches.ts';
import type { Pin, SewingPlan } from './types.ts';
import { NO_WILL, willOf } from './will.ts';
import { writePlan } from './write-plan.ts';

export interface PlanOptions {
  /** How long to look for fewer foundations; see {@link SEARCH_EFFORT}. 0 gives the first answer that stands. */
  readonly effort?: number;
  /** What the maker wants. Pins on patches that do not exist are left out. */
  readonly pins?: readonly Pin[];
  /** No section has more patches than this. */
  readonly largestSection?: number;
  readonly wish?: Wish;
  /** Whether joins may be sewn half-way and finished later, where straight seams alone do not suffice. */
  readonly partialSeams?: boolean;
  /** What was found for other plans of the same arrangement; what is found for this one is added. */
  readonly searches?: Searches;
  /**
   * The last plan of a block that this one may have grown out of; this one takes its place. Where nothing but places has changed
   * since, its sections are sewn in the same orders, and it is not looked which of them repeat, unless that is the wish.
   */
  readonly last?: LastAssembly;
}

/**
 * How a block is sewn: on one foundation or on the fewest that were found, in which order, joined how; or what
 * stands in the way.
 *
 * Every answer holds: the orders and joins are good ones. `provenLeast` says whether fewer foundations are proved
 * impossible (under the maker's pins); `atLeast` is the proved bound. Pins that cannot hold together are named in
 * `conflict` and left out; those that it was too much to find a way for, in `undecided`.
 *
 * Where straight seams do not suffice and partial ones are allowed, these are planned: as few foundations as were found, with
 * a bound that holds whichever seams are left open, and heeds no pins. A seam that would have to be set in is named, never planned.
 */
export function planSewing(arrangement: Arrangement, options: PlanOptions = {}): SewingPlan {
  const {
    effort = SEARCH_EFFORT,
    largestSection = Number.POSITIVE_INFINITY,
    wish = 'fewest foundations',
    partialSeams = false,
    searches = new Searches(arrangement),
    last,
  } = options;
  const touching = touchingOf(arrangement);
  const joinery: Joinery = { arrangement, touching, crossings: crossingsOf(arrangement), searches };
  const all: Region = arrangement.patches.map(({ index }) => index);

  let pins = (options.pins ?? []).filter((pin) => patchesOfPin(pin).every((p) => all[p] === p));
  const conflict: Pin[] = [];
  const undecided: Pin[] = [];
  const wanted = { pins, how: `${effort} ${largestSection} ${wish}` };
  const recalled = last?.recall(joinery, wanted) ?? null;
  const first = recalled ?? assemble(joinery, all, { effort, will: willOf(pins, largestSection), wish });
  let result: AssemblyResult = first;
  while (!result.sewable && pins.length > 0) {
    if (!canAssemble(joinery, all, NO_WILL, 0)) break;
    const given = result.undecided
      ? oneByOne(joinery, all, pins, largestSection, effort)
      : { impossible: pins, undecided: [] };
    const clash =
      given.impossible.length > 0
        ? smallestConflict(joinery, all, given.impossible, largestSection)
        : given.undecided;
    (given.impossible.length > 0 ? conflict : undecided).push(...clash);
    pins = pins.filter((pin) => !clash.includes(pin));
    result = assemble(joinery, all, { effort, will: willOf(pins, largestSection), wish });
  }
  const partial = partialSeams && !result.sewable ? assemblePinned(joinery, all, pins, largestSection) : null;
  if (partial !== null) {
    undecided.push(...partial.undecided);
    pins = [...partial.pins];
  }
  const parts = leavesOf((partial ?? result).assembly).map(({ patches }) => patches);
  const letterPins = pins.filter((pin) => pin.kind === 'letter');
  const letterClash = letterConflict(parts, letterPins);
  conflict.push(...letterClash);
  const letters = new Map(
    letterPins.filter((pin) => !letterClash.includes(pin)).map(({ patch, letter }) => [patch, letter]),
  );

  const will = willOf(pins, largestSection);
  const orders = wish === 'most repetition' ? [] : recalled?.orders;
  const { sections, joins, figures, stuck } =
    partial === null
      ? writePlan(arrangement, touching, result.assembly, will, letters, orders)
      : writePartialPlan(joinery, partial, will, letters);
  if (first.sewable) last?.keep(joinery, wanted, { ...first, orders: sections.map(({ order }) => order) });
  const common = { sections, joins, figures, conflict, undecided };
  if (partial !== null) {
    const atLeast = leastWithPartialSeams(joinery, largestSection);
    const provenLeast = sections.length === atLeast;
    return { ...common, verdict: 'partial seams', provenLeast, atLeast, unheld: [], findings: [] };
  }
  if (!result.sewable) {
    return {
      ...common,
      verdict: 'not sewable',
      provenLeast: true,
      atLeast: result.atLeast,
      unheld: stuck.flat(),
      findings: [
        ...interlockedFindings(arrangement, touching, stuck),
        ...setInFindings(arrangement, touching, stuck),
      ],
    };
  }
  return {
    ...common,
    verdict: sections.length === 1 ? 'one foundation' : 'several foundations',
    provenLeast: result.atLeast === sections.length,
    atLeast: result.atLeast,
    unheld: [],
    findings: [],
  };
}
