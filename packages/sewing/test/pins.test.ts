import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Pin, planSewing, replay, type SewingPlan, sewingReport } from '../src/index.ts';
import { blockOf, grid, l, patchAt } from './grid-block.ts';

/** Whether a plan does what a pin wants, read off the plan alone. */
function holds({ sections }: SewingPlan, pin: Pin): boolean {
  const sectionOf = (patch: number) => sections.find(({ order }) => order.includes(patch))!;
  switch (pin.kind) {
    case 'first':
      return sectionOf(pin.patch).order[0] === pin.patch;
    case 'before': {
      const { order } = sectionOf(pin.patch);
      return !order.includes(pin.than) || order.indexOf(pin.patch) < order.indexOf(pin.than);
    }
    case 'together':
      return sectionOf(pin.patches[0]) === sectionOf(pin.patches[1]);
    case 'apart':
      return sectionOf(pin.patches[0]) !== sectionOf(pin.patches[1]);
    case 'letter':
      return sectionOf(pin.patch).letter === pin.letter;
  }
}

const ninePatch = blockOf(3, 3, grid(3));
const strips = blockOf(
  6,
  2,
  [1, 2, 3, 4, 5].map((x) => l(x, 0, x, 2)),
);
const fivePatch = blockOf(5, 5, grid(5));
const at = (x: number, y: number) => patchAt(ninePatch, x, y);
const strip = (k: number) => patchAt(strips, k + 0.5, 1);

describe('what the maker pins, the plan does', () => {
  it('a patch to be first', () => {
    for (let k = 0; k < 6; k += 1) {
      const plan = planSewing(strips, { pins: [{ kind: 'first', patch: strip(k) }] });
      expect(plan.sections).toHaveLength(1);
      expect(plan.sections[0]!.order[0]).toBe(strip(k));
      expect(plan.conflict).toEqual([]);
    }
  });

  it('two patches to be first need two sections', () => {
    const pins: Pin[] = [
      { kind: 'first', patch: strip(1) },
      { kind: 'first', patch: strip(4) },
    ];
    const plan = planSewing(strips, { pins });
    expect(plan.sections).toHaveLength(2);
    expect(plan.provenLeast).toBe(true);
    expect(pins.every((pin) => holds(plan, pin))).toBe(true);
  });

  it('this before that', () => {
    const pins: Pin[] = [
      { kind: 'before', patch: strip(5), than: strip(0) },
      { kind: 'before', patch: strip(2), than: strip(5) },
    ];
    const plan = planSewing(strips, { pins });
    expect(plan.sections).toHaveLength(1);
    expect(pins.every((pin) => holds(plan, pin))).toBe(true);
  });

  it('together: rows instead of columns', () => {
    for (const [p, q] of [
      [at(0.5, 0.5), at(1.5, 0.5)],
      [at(0.5, 0.5), at(0.5, 1.5)],
    ] as const) {
      const plan = planSewing(ninePatch, { pins: [{ kind: 'together', patches: [p, q] }] });
      expect(plan.sections).toHaveLength(3);
      expect(holds(plan, { kind: 'together', patches: [p, q] })).toBe(true);
    }
  });

  it('apart: a new section along this seam', () => {
    const pin: Pin = { kind: 'apart', patches: [strip(2), strip(3)] };
    const plan = planSewing(strips, { pins: [pin] });
    expect(plan.sections).toHaveLength(2);
    expect(plan.joins[0]!.seam.a.x).toBe(3);
    expect(holds(plan, pin)).toBe(true);
  });

  it('letters', () => {
    const pins: Pin[] = [
      { kind: 'letter', patch: at(0.5, 0.5), letter: 'C' },
      { kind: 'letter', patch: at(2.5, 2.5), letter: 'A' },
    ];
    const plan = planSewing(ninePatch, { pins });
    expect(pins.every((pin) => holds(plan, pin))).toBe(true);
    expect(new Set(plan.sections.map(({ letter }) => letter)).size).toBe(3);
  });

  it('no section above four patches', () => {
    const plan = planSewing(strips, { largestSection: 4 });
    expect(plan.sections.map(({ order }) => order.length).sort()).toEqual([3, 3]);
    // Two and four would do as well, but two threes are one template.
    expect(plan.figures.templates).toBe(1);
    expect(plan.provenLeast).toBe(true);
  });

  it('pins on patches that do not exist are left out', () => {
    expect(planSewing(strips, { pins: [{ kind: 'first', patch: 99 }] }).sections).toHaveLength(1);
  });
});

