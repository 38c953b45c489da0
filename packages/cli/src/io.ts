import type { LoadSolver } from '@seamwright/cloth';
import type { PageFonts } from '@seamwright/pages';

/**
 * What a command may touch beside files. The tests bring their own, so that every command runs in their process.
 */
export interface Io {
  /** Text for whoever reads the answer; line breaks are part of it. */
  readonly out: (text: string) => void;
  /** One line for whoever made the call, without its line break. */
  readonly complain: (line: string) => void;
  /** The fonts that pages are set in; read only when pages are made. */
  readonly fonts: () => Promise<PageFonts>;
  /** Loads the solver of integer programs; asked only when fabric is planned. */
  readonly solver: LoadSolver;
}

/**
 * The exit status of a command: 0 done; 1 done, but the answer is "no" (not sewable); 2 the input or the call
 * is unusable. In this order, so that the worst of several is the greatest.
 */
export type Status = 0 | 1 | 2;

/** The greatest of several. */
export const worst = (statuses: readonly Status[]): Status => Math.max(0, ...statuses) as Status;
