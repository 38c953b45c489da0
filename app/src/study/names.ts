import type { SewingPlan } from '@seamwright/sewing';
import type { Study, StudyAnswer } from './study.ts';

/** Adds to the worker's answer what the screens look up by patch. */
export function toStudy(answer: StudyAnswer): Omit<Study, 'blockId' | 'drawing' | 'stale'> {
  const count = answer.arrangement?.patches.length ?? 0;
  const names = new Array<string>(count).fill('?');
  const sectionOf = new Array<number>(count).fill(-1);
  for (const [index, section] of (answer.plan?.sections ?? []).entries()) {
    for (const [position, patch] of section.order.entries()) {
      names[patch] = `${section.letter}${position + 1}`;
      sectionOf[patch] = index;
    }
  }
  return { ...answer, findings: findings(answer.arrangement?.findings ?? [], answer.plan), names, sectionOf };
}

const findings = (own: Study['findings'], plan: SewingPlan | null): Study['findings'] => [
  ...own,
  ...(plan?.findings ?? []),
];
