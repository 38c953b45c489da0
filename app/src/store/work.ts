import type { Drawing, LineId, PointId } from '@seamwright/arrangement';
import type { FinishedSize } from '@seamwright/pages';
import {
  type Block,
  type ColourwayKey,
  colourwayKey,
  type History,
  NO_WISHES,
  type Pattern,
  type SewingWishes,
  startHistory,
} from '@seamwright/pattern';
import { create } from 'zustand';
import { subscribeWithSelector } from 'zustand/middleware';
import type { Sheets } from '../study/sheets.ts';
import type { Study } from '../study/study.ts';

import { freshPattern } from './fresh.ts';

/** The places in which the work is done, in the order of the work. Stations not built yet are not named here. */
export type StationId = 'draft' | 'order' | 'cloth' | 'paper';

/** What is in hand. Kept apart from the document: undo does not touch it, and it is never saved. */
export interface Selection {
  readonly points: readonly PointId[];
  readonly lines: readonly LineId[];
  /** {@link PatchRecord} ids. */
  readonly patches: readonly string[];
}

export const NOTHING: Selection = { points: [], lines: [], patches: [] };

/** Where the open pattern came from: begun anew, the demo, or work of the maker's (a file, the shelf). */
export type Origin = 'fresh' | 'demo' | 'work';

/** What the maker asks of a block's sheets; no part of the pattern. */
export interface Printing {
  /** The finished sizes that are printed in one go, one or more, and how many blocks are sewn of each. */
  readonly sizes: readonly FinishedSize[];
  /** Nothing is cut for the block where the pattern's blocks are cut together. */
  readonly leftOut?: boolean;
}

const AS_DRAWN: Printing = { sizes: [{ scale: 1, copies: 1 }] };

export interface Work {
  /** Under which name the browser keeps this work; see `keeping/`. */
  readonly kept: string;
  readonly origin: Origin;
  /** The document and everything that can be undone. */
  readonly history: History<Pattern>;
  readonly blockId: string;
  /** The id of the colourway that is in hand; null, and one that is gone, means the first. */
  readonly colourwayId: string | null;
  readonly station: StationId;
  readonly selection: Selection;
  /** The drawing while a tool has hold of it: shown and studied, but not yet part of the document. */
  readonly inHand: Drawing | null;
  /** What the study worker says of the current block; null before its first answer. */
  readonly study: Study | null;
  /** By block id; what is not there is {@link AS_DRAWN}. */
  readonly printing: Readonly<Record<string, Printing>>;
  /** The sheets of the open block; null before the first were laid out. */
  readonly sheets: Sheets | null;
}

/**
 * The one store. Components subscribe to the narrowest thing they show: `useWork(s => s.history.present.title)`.
 * What changes it stands in `changes.ts`, `blocks.ts` and `selection.ts` as plain functions.
 */
export const useWork = create<Work>()(
  subscribeWithSelector((): Work => {
    const pattern = freshPattern();
    return {
      kept: '',
      origin: 'fresh',
      history: startHistory(pattern),
      blockId: pattern.blocks[0]!.id,
      colourwayId: null,
      station: 'draft',
      selection: NOTHING,
      inHand: null,
      study: null,
      printing: {},
      sheets: null,
    };
  }),
);

export const pattern = (work: Work): Pattern => work.history.present;

/** The block that is open. A pattern always has one; an id that is gone (undo of "new block") means the first. */
export function currentBlock(work: Work): Block {
  const { blocks } = work.history.present;
  return blocks.find((block) => block.id === work.blockId) ?? blocks[0]!;
}

/** The colourway that is in hand, as the pattern's functions take it. */
export const currentColourway = (work: Work): ColourwayKey => colourwayKey(pattern(work), work.colourwayId);

/** The drawing as it is to be shown: the one a tool has hold of, otherwise the document's. */
export const currentDrawing = (work: Work): Drawing => work.inHand ?? currentBlock(work).drawing;

/** How the open block is to be sewn. */
export const currentWishes = (work: Work): SewingWishes => currentBlock(work).sewing ?? NO_WISHES;

export const printingOf = ({ printing }: Work, blockId: string): Printing => printing[blockId] ?? AS_DRAWN;

export const currentPrinting = (work: Work): Printing => printingOf(work, currentBlock(work).id);
