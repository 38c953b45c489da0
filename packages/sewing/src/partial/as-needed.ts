import { type Finding, say } from '@seamwright/arrangement';
import type { SewingPlan } from '../types.ts';

/**
 * The plan with straight seams where they suffice, and with partial ones only where they do not: what a drawing takes,
 * whatever its maker allows.
 *
 * Where it takes partial seams, what stands in the way of straight ones is told as cautions, not as errors: it need not be
 * mended, but whoever would rather have straight seams sees where, and how.
 *
 * @param plan makes the plan of the drawing, with or without partial seams allowed
 */
export function planAsNeeded(plan: (partialSeams: boolean) => SewingPlan): SewingPlan {
  const straight = plan(false);
  if (straight.verdict !== 'not sewable') return straight;
  const partial = plan(true);
  return partial.verdict === 'partial seams'
    ? { ...partial, findings: straight.findings.map(asCaution) }
    : straight;
}

const asCaution = (finding: Finding): Finding => ({
  ...finding,
  severity: 'caution',
  message: say`${finding.message} Or sew it as it is, with a partial seam.`,
});
