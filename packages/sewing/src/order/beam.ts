import { neighboursOf } from '../contact.ts';
import { comesOff, type Piecing } from './piecing.ts';
import type { StepCosts } from './step-costs.ts';

/** Patches. Beyond it the work of one step, not to speak of the table of who is near whom, is no longer small. */
export const BEAM_UP_TO = 600;

/** How many half-peeled sets are followed side by side. */
const BREADTH = 16;

/** How many steps are looked at, about: where many patches are ready to come off, fewer sets are followed. */
const BEAM_EFFORT = 50_000;

/** One way to peel down to a set. */
interface Way {
  readonly left: Uint8Array;
  /** All patches that come off next are among these. */
  readonly candidates: readonly number[];
  readonly taken: Taken | null;
  readonly score: Score;
  /** Tells sets apart, but for an accident that would lose one way. */
  readonly key: number;
}

interface Taken {
  readonly patch: number;
  readonly before: Taken | null;
}

interface Score {
  /** What the patches taken cost beyond what they cost in any order. */
  readonly beyond: number;
  /** How many patches are left that would escape such a cost if they were first. */
  readonly escapes: number;
}

interface Onward {
  readonly from: Way;
  readonly patch: number;
  readonly score: Score;
}

/**
 * A good order of a section that has one, found by following the few best ways to peel it side by side (beam search).
 * Of ways that cost the same, those go first that take what is far from the middle.
 */
export function goodOrder(piecing: Piecing, costs: StepCosts): readonly number[] {
  const { all, offMiddle } = piecing;
  const whole = new Uint8Array(all.length).fill(1);
  const unavoidable = all.map((p) => costs.unavoidable(p));
  const escapes = (p: number) => (unavoidable[p]! > 0 && costs.mayBeFirst(p) ? 1 : 0);

  const onwardsFrom = (way: Way): Onward[] => {
    const candidates = way.candidates.filter((p) => comesOff(piecing, p, way.left));
    const from = { ...way, candidates };
    return candidates.map((patch) => {
      way.left[patch] = 0;
      const step = costs.ofStep(patch, way.left) - unavoidable[patch]!;
      way.left[patch] = 1;
      const jump = way.taken !== null && costs.isJump(way.taken.patch, patch) ? costs.weights.jumps : 0;
      const score = {
        beyond: way.score.beyond + step + jump,
        escapes: way.score.escapes - escapes(patch),
      };
      return { from, patch, score };
    });
  };
  const rate = ({ beyond, escapes }: Score) => (escapes > 0 ? beyond : beyond + costs.weights.showThrough);
  const compare = (m: Onward, n: Onward) =>
    rate(m.score) - rate(n.score) || offMiddle[n.patch]! - offMiddle[m.patch]! || m.patch - n.patch;

  const score = { beyond: 0, escapes: all.reduce((count, p) => count + escapes(p), 0) };
  let ways: readonly Way[] = [{ left: whole, candidates: all, taken: null, score, key: 0 }];
  let effort = BEAM_EFFORT;
  for (let size = all.length; size > 1; size -= 1) {
    const onwards = ways.flatMap(onwardsFrom).sort(compare);
    effort -= onwards.length;
    const ready = onwards.length / ways.length;
    const breadth = Math.max(1, Math.min(BREADTH, Math.floor(effort / (ready * size))));
    ways = different(onwards, breadth).map((onward) => follow(piecing, onward));
  }
  const { left, taken } = ways[0]!;
  const order = [left.indexOf(1)];
  for (let t = taken; t !== null; t = t.before) order.push(t.patch);
  return order;
}

/** The first few that differ in what is left or was taken last: equal ones lead to the same. */
function different(onwards: readonly Onward[], count: number): Onward[] {
  const seen = new Set<string>();
  const kept: Onward[] = [];
  for (const onward of onwards) {
    const key = `${keyAfter(onward)} ${onward.patch}`;
    if (seen.has(key)) continue;
    seen.add(key);
    kept.push(onward);
    if (kept.length === count) break;
  }
  return kept;
}

/** Each patch adds a number of its own, so the key does not depend on the order. */
const keyAfter = ({ from, patch }: Onward): number =>
  from.key + (Math.imul(patch + 1, 0x9e3779b1) >>> 0) * (patch + 1);

function follow({ touching, earlier }: Piecing, onward: Onward): Way {
  const { from, patch, score } = onward;
  const left = from.left.slice();
  left[patch] = 0;
  const candidates = new Set(from.candidates);
  candidates.delete(patch);
  // Only these can have become ready by it.
  for (const p of neighboursOf(touching, patch)) if (left[p] === 1) candidates.add(p);
  for (const p of earlier.get(patch) ?? []) if (left[p] === 1) candidates.add(p);
  return {
    left,
    candidates: [...candidates],
    taken: { patch, before: from.taken },
    score,
    key: keyAfter(onward),
  };
}
