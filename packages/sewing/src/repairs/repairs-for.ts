import type { Arrangement, Drawing, Finding } from '@seamwright/arrangement';
import type { Candidate } from './candidate.ts';
import { extensions } from './extend.ts';
import { merges } from './merge.ts';
import { type Health, healthOf, provedRepairs, type ReadyRepair, troubleOf } from './prove.ts';
import { slides } from './slide.ts';
import { seamEndOf } from './ways-on.ts';

/** Repairs of one finding: more would not help to choose. */
const REPAIRS_TOLD = 6;

/**
 * Patches that may be looked at in changed drawings to find the repairs of one finding: some tenths of a second. Counted and
 * not timed, so that the same drawing has the same repairs on every machine.
 */
export const REPAIR_EFFORT = 10_000;

/**
 * The repairs of a finding, best first: fewest added patches, then least added seam, then the largest smallest patch.
 *
 * Each is proved by solving the changed drawing again: there are fewer findings of this kind then, and of no other kind more.
 *
 * @param finding one that the arrangement or its plan came with
 */
export const repairsFor = (
  drawing: Drawing,
  arrangement: Arrangement,
  finding: Finding,
  effort = REPAIR_EFFORT,
): readonly ReadyRepair[] => new Repairs(drawing, arrangement, effort).of(finding);

/**
 * Findings with their repairs, for reports: as {@link repairsFor}, for as many of the findings as the effort reaches.
 * Findings that no change is known for stay as they are.
 */
export function withRepairs(
  drawing: Drawing,
  arrangement: Arrangement,
  findings: readonly Finding[],
  effort = 4 * REPAIR_EFFORT,
): readonly Finding[] {
  const repairs = new Repairs(drawing, arrangement, effort);
  return findings.map((finding) => {
    const found = repairs.of(finding);
    return found.length === 0 ? finding : { ...finding, repairs: found };
  });
}

class Repairs {
  private before: Health | null = null;

  constructor(
    private readonly drawing: Drawing,
    private readonly arrangement: Arrangement,
    private effort: number,
  ) {}

  of(finding: Finding): readonly ReadyRepair[] {
    if (this.effort <= 0) return [];
    const candidates = candidatesFor(this.drawing, this.arrangement, finding);
    if (candidates.length === 0) return [];
    this.before ??= healthOf(this.arrangement);
    const effort = Math.min(this.effort, REPAIR_EFFORT);
    const { repairs, effortLeft } = provedRepairs(
      this.before,
      troubleOf(this.arrangement, finding),
      candidates,
      REPAIRS_TOLD,
      effort,
    );
    this.effort -= effort - effortLeft;
    return repairs;
  }
}

function candidatesFor(drawing: Drawing, arrangement: Arrangement, finding: Finding): Candidate[] {
  if (finding.kind === 'interlocked') {
    const seams = (finding.ring ?? []).flatMap((seam) => seamEndOf(arrangement, seam) ?? []);
    return [
      ...seams.flatMap((seam) => extensions(drawing, arrangement, seam)),
      ...seams.flatMap((seam) => slides(drawing, arrangement, seam)),
      ...merges(
        drawing,
        arrangement,
        seams.map(({ vertex }) => vertex),
      ),
    ];
  }
  return [];
}
