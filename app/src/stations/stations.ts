import { type ComponentType, lazy } from 'react';
import type { StationId, Work } from '../store/work.ts';
import { clothWord, draftWord, orderWord, paperWord } from './words.ts';

export interface Station {
  readonly id: StationId;
  readonly name: string;
  /** How far the work is there, in a few words. */
  readonly word: (work: Work) => string;
  /** Loaded when first gone to. */
  readonly Screen: ComponentType;
}

/** In the order of the work. Arrange, when it is built, stands between Cloth and Paper. */
export const STATIONS: readonly Station[] = [
  {
    id: 'draft',
    name: 'Draft',
    word: draftWord,
    Screen: lazy(() => import('./draft/draft-station.tsx')),
  },
  {
    id: 'order',
    name: 'Order',
    word: orderWord,
    Screen: lazy(() => import('./order/order-station.tsx')),
  },
  {
    id: 'cloth',
    name: 'Cloth',
    word: clothWord,
    Screen: lazy(() => import('./cloth/cloth-station.tsx')),
  },
  {
    id: 'paper',
    name: 'Paper',
    word: paperWord,
    Screen: lazy(() => import('./paper/paper-station.tsx')),
  },
];
