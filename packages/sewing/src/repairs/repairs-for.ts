import type { Arrangement, Drawing, Finding } from '@seamwright/arrangement';
import type { Point } from '@seamwright/geometry';
import type { Candidate } from './candidate.ts';
import { extensions } from './extend.ts';
import { islandRepairs } from './island.ts';
import { lineUps } from './line-up.ts';
import { looseEndRepairs } from './loose-end.ts';
import { mergesAtEnds, mergesOf } from './merge.ts';
import { Health, provedRepairs, type ReadyRepair, troubleOf } from './prove.ts';
import { slides } from './slide.ts';
import { type SeamEnd, seamEndOf } from './ways-on.ts';

/** Repairs of one finding: more would not help to choose. */
const REPAIRS_TOLD = 6;

/**
 * Patches that may be looked at in changed drawings to find the repairs of one finding: some tenths of a second. Counted and
 * not timed, so that the same drawing has the same repairs on every machine.
 */
export const REPAIR_EFFORT = 20_000;

/**
 * The repairs of a finding, best first: those that keep all that the maker drew, then those that take some of it away; of
 * either, fewest added patches, then least added seam, then the largest smallest patch.
 *
 * Each is proved by solving the changed drawing again: the finding is gone, and there are of no other kind more. Where what
 * hinders sewing cannot be mended without new cautions, repairs that bring some are told.
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
  private readonly before: Health;

  constructor(
    private readonly drawing: Drawing,
    private readonly arrangement: Arrangement,
    private effort: number,
  ) {
    this.before = new Health(arrangement);
  }

  of(finding: Finding): readonly ReadyRepair[] {
    if (this.effort <= 0) return [];
    const candidates = candidatesFor(this.drawing, this.arrangement, finding);
    if (candidates.length === 0) return [];
    const effort = Math.min(this.effort, REPAIR_EFFORT);
    const { repairs, effortLeft } = provedRepairs(
      this.before,
      troubleOf(this.before, finding),
      candidates,
      REPAIRS_TOLD,
      effort,
    );
    this.effort -= effort - effortLeft;
    return repairs;
  }
}

function candidatesFor(drawing: Drawing, arrangement: Arrangement, finding: Finding): Candidate[] {
  switch (finding.kind) {
    case 'interlocked': {
      const seams = (finding.ring ?? []).flatMap((seam) => seamEndOf(arrangement, seam) ?? []);
      return [
        ...seams.flatMap((seam) => extensions(drawing, arrangement, seam)),
        ...seams.flatMap((seam) => slides(drawing, arrangement, seam)),
        ...mergesAtEnds(
          drawing,
          arrangement,
          seams.map(({ vertex }) => vertex),
        ),
        ...lineUps(drawing, arrangement, finding),
      ];
    }
    case 'loose-end':
      return looseEndRepairs(drawing, arrangement, finding);
    case 'island':
      return islandRepairs(drawing, arrangement, finding);
    case 'near-line-up':
      return lineUps(drawing, arrangement, finding);
    case 'sliver':
    case 'small-patch':
      return mergesOf(drawing, arrangement, finding.patches ?? []);
    case 'sharp-point': {
      const ends = endsAt(arrangement, finding.at);
      return [
        ...mergesOf(drawing, arrangement, finding.patches ?? []),
        ...ends.flatMap((seam) => slides(drawing, arrangement, seam)),
      ];
    }
    default:
      return [];
  }
}

/** The seams that end at one of some places. */
function endsAt({ vertices, edges }: Arrangement, places: readonly Point[]): SeamEnd[] {
  return places.flatMap((place) => {
    const vertex = vertices.find(({ at }) => at.x === place.x && at.y === place.y);
    const here = edges.filter(({ from, to }) => from === vertex?.index || to === vertex?.index);
    return here
      .filter((edge) => here.filter(({ line }) => line === edge.line).length === 1)
      .map(({ line, from, to }) => ({
        line,
        vertex: vertex!.index,
        start: from === vertex!.index ? to : from,
      }));
  });
}