describe('pins that cannot hold together', () => {
  const contradictions: Record<string, readonly Pin[]> = {
    'each before the other, in one section': [
      { kind: 'before', patch: strip(0), than: strip(1) },
      { kind: 'before', patch: strip(1), than: strip(0) },
      { kind: 'together', patches: [strip(0), strip(1)] },
    ],
    'together and apart': [
      { kind: 'together', patches: [strip(3), strip(4)] },
      { kind: 'apart', patches: [strip(3), strip(4)] },
    ],
    'two first patches in one section': [
      { kind: 'first', patch: strip(0) },
      { kind: 'first', patch: strip(3) },
      { kind: 'together', patches: [strip(0), strip(3)] },
    ],
    'two letters for one section': [
      { kind: 'letter', patch: strip(0), letter: 'A' },
      { kind: 'letter', patch: strip(1), letter: 'B' },
    ],
  };
  for (const [name, clash] of Object.entries(contradictions)) {
    it(name, () => {
      const innocent: Pin = { kind: 'before', patch: strip(5), than: strip(2) };
      const plan = planSewing(strips, { pins: [innocent, ...clash] });
      expect([...plan.conflict].sort(byText)).toEqual([...clash].sort(byText));
      expect(plan.verdict).not.toBe('not sewable');
      expect(holds(plan, innocent)).toBe(true);
    });
  }

  it('four squares round a point cannot be one section', () => {
    const fourPatch = blockOf(2, 2, grid(2));
    const diagonal: Pin = {
      kind: 'together',
      patches: [patchAt(fourPatch, 0.5, 0.5), patchAt(fourPatch, 1.5, 1.5)],
    };
    const plan = planSewing(fourPatch, { pins: [diagonal] });
    expect(plan.conflict).toEqual([diagonal]);
    expect(plan.sections).toHaveLength(2);
  });

  const byText = (p: Pin, q: Pin) => JSON.stringify(p).localeCompare(JSON.stringify(q));
});

describe('any pins at all', () => {
  const patch = fc.nat(8);
  const pin: fc.Arbitrary<Pin> = fc.oneof(
    patch.map((p): Pin => ({ kind: 'first', patch: p })),
    fc
      .tuple(patch, patch)
      .filter(([p, q]) => p !== q)
      .map(([p, q]): Pin => ({ kind: 'before', patch: p, than: q })),
    fc
      .tuple(patch, patch)
      .filter(([p, q]) => p !== q)
      .map((patches): Pin => ({ kind: 'together', patches })),
    fc
      .tuple(patch, patch)
      .filter(([p, q]) => p !== q)
      .map((patches): Pin => ({ kind: 'apart', patches })),
    fc
      .tuple(patch, fc.constantFrom('A', 'B', 'Q'))
      .map(([p, letter]): Pin => ({ kind: 'letter', patch: p, letter })),
  );

  it('hold, or are named as a conflict; the plan can be sewn either way', () => {
    fc.assert(
      fc.property(fc.array(pin, { maxLength: 5 }), (pins) => {
        const plan = planSewing(ninePatch, { pins });
        for (const p of pins)
          if (!plan.conflict.includes(p)) expect(holds(plan, p), JSON.stringify(p)).toBe(true);
        expect(replay(sewingReport(ninePatch, plan))).toEqual([]);
        expect(new Set(plan.sections.map(({ letter }) => letter)).size).toBe(plan.sections.length);
        // Without the conflict's pins nothing is in the way: each conflict was needed.
        const rest = pins.filter((p) => !plan.conflict.includes(p));
        expect(planSewing(ninePatch, { pins: rest }).conflict).toEqual([]);
      }),
      { seed: 31, numRuns: 250 },
    );
  });

  it('are named as a conflict only where that is proved, however little is looked at', () => {
    const seen = { conflicts: 0, undecided: 0, heeded: 0 };
    fc.assert(
      fc.property(fc.array(pin, { maxLength: 4 }), fc.constantFrom(0, 20, 100, 1000), (pins, effort) => {
        const plan = planSewing(ninePatch, { pins, effort });
        const { conflict, undecided = [] } = plan;
        // Letters are for a division into sections, and another may do.
        const clash = conflict.filter(({ kind }) => kind !== 'letter');
        if (clash.length > 0) {
          seen.conflicts += 1;
          expect(planSewing(ninePatch, { pins: clash }).conflict.length).toBeGreaterThan(0);
        }
        if (undecided.length > 0) seen.undecided += 1;
        const rest = pins.filter((p) => !conflict.includes(p) && !undecided.includes(p));
        seen.heeded += rest.length;
        for (const p of rest) expect(holds(plan, p), JSON.stringify(p)).toBe(true);
        expect(replay(sewingReport(ninePatch, plan))).toEqual([]);
      }),
      { seed: 32, numRuns: 250 },
    );
    for (const times of Object.values(seen)) expect(times).toBeGreaterThan(10);
  });

  it('that are undecided with little effort are heeded with more', () => {
    const patches = [patchAt(fivePatch, 0.5, 2.5), patchAt(fivePatch, 4.5, 2.5)] as const;
    const pins: Pin[] = [
      { kind: 'together', patches },
      { kind: 'together', patches: [patchAt(fivePatch, 0.5, 0.5), patchAt(fivePatch, 1.5, 0.5)] },
    ];
    const quick = planSewing(fivePatch, { pins, effort: 0 });
    expect([quick.conflict, quick.verdict]).toEqual([[], 'several foundations']);
    const plan = planSewing(fivePatch, { pins });
    expect([plan.conflict, plan.undecided]).toEqual([[], []]);
    expect(pins.every((p) => holds(plan, p))).toBe(true);
  });
});
