import { sentence } from '@seamwright/geometry';
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
  const words = planWords(study);
  const errors = study.findings.filter((finding) => finding.severity === 'error').length;
  const cautions = study.findings.length - errors;
  const marks = [
    ...(errors > 0 ? [counted(errors, 'error')] : []),
    ...(cautions > 0 ? [counted(cautions, 'caution')] : []),
    ...pinMarks(study),
  ];
  const careful = marks.length > 0 && words.sign === 'good';
  const sign = errors > 0 ? 'wrong' : careful ? 'caution' : words.sign;
  return {
    sign,
    short: marks.length === 0 ? words.short : `${words.short} · ${marks.join(', ')}`,
    long: words.long,
  };
}

/** What is to be said of pins that the plan does not heed. */
function pinMarks({ clashing, undecided, lost, refined }: Study): string[] {
  return [
    ...(undecided.length > 0
      ? [
          refined
            ? `no way found for ${counted(undecided.length, 'pin')}`
            : `looking for a way for ${counted(undecided.length, 'pin')}`,
        ]
      : []),
    ...(clashing.length === 1 ? ['1 pin cannot hold'] : []),
    ...(clashing.length > 1 ? [`${clashing.length} pins cannot hold together`] : []),
    ...(lost.length > 0 ? [`${counted(lost.length, 'pin')} lost`] : []),
  ];
}

function planWords(study: Study): VerdictWords {
  const plan = study.plan!;
  const patches = study.names.length;
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
        short: `Sews on ${counted(sections.length, 'foundation')}${leastMark(study)}`,
        long: [
          `The ${patches} patches are sewn onto ${counted(sections.length, 'foundation')}, which are then sewn together along ${counted(joins.length, 'straight seam')}.`,
          leastWords(study),
        ],
      };
    case 'partial seams': {
      const partial = joins.filter((join) => join.partial).length;
      return {
        sign: 'caution',
        short: `Sews with ${counted(partial, 'partial seam')}, on ${counted(sections.length, 'foundation')}${leastMark(study)}`,
        long: [
          'Straight seams alone do not do: in a ring of seams each ends on the next. Sew the first of them half-way, go round the ring, and finish it last.',
          leastWords(study),
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

/** What stands beside the number of foundations while it is not proved to be the least. */
function leastMark({ plan, refined, wishes }: Study): string {
  const { provenLeast, atLeast } = plan!;
  if (provenLeast || wishes.choice === 'most repetition') return '';
  return refined ? ` · fewer may do, from ${atLeast} up` : ' · looking for fewer';
}

/** Whether fewer foundations could do, said as honestly as it is known. */
function leastWords({ plan, refined, wishes }: Study): string {
  const { provenLeast, atLeast, sections, figures } = plan!;
  if (wishes.choice === 'most repetition') {
    return `Chosen for most repetition: ${counted(figures.templates, 'different foundation')}, mirror images counted once.`;
  }
  const asWanted = wishes.pins.length > 0 || wishes.choice !== 'fewest foundations';
  if (provenLeast) {
    return asWanted
      ? 'No way with fewer foundations does what you ask for; that is proved.'
      : 'No way with fewer foundations exists; that is proved.';
  }
  if (!refined) return `At least ${atLeast} are needed. A way with fewer is being looked for.`;
  return atLeast >= sections.length - 1
    ? `Fewer may be possible: at least ${atLeast} are needed, and it is not proved that ${atLeast} are too few.`
    : `Fewer may be possible: at least ${atLeast} are needed, and what lies between has not been searched.`;
}
