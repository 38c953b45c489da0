import { sentence } from '@seamwright/geometry';
import type { SewingPlan } from '@seamwright/sewing';
import { counted } from '../ui/plural.ts';
import type { Study } from './study.ts';

/** How grave it is: what the sign beside the sentence says. */
export type VerdictSign = 'good' | 'caution' | 'wrong' | 'waiting';

export interface VerdictWords {
  readonly sign: VerdictSign;
  /** The short sentence that always stands in the same place. */
  readonly short: string;
  /** What stands behind it, for those who ask. */
  readonly long: readonly string[];
}

/** The verdict on the open block in words. */
export function verdictWords(study: Study | null): VerdictWords {
  if (study === null) return { sign: 'waiting', short: 'Looking at the drawing…', long: [] };
  if (study.problem !== null) {
    return {
      sign: 'wrong',
      short: `${study.problem.what}.`,
      long: [sentence(study.problem), 'Until then there are no patches, no piecing order and no sheets.'],
    };
  }
  const words = planWords(study.plan!, study.names.length);
  const errors = study.findings.filter((finding) => finding.severity === 'error').length;
  const cautions = study.findings.length - errors;
  const marks = [
    ...(errors > 0 ? [counted(errors, 'error')] : []),
    ...(cautions > 0 ? [counted(cautions, 'caution')] : []),
  ];
  const sign = errors > 0 ? 'wrong' : cautions > 0 && words.sign === 'good' ? 'caution' : words.sign;
  return {
    sign,
    short: marks.length === 0 ? words.short : `${words.short} · ${marks.join(', ')}`,
    long: words.long,
  };
}

function planWords(plan: SewingPlan, patches: number): VerdictWords {
  const { verdict, sections, joins } = plan;
  switch (verdict) {
    case 'one foundation':
      return patches === 1
        ? {
            sign: 'good',
            short: 'Sews on one foundation: a single patch',
            long: ['The block is not divided yet. Draw a line from edge to edge to divide it.'],
          }
        : {
            sign: 'good',
            short: 'Sews on one foundation',
            long: [
              `All ${patches} patches are sewn onto one foundation, one after the other, each along one straight seam.`,
            ],
          };
    case 'several foundations':
      return {
        sign: 'good',
        short: `Sews on ${counted(sections.length, 'foundation')}`,
        long: [
          `The ${patches} patches are sewn onto ${counted(sections.length, 'foundation')}, which are then sewn together along ${counted(joins.length, 'straight seam')}.`,
          leastWords(plan),
        ],
      };
    case 'partial seams': {
      const partial = joins.filter((join) => join.partial).length;
      return {
        sign: 'caution',
        short: `Sews with ${counted(partial, 'partial seam')}, on ${counted(sections.length, 'foundation')}`,
        long: [
          'Straight seams alone do not do: in a ring of seams each ends on the next. Sew the first of them half-way, go round the ring, and finish it last.',
          leastWords(plan),
        ],
      };
    }
    case 'not sewable':
      return {
        sign: 'wrong',
        short: 'Cannot be sewn with straight seams',
        long: [
          'There is no order in which every seam is one straight line. Change or add lines where the findings say.',
        ],
      };
  }
}

/** Whether fewer foundations could do, said as honestly as it is known. */
function leastWords({ sections, provenLeast, atLeast }: SewingPlan): string {
  if (provenLeast) return 'No way with fewer foundations exists; that is proved.';
  return atLeast >= sections.length - 1
    ? `Fewer may be possible: at least ${atLeast} are needed, and it is not proved that ${atLeast} are too few.`
    : `Fewer may be possible: at least ${atLeast} are needed, and what lies between has not been searched.`;
}
