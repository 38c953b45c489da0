import { SOLVER_ROUNDING } from '@seamwright/geometry';
import type { Highs } from 'highs';
import { allPatterns } from './all-patterns.ts';
import { generateColumns } from './columns.ts';
import { dive } from './dive.ts';
import { leastLength, wholeAbove } from './dual-feasible.ts';
import { firstFit } from './first-fit.ts';
import { commonStep } from './grid.ts';
import { type Effort, Master } from './master.ts';
import { independentParts } from './parts.ts';
import { reachable } from './reach.ts';
import { gathered, heightsOf, lengthOf, type Stock, type StripPattern, type Strips } from './stock.ts';
import { withoutSurplus } from './surplus.ts';

/** Loads HiGHS when it is first needed; the same each time. */
export type LoadSolver = () => Promise<Highs>;

/** Strips that yield every item, and what is proved of them. */
export interface LeastStrips {
  readonly strips: readonly Strips[];
  /** Grid steps of fabric that no plan does without. */
  readonly atLeast: number;
}

/** With more patterns than these, not all are written down. */
const MOST_PATTERNS = 2000;

/** A few patterns that column generation has chosen: a better choice is worth more than the last node. */
const CHOSEN: Effort = { nodes: 100, seconds: 10 };

/** Patterns × items. Beyond it HiGHS hardly gets past the root in that time, and rounding alone has to do. */
const MOST_CHOSEN = 150_000;

/** All patterns are there: what HiGHS proves is proved. */
const ALL: Effort = { nodes: 300, seconds: 20 };

/**
 * Sizes in one fabric. Where pieces may be trimmed and there are more, HiGHS takes many seconds, proves nothing, and saves an inch
 * or two beside first fit: only strips without trimming are planned with it.
 */
const MOST_TRIMMED = 24;

/**
 * The least fabric: first fit and a bound by dual feasible functions for each independent part. Where these do not meet,
 * column generation and the best choice of its patterns; and where that is not proved either, all patterns.
 *
 * @param load left out, nothing but first fit is tried
 */
export async function leastStrips(stock: Stock, load?: LoadSolver): Promise<LeastStrips> {
  if (stock.trim) return leastTrimmed(stock, load);
  const strips: Strips[] = [];
  let atLeast = 0;
  for (const members of independentParts(stock)) {
    const part = { ...stock, items: members.map((item) => stock.items[item]!) };
    const least = await leastOfPart(part, firstFit(part), load);
    atLeast += least.atLeast;
    for (const { pattern, count } of least.strips) {
      const cuts = pattern.cuts.map((cut) => ({ ...cut, item: members[cut.item]! }));
      strips.push({ pattern: { ...pattern, cuts }, count });
    }
  }
  return { strips: gathered(strips), atLeast };
}

/**
 * Each trimmed piece is one more cut: where trimming is not known to save fabric, strips are as high as all their pieces, and with
 * trimming never takes more than without.
 */
async function leastTrimmed(stock: Stock, load?: LoadSolver): Promise<LeastStrips> {
  const plain = { ...stock, trim: false };
  const [fitted, trimmed] = [firstFit(plain), firstFit(stock)];
  const known = lengthOf(trimmed) < lengthOf(fitted) ? trimmed : fitted;
  const found = await leastOfPart(stock, known, stock.items.length > MOST_TRIMMED ? undefined : load);
  if (isProved(found) || load === undefined) return found;
  const { strips } = await leastStrips(plain, load);
  return lengthOf(strips) > lengthOf(found.strips) ? found : { ...found, strips };
}

