import type { Mark } from '../marks/model.ts';

/** Something that stands on the page, its top left corner at (0, 0). Points. */
export interface Part {
  readonly marks: readonly Mark[];
  readonly height: number;
  /** Points below it, where it is not what is usual. */
  readonly gap?: number;
}
