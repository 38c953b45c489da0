import type { Arrangement, Drawing, Finding, PatchRecord } from '@seamwright/arrangement';
import type { Problem } from '@seamwright/geometry';
import type { SewingPlan } from '@seamwright/sewing';

/** What the worker says of one drawing. Plain data: it crosses from the worker to the page. */
export interface StudyAnswer {
  /** Null where the drawing cannot be taken apart at all (an outline that crosses itself): `problem` says why. */
  readonly arrangement: Arrangement | null;
  readonly problem: Problem | null;
  readonly plan: SewingPlan | null;
  /** The patches' records, in the order of the arrangement's patches. */
  readonly records: readonly PatchRecord[];
}

/** The answer as the app uses it. */
export interface Study extends StudyAnswer {
  readonly blockId: string;
  /** The drawing that was studied. */
  readonly drawing: Drawing;
  /** True while a newer drawing is being studied: what is shown is on its way out. */
  readonly stale: boolean;
  /** The arrangement's findings, then the plan's; their number on the screen is their place here + 1. */
  readonly findings: readonly Finding[];
  /** By patch index: `A1`; `?` where no foundation holds it. */
  readonly names: readonly string[];
  /** By patch index: index of its section in the plan; -1 where none. */
  readonly sectionOf: readonly number[];
}
