import type { Drawing } from '@seamwright/arrangement';
import { type PinRecord, resolvePins, type SewingWishes } from '@seamwright/pattern';
import type { Pin, SewingPlan, ShapeLimits } from '@seamwright/sewing';
import { keepingRepairs } from './mending.ts';
import type { Study, StudyAnswer } from './study.ts';

/** Of what the answer is. */
interface Subject {
  readonly blockId: string;
  readonly drawing: Drawing;
  readonly wishes: SewingWishes;
  readonly limits: ShapeLimits;
}

/** Adds to the worker's quick answer what the screens look up. */
export function toStudy(answer: StudyAnswer, subject: Subject): Study {
  return {
    ...answer,
    ...subject,
    ...derived(answer, subject.wishes),
    findings: findingsOf(answer),
    mended: new Set(),
    stale: false,
    refined: answer.plan === null,
    ways: {},
  };
}

/** The same study by another plan of the same drawing. */
export const withPlan = (study: Study, plan: SewingPlan, wishes: SewingWishes): Study => ({
  ...study,
  plan,
  wishes,
  ...derived({ ...study, plan }, wishes),
  ...keepingRepairs(findingsOf({ ...study, plan }), study),
});

const findingsOf = ({ arrangement, plan, shapes }: StudyAnswer): Study['findings'] => [
  ...(arrangement?.findings ?? []),
  ...(plan?.findings ?? []),
  ...shapes,
];

function derived(
  { arrangement, plan, records }: StudyAnswer,
  { pins }: SewingWishes,
): Pick<Study, 'names' | 'sectionOf' | 'clashing' | 'undecided' | 'lost'> {
  const count = arrangement?.patches.length ?? 0;
  const names = new Array<string>(count).fill('?');
  const sectionOf = new Array<number>(count).fill(-1);
  for (const [index, section] of (plan?.sections ?? []).entries()) {
    for (const [position, patch] of section.order.entries()) {
      names[patch] = `${section.letter}${position + 1}`;
      sectionOf[patch] = index;
    }
  }
  return {
    names,
    sectionOf,
    clashing: named(plan?.conflict, pins, records),
    undecided: named(plan?.undecided, pins, records),
    lost: arrangement === null ? [] : resolvePins(pins, records).lost,
  };
}

/** The maker's pins that are among those of the plan, which knows them by patch index. */
function named(
  some: readonly Pin[] = [],
  pins: readonly PinRecord[],
  records: StudyAnswer['records'],
): readonly PinRecord[] {
  const known = new Set(some.map((pin) => JSON.stringify(pin)));
  if (known.size === 0) return [];
  return pins.filter((pin) =>
    resolvePins([pin], records).pins.some((indexed) => known.has(JSON.stringify(indexed))),
  );
}