/** @param fitted a plan of it */
async function leastOfPart(part: Stock, fitted: readonly Strips[], load?: LoadSolver): Promise<LeastStrips> {
  const heights = heightsOf(part);
  const atLeast = reachable(leastLength(part), heights);
  if (load === undefined || lengthOf(fitted) === atLeast) return { strips: fitted, atLeast };
  const highs = await load();
  const chosen = withMaster(highs, part, (master) => byColumns(master, part, fitted));
  const found = better({ strips: fitted, atLeast }, chosen, part);
  const all = isProved(found) ? null : allPatterns(part, MOST_PATTERNS);
  if (all === null) return found;
  return better(
    found,
    withMaster(highs, part, (master) => byAll(master, all)),
    part,
  );
}

const isProved = ({ strips, atLeast }: LeastStrips): boolean => lengthOf(strips) === atLeast;

function withMaster(highs: Highs, part: Stock, find: (master: Master) => Found): Found {
  const master = new Master(highs, part, commonStep(heightsOf(part)));
  try {
    return find(master);
  } finally {
    master.dispose();
  }
}

/** The least of what is known and what was found, with the greater of the bounds. */
function better(known: LeastStrips, { plans, bound }: Found, part: Stock): LeastStrips {
  const tried = [known.strips, ...plans.map((plan) => withoutSurplus(plan, part))];
  return {
    strips: tried.reduce((best, plan) => (lengthOf(plan) < lengthOf(best) ? plan : best)),
    atLeast: Math.max(known.atLeast, reachable(bound, heightsOf(part))),
  };
}

interface Found {
  readonly plans: readonly (readonly Strips[])[];
  /** Grid steps that no plan does without. */
  readonly bound: number;
}

function byAll(master: Master, patterns: readonly StripPattern[]): Found {
  for (const pattern of patterns) master.add(pattern);
  const solved = master.whole(ALL);
  if (solved === null) return { plans: [], bound: 0 };
  return { plans: [stripsOf(master, solved.counts)], bound: wholeAbove(solved.bound) };
}

function byColumns(master: Master, part: Stock, fitted: readonly Strips[]): Found {
  for (const { pattern } of fitted) master.add(pattern);
  const steps = {
    step: commonStep(part.items.flatMap(({ ways }) => ways.map(({ length }) => length))),
    heightStep: commonStep(heightsOf(part)),
  };
  const generated = generateColumns(master, part, { ...steps, enough: lengthOf(fitted) });
  const bound = reachable(generated.bound, heightsOf(part));
  const whole = generated.counts.map((count) => Math.floor(count + SOLVER_ROUNDING));
  const plans = [completed(part, withoutSurplus(stripsOf(master, whole), part))];
  const isEnough = () => bound >= Math.min(lengthOf(fitted), ...plans.map(lengthOf));
  if (isEnough()) return { plans, bound };
  plans.push(completed(part, dive(master, part, generated.counts, steps)));
  if (isEnough()) return { plans, bound };
  if (master.patterns.length * part.items.length > MOST_CHOSEN) return { plans, bound };
  const solved = master.whole(CHOSEN);
  if (solved !== null) plans.push(stripsOf(master, solved.counts));
  return { plans, bound };
}

const stripsOf = ({ patterns }: Master, counts: readonly number[]): Strips[] =>
  patterns.flatMap((pattern, column) => {
    const count = counts[column]!;
    return count > 0 ? [{ pattern, count }] : [];
  });

/** Strips that yield some of the pieces, and first fit for what these leave. */
function completed(part: Stock, kept: readonly Strips[]): Strips[] {
  const left = part.items.map(({ count }) => count);
  for (const { pattern, count } of kept) for (const cut of pattern.cuts) left[cut.item]! -= cut.count * count;
  const open = left.flatMap((count, item) => (count > 0 ? [item] : []));
  if (open.length === 0) return [...kept];
  const rest = { ...part, items: open.map((item) => ({ ...part.items[item]!, count: left[item]! })) };
  const more = firstFit(rest).map(({ pattern, count }) => ({
    pattern: { ...pattern, cuts: pattern.cuts.map((cut) => ({ ...cut, item: open[cut.item]! })) },
    count,
  }));
  return [...kept, ...more];
}
