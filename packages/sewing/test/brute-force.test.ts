import { type Arrangement, arrange, drawingFromSegments } from '@seamwright/arrangement';
import { describe, expect, it } from 'vitest';
import { planSewing } from '../src/index.ts';
import { type BruteAnswer, byBruteForce } from './brute-force.ts';
import { familyDrawing, KINDS, type Kind, OUTLINES } from './brute-force-drawings.ts';
import { drawingOf, knownDrawings } from './read-drawings.ts';

/** Drawings of each kind; with six kinds, 3,000. */
const EACH = 500;
const MOST_PATCHES = 12;

const CONCAVE = ['L-shape', 'arrow', 'U-shape'];

interface Case {
  readonly name: string;
  readonly shape: string;
  readonly arrangement: Arrangement;
  readonly expected: BruteAnswer;
}

const polygonsOf = ({ patches }: Arrangement) =>
  patches.map(({ polygon }) => polygon.map(({ x, y }) => [x, y] as const));

/** A drawing of the family with its answer by brute force; null where it is too large, or unclear what was drawn. */
function familyCase(kind: Kind, seed: number): Case | null {
  const { shape, outline, segments } = familyDrawing(kind, seed);
  const result = arrange(drawingFromSegments(outline, segments));
  if (!result.ok) return null;
  const { patches, findings } = result.value;
  // A chord between sides of a concave outline runs through the outside.
  if (findings.some((finding) => !['beyond-outline', 'outside-outline'].includes(finding.kind))) return null;
  if (patches.length < 2 || patches.length > MOST_PATCHES) return null;
  const expected = byBruteForce(polygonsOf(result.value));
  return expected && { name: `${kind} ${seed}`, shape, arrangement: result.value, expected };
}

const made = new Map<Kind, Case[]>();

/** The first of a kind's drawings that can be used. Nearly all can, or the family would not be what it seems. */
function familyCases(kind: Kind): Case[] {
  const known = made.get(kind);
  if (known !== undefined) return known;
  const cases: Case[] = [];
  made.set(kind, cases);
  for (let seed = 0; cases.length < EACH; seed += 1) {
    const usable = familyCase(kind, seed);
    if (usable !== null) cases.push(usable);
    if (seed > 1.5 * EACH) throw new Error(`too few drawings of the kind ${kind} can be used`);
  }
  return cases;
}

describe('the solver and brute force agree', () => {
  for (const kind of KINDS) {
    it(`${kind}: ${EACH} drawings of up to ${MOST_PATCHES} patches`, async ({ annotate }) => {
      const cases = familyCases(kind);
      for (const { name, arrangement, expected } of cases) {
        const plan = planSewing(arrangement);
        const straight = plan.verdict !== 'not sewable';
        expect(straight, name).toBe(expected.straightSeams);
        expect(plan.verdict === 'one foundation', name).toBe(expected.oneFoundation);
        expect(plan.provenLeast, name).toBe(true);
        if (!straight) continue;
        expect(plan.sections.length, name).toBe(expected.fewest);
        expect(plan.atLeast, name).toBe(expected.fewest);
      }
      await annotate(distribution(cases), 'distribution');
    });
  }

  it('the family holds enough of every kind', async ({ annotate }) => {
    const seen = KINDS.flatMap(familyCases);
    const number = (holds: (c: Case) => boolean) => seen.filter(holds).length;
    await annotate(distribution(seen), 'distribution');
    expect(seen.length).toBeGreaterThanOrEqual(2000);
    expect(number(({ expected }) => expected.oneFoundation)).toBeGreaterThan(400);
    expect(number(({ expected }) => !expected.straightSeams)).toBeGreaterThan(400);
    expect(number(({ expected }) => expected.fewest === 2)).toBeGreaterThan(300);
    expect(number(({ expected }) => expected.fewest === 3)).toBeGreaterThan(300);
    expect(number(({ expected }) => (expected.fewest ?? 0) > 3)).toBeGreaterThan(25);
    expect(number(({ arrangement }) => arrangement.patches.length > 8)).toBeGreaterThan(500);
    expect(number(({ arrangement }) => arrangement.patches.length === MOST_PATCHES)).toBeGreaterThan(30);
    for (const shape of Object.keys(OUTLINES)) {
      expect(
        number((c) => c.shape === shape),
        shape,
      ).toBeGreaterThan(100);
      expect(
        number((c) => c.shape === shape && !c.expected.straightSeams),
        shape,
      ).toBeGreaterThan(20);
    }
    expect(number(({ shape }) => CONCAVE.includes(shape))).toBeGreaterThan(600);
  });
});

/** How many drawings need how many foundations, and how many patches they have. */
function distribution(cases: readonly Case[]): string {
  const count = (keys: readonly (string | number)[]) => {
    const counts = new Map<string | number, number>();
    for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
    return [...counts].sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, n]) => `${key}: ${n}`);
  };
  const foundations = count(cases.map(({ expected }) => expected.fewest ?? 'never'));
  const patches = count(cases.map(({ arrangement }) => arrangement.patches.length));
  return `foundations ${foundations.join(', ')}; patches ${patches.join(', ')}`;
}

describe('brute force itself', () => {
  for (const known of knownDrawings().filter(({ expected }) => expected.patches <= MOST_PATCHES)) {
    it(`${known.name}: the answer that was counted elsewhere`, () => {
      const result = arrange(drawingOf(known));
      if (!result.ok) throw new Error(result.problem.what);
      const { oneFoundation, straightSeams, fewestFoundations } = known.expected;
      expect(byBruteForce(polygonsOf(result.value))).toEqual({
        oneFoundation,
        straightSeams,
        fewest: fewestFoundations,
      });
    });
  }

  it('says nothing where two seams are nearly on one line', () => {
    const across = (y: number, z: number) =>
      [
        [
          [0, 0],
          [4, 0],
          [4, y],
          [0, y],
        ],
        [
          [4, 0],
          [8, 0],
          [8, z],
          [4, z],
        ],
        [
          [0, y],
          [4, y],
          [4, z],
          [8, z],
          [8, 9],
          [0, 9],
        ],
      ] as const;
    expect(byBruteForce(across(4, 4.01))).toBeNull();
    // With a step, whichever patch is sewn last lies along two lines.
    expect(byBruteForce(across(4, 4.2))).toEqual({
      oneFoundation: false,
      straightSeams: false,
      fewest: null,
    });
  });
});
