import { identity, type Point } from '@seamwright/geometry';
import type { CheckedJob } from '../job.ts';
import { onOutline } from './match-marks.ts';
import { type OpenStretch, openStretches } from './open-stretches.ts';
import { sectionRing } from './ring.ts';
import { type RunStart, runStarts } from './run-ons.ts';
import { type SharedPoints, sharedPoints } from './shared-marks.ts';
import { lettersOf, type Template } from './templates.ts';

/** What a foundation has in every size, inches on the block as drawn. */
export interface SectionShape {
  readonly letters: readonly string[];
  readonly runs: readonly RunStart[];
  readonly matches: SharedPoints;
  readonly opened: readonly OpenStretch[];
  /** Where partial seams stop, and the way of the outline there. */
  readonly stops: readonly { readonly at: Point; readonly onward: Point }[];
}

export function sectionShape(job: CheckedJob, template: Template): SectionShape {
  const { arrangement, plan } = job;
  const { section } = template;
  const ring = sectionRing(arrangement, section, identity());
  const opened = openStretches(plan, section);
  return {
    letters: lettersOf(template),
    runs: runStarts(section.sewLines, ring),
    matches: sharedPoints(arrangement, job.matchNumbers, template, ring),
    opened,
    stops: opened.flatMap(({ a, sewnTo }) =>
      sewnTo === null ? [] : [{ at: a, onward: onOutline(section.outline, a).onward }],
    ),
  };
}
