import { type Arrangement, type Finding, plainWords } from '@seamwright/arrangement';
import { boundingBox, type Point, type Segment } from '@seamwright/geometry';
import type { SewingPlan, Verdict } from './types.ts';

/** A point as files have it: x to the right, y down from the top left of the outline, inches. */
export type Pair = readonly [number, number];

/** The sewing report, `seamwright-sewing/1`: what outside programs read. See docs/file-format.md. */
export interface SewingReport {
  readonly format: 'seamwright-sewing/1';
  readonly unit: 'in';
  readonly outline: readonly Pair[];
  readonly verdict: Verdict;
  readonly provenLeast: boolean;
  readonly atLeast: number;
  readonly pieces: readonly { readonly name: string; readonly polygon: readonly Pair[] }[];
  readonly foundations: readonly {
    readonly letter: string;
    readonly order: readonly string[];
    readonly outline: readonly Pair[];
  }[];
  readonly joins: readonly {
    readonly units: readonly [string, string];
    readonly makes: string;
    readonly seam: readonly [Pair, Pair];
    readonly partial: boolean;
    /**
     * Of a partial join: the stretch that is left open, from where the sewing stops outwards, and the place in `joins`,
     * from 0, of the join after which it is closed.
     */
    readonly open?: { readonly seam: readonly [Pair, Pair]; readonly closedAfter: number };
  }[];
  readonly findings: readonly {
    readonly kind: string;
    readonly severity: Finding['severity'];
    readonly message: string;
    readonly at: readonly Pair[];
    readonly repairs: readonly {
      readonly message: string;
      readonly splits: readonly (readonly [Pair, Pair])[];
    }[];
  }[];
}

/** The name of every patch: section letter and number in piecing order, `?1`, `?2` … for those that no foundation holds. */
export function pieceNames(plan: SewingPlan): ReadonlyMap<number, string> {
  const names = new Map<number, string>();
  for (const { letter, order } of plan.sections) {
    order.forEach((patch, i) => {
      names.set(patch, `${letter}${i + 1}`);
    });
  }
  plan.unheld.forEach((patch, i) => {
    names.set(patch, `?${i + 1}`);
  });
  return names;
}

/**
 * The report of one block. It tells of the repairs that are made by adding lines alone: of others it could not say what to do.
 *
 * @param more findings from before the arrangement, e.g. of the file that the drawing was read from
 */
export function sewingReport(
  arrangement: Arrangement,
  plan: SewingPlan,
  more: readonly Finding[] = [],
): SewingReport {
  const box = boundingBox(arrangement.outline);
  const pair = ({ x, y }: Point): Pair => [x - box.minX, y - box.minY];
  const pairs = ({ a, b }: Segment) => [pair(a), pair(b)] as const;
  const names = pieceNames(plan);
  return {
    format: 'seamwright-sewing/1',
    unit: 'in',
    outline: arrangement.outline.map(pair),
    verdict: plan.verdict,
    provenLeast: plan.provenLeast,
    atLeast: plan.atLeast,
    pieces: [...names].map(([patch, name]) => ({
      name,
      polygon: arrangement.patches[patch]!.polygon.map(pair),
    })),
    foundations: plan.sections.map(({ letter, order, outline }) => ({
      letter,
      order: order.map((patch) => names.get(patch)!),
      outline: outline.map(pair),
    })),
    joins: plan.joins.map(({ units, makes, seam, partial, open }) => ({
      units,
      makes,
      seam: pairs(seam),
      partial,
      ...(open !== undefined && { open: { seam: pairs(open.seam), closedAfter: open.closedAfter } }),
    })),
    findings: [...more, ...arrangement.findings, ...plan.findings].map(
      ({ kind, severity, message, at, repairs }) => ({
        kind,
        severity,
        message: plainWords(message),
        at: at.map(pair),
        repairs: repairs
          .filter(({ splits }) => splits.length > 0)
          .map((repair) => ({
            message: plainWords(repair.message),
            splits: repair.splits.map(([a, b]) => [pair(a), pair(b)] as const),
          })),
      }),
    ),
  };
}
