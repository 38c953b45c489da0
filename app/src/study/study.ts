import type { Arrangement, Drawing, Finding, PatchRecord } from '@seamwright/arrangement';
import type { Problem } from '@seamwright/geometry';
import type { PinRecord, SewingWishes } from '@seamwright/pattern';
import type { AlternativeName, SewingPlan, ShapeLimits } from '@seamwright/sewing';

/** What is asked about: a drawing, what is known of its patches, and how the maker wants it sewn. */
export interface StudyQuestion {
  readonly drawing: Drawing;
  readonly records: readonly PatchRecord[];
  /** Ids of patches that no other patch is given: see {@link namedPatches}. */
  readonly named: readonly string[];
  readonly wishes: SewingWishes;
  /** From where on the shapes of patches are worth a word. */
  readonly limits: ShapeLimits;
}

/** What is asked once the patches' records are known. */
export type RecordedQuestion = Omit<StudyQuestion, 'named'>;

/** What the worker says of one drawing. Plain data: it crosses from the worker to the page. */
export interface StudyAnswer {
  /** Null where the drawing cannot be taken apart at all (an outline that crosses itself): `problem` says why. */
  readonly arrangement: Arrangement | null;
  readonly problem: Problem | null;
  readonly plan: SewingPlan | null;
  /** Cautions about the shapes of patches. */
  readonly shapes: readonly Finding[];
  /** The patches' records, in the order of the arrangement's patches. */
  readonly records: readonly PatchRecord[];
}

/** The plans that are compared, as far as they are worked out. */
export type Ways = Readonly<Partial<Record<AlternativeName, SewingPlan>>>;

/** The answer as the app uses it. */
export interface Study extends StudyAnswer {
  readonly blockId: string;
  /** The drawing that was studied. */
  readonly drawing: Drawing;
  /** The wishes that the plan is made for. */
  readonly wishes: SewingWishes;
  readonly limits: ShapeLimits;
  /** True while a newer drawing, or other wishes, are being studied: what is shown is on its way out. */
  readonly stale: boolean;
  /** False while `plan` is the quick answer, and a better one is being looked for. */
  readonly refined: boolean;
  readonly ways: Ways;
  /** The arrangement's findings, the plan's, and those of shapes; their number on the screen is their place here + 1. */
  readonly findings: readonly Finding[];
  /** Of the findings: those whose repairs have been looked for. Where there are none, there may be some yet. */
  readonly mended: ReadonlySet<Finding>;
  /** By patch index: `A1`; `?` where no foundation holds it. */
  readonly names: readonly string[];
  /** By patch index: index of its section in the plan; -1 where none. */
  readonly sectionOf: readonly number[];
  /** Pins that the plan leaves out, because they cannot hold together. */
  readonly clashing: readonly PinRecord[];
  /** Pins that the plan leaves out, because no way to heed them was found. */
  readonly undecided: readonly PinRecord[];
  /** Pins whose patch a later edit removed. */
  readonly lost: readonly PinRecord[];
}
