import type { Box, Point } from '@seamwright/geometry';
import type { Paper } from '../sheet/paper.ts';

/**
 * The page model: what stands on each sheet, in page space (PDF points from the top left corner, y down). The
 * layout decides everything; the writers only translate, so a preview and a saved file cannot differ.
 */

/** What a mark is for. Programs that read a page, and the SVG groups, go by it. */
export type Role =
  | 'sew-line'
  /** A sew line's run through the allowance, from the finished outline to the cutting line. */
  | 'run-on'
  | 'finished-outline'
  | 'cutting-line'
  | 'match-mark'
  | 'check-square'
  /** Where two tiles of one foundation are laid edge to edge. */
  | 'tile-edge'
  /** At the ends of a tile edge: between them the tile is trimmed. */
  | 'crop-mark'
  /** Marks across a tile edge that must meet. */
  | 'alignment-mark'
  /** Piece numbers, the words `sew` and `cut` beside the two outlines, letters beside match marks. */
  | 'label'
  /** Words and signs about a foundation, outside its cutting line. */
  | 'caption'
  /** Words and rules about the whole sheet. */
  | 'footer';

/** 1 is black, 0 is paper. Not under 0.3: paler greys break up on a home printer. */
export type Ink = number;

export interface Stroke {
  /** Points. Not under 0.5: a home printer does not hold a finer line. */
  readonly width: number;
  /** 1 is black, 0 is paper. */
  readonly ink: Ink;
  /** Lengths of dash and gap, points; solid when left out. */
  readonly dash?: readonly [number, number];
}

/** A path of straight stretches. */
export interface PathMark {
  readonly kind: 'path';
  readonly role: Role;
  /** The key of the foundation that it belongs to; left out for marks of the sheet. */
  readonly section?: string;
  readonly points: readonly Point<'page'>[];
  readonly closed: boolean;
  readonly stroke?: Stroke;
  /** Ink of the inside; not filled when left out. */
  readonly fill?: Ink;
  /** Only what lies in it is shown; all of the path when left out. */
  readonly window?: Box<'page'>;
}

export type Weight = 'regular' | 'semibold';

/** One line of text. Never mirrored. */
export interface TextMark {
  readonly kind: 'text';
  readonly role: Role;
  readonly section?: string;
  readonly content: string;
  /** Points. */
  readonly size: number;
  readonly weight: Weight;
  /** Which end of the text stands at `at`. */
  readonly anchor: 'start' | 'middle' | 'end';
  /** On the base line. */
  readonly at: Point<'page'>;
  /** Degrees clockwise as seen on the sheet; 0 is upright, and no text is turned beyond a quarter turn. */
  readonly angle: number;
  readonly ink: Ink;
}

export type Mark = PathMark | TextMark;

export interface Sheet {
  /** In drawing order. */
  readonly marks: readonly Mark[];
  /** The keys of the foundations that stand on it, in order; its marks, and the SVG groups, go by them. */
  readonly sections: readonly string[];
  /** How often it is to be printed; once when left out. */
  readonly times?: number;
  /**
   * For each of them the letters of all sections that are sewn on prints of it, its own first; left out where each is
   * for one section.
   */
  readonly printedFor?: readonly (readonly string[])[];
}

/** An entry of the document's outline (bookmarks). */
export interface OutlineEntry {
  readonly title: string;
  /** Index of the sheet. */
  readonly sheet: number;
  readonly children: readonly OutlineEntry[];
}

/** What is to be printed of one foundation. */
export interface Print {
  /** The foundation's, as in {@link Sheet.sections}. */
  readonly key: string;
  /** The block's name. */
  readonly block: string;
  /** Of all sections that are sewn on prints of it, the one that is laid out first. */
  readonly letters: readonly string[];
  /** Finished size of the whole block, inches. */
  readonly size: { readonly width: number; readonly height: number };
  /** Whether it is for blocks that are the mirror image of the drawing. */
  readonly mirrored: boolean;
  readonly count: number;
  /** Indices of the sheets that it stands on: several where it is cut into tiles, or where sheets are filled with prints of it. */
  readonly sheets: readonly number[];
}

export interface PagePlan {
  readonly title: string;
  readonly paper: Paper;
  readonly sheets: readonly Sheet[];
  readonly outline: readonly OutlineEntry[];
  /** What is to be printed, in the order of the job's sizes and of the letters. */
  readonly prints: readonly Print[];
  /** How well the paper is used; left out where no foundations are laid out. */
  readonly packing?: PackingReport;
}

export interface PackingReport {
  /** What is counted: the sheets of the file, or, where they are filled with prints of the same, all that are printed. */
  readonly of: 'file' | 'paper';
  readonly sheets: number;
  /** A proved bound: however the foundations are placed, a gap apart and turned by quarters, they need as many sheets. */
  readonly atLeast: number;
  /** What share of the sheets' room the foundations take, each with its part of the gap, 0 to 1. */
  readonly areaShare: number;
}
