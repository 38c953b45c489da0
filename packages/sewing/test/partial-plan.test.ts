import { plainWords } from '@seamwright/arrangement';
import { describe, expect, it } from 'vitest';
import { planAsNeeded, planSewing, type SewingPlan } from '../src/index.ts';
import { blockOf, l, patchAt } from './grid-block.ts';

/** Four oblongs that chase each other round a square. */
const ring = blockOf(3, 3, [l(1, 0, 1, 2), l(0, 2, 2, 2), l(2, 1, 2, 3), l(1, 1, 3, 1)]);
/** An attic window: three seams meet at a corner. */
const corner = blockOf(3, 3, [l(1, 0, 1, 2), l(1, 2, 3, 2), l(0, 3, 1, 2)]);

const kinds = ({ findings }: SewingPlan) => findings.map(({ kind }) => kind);
const sectionWith = ({ sections }: SewingPlan, patch: number) =>
  sections.find(({ order }) => order.includes(patch))!;

describe('a plan with partial seams', () => {
  it('is made only where they are allowed', () => {
    expect(planSewing(ring).verdict).toBe('not sewable');
    const plan = planSewing(ring, { partialSeams: true });
    expect(plan.verdict).toBe('partial seams');
    expect(plan.unheld).toEqual([]);
    expect(kinds(plan)).toEqual([]);
    expect(plan.joins.filter(({ partial }) => partial)).toHaveLength(1);
    expect(plan.sections.flatMap(({ order }) => order).sort()).toEqual([0, 1, 2, 3, 4]);
  });

  it('is not made where straight seams suffice', () => {
    const plan = planSewing(blockOf(2, 2, [l(1, 0, 1, 2), l(0, 1, 2, 1)]), { partialSeams: true });
    expect(plan.verdict).toBe('several foundations');
    expect(plan.joins.every(({ partial }) => !partial)).toBe(true);
  });

  it('does not exist where a seam would have to be set in, which is named', () => {
    const plan = planSewing(corner, { partialSeams: true });
    expect(plan.verdict).toBe('not sewable');
    expect(kinds(plan)).toEqual(['interlocked', 'set-in-seam']);
  });

  it('names no seam to be set in where partial seams would do', () => {
    expect(kinds(planSewing(ring))).toEqual(['interlocked']);
  });

  it('heeds pins, and names the fewest that it finds no way for', () => {
    const [middle, left] = [patchAt(ring, 1.5, 1.5), patchAt(ring, 0.5, 0.5)];
    const named = planSewing(ring, {
      partialSeams: true,
      pins: [{ kind: 'letter', patch: middle, letter: 'M' }],
    });
    expect(sectionWith(named, middle).letter).toBe('M');
    // Whichever seam is left open runs between two sections, and every seam of the middle is in the ring: it is alone.
    const pins = [
      { kind: 'together', patches: [left, middle] },
      { kind: 'apart', patches: [left, middle] },
    ] as const;
    const plan = planSewing(ring, { partialSeams: true, pins });
    expect(plan.verdict).toBe('partial seams');
    expect(plan.undecided).toEqual([pins[0]]);
    expect(plan.conflict).toEqual([]);
    expect(sectionWith(plan, left)).not.toBe(sectionWith(plan, middle));
  });
});

describe('a plan of what a drawing takes', () => {
  const asNeeded = (arrangement: typeof ring) =>
    planAsNeeded((partialSeams) => planSewing(arrangement, { partialSeams }));

  it('has partial seams only where straight ones do not suffice, and tells why as a caution', () => {
    const plan = asNeeded(ring);
    expect(plan).toMatchObject({ ...planSewing(ring, { partialSeams: true }), findings: [{}] });
    const [finding] = plan.findings;
    const [error] = planSewing(ring).findings;
    expect(finding).toMatchObject({ kind: 'interlocked', severity: 'caution', at: error!.at });
    expect(error!.severity).toBe('error');
    expect(plainWords(finding!.message)).toBe(
      `${plainWords(error!.message)} Or sew it as it is, with a partial seam.`,
    );
  });

  it('is the plan with straight seams elsewhere, sewable or not', () => {
    const panes = blockOf(2, 2, [l(1, 0, 1, 2), l(0, 1, 2, 1)]);
    expect(asNeeded(panes)).toEqual(planSewing(panes));
    expect(asNeeded(corner)).toEqual(planSewing(corner));
  });
});
