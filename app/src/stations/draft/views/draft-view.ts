import { create } from 'zustand';
import { announce } from '../../../store/notices.ts';
import type { Turning } from './copies.ts';

/** How the block is looked at while it is drawn. */
export const VIEWS = [
  { value: 'front', name: 'Front', words: 'As the finished block is seen, in the colours of its sections' },
  {
    value: 'printed',
    name: 'Printed side',
    words: 'The other side, as it is printed: left and right exchanged',
  },
  { value: 'lines', name: 'Lines only', words: 'Nothing but what is drawn' },
  { value: 'fabrics', name: 'Fabrics', words: 'In the fabrics that the patches are cut from' },
] as const;

/** How copies lie beside each other. */
export const TURNINGS: readonly { readonly value: Turning; readonly name: string }[] = [
  { value: 'same', name: 'All the same way up' },
  { value: 'alternate', name: 'Every other a quarter turn' },
  { value: 'pinwheel', name: 'Turned round in fours' },
  { value: 'mirrored', name: 'Mirrored across and down' },
];

export type ViewKind = (typeof VIEWS)[number]['value'];

export interface DraftView {
  readonly kind: ViewKind;
  /** Copies side by side, as many down; 1: the block alone. */
  readonly copies: number;
  /** What was shown before the copies were put away. */
  readonly lastCopies: number;
  readonly turning: Turning;
}

export const MOST_COPIES = 6;
const USUAL: DraftView = { kind: 'front', copies: 1, lastCopies: 3, turning: 'same' };

const KEY = 'seamwright view';

function recalled(): DraftView {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    return isView(kept) ? kept : USUAL;
  } catch {
    // Storage switched off, or something else's text under our name.
    return USUAL;
  }
}

function isView(kept: unknown): kept is DraftView {
  if (typeof kept !== 'object' || kept === null) return false;
  const { kind, copies, lastCopies, turning } = kept as Record<string, unknown>;
  return (
    VIEWS.some(({ value }) => value === kind) &&
    isCount(copies, 1) &&
    isCount(lastCopies, 2) &&
    TURNINGS.some(({ value }) => value === turning)
  );
}

const isCount = (value: unknown, least: number): boolean =>
  typeof value === 'number' && Number.isInteger(value) && value >= least && value <= MOST_COPIES;

/** How the maker looks at blocks during this visit; no part of the pattern. */
export const useDraftView = create<DraftView>()(recalled);

function look(change: Partial<DraftView>): void {
  useDraftView.setState(change);
  try {
    sessionStorage.setItem(KEY, JSON.stringify(useDraftView.getState()));
  } catch {
    // Not kept over a reload then.
  }
}

export function showView(kind: ViewKind): void {
  look({ kind });
  const { name, words } = VIEWS.find(({ value }) => value === kind)!;
  announce(`View: ${name}. ${words}`);
}

export function nextView(): void {
  const at = VIEWS.findIndex(({ value }) => value === useDraftView.getState().kind);
  showView(VIEWS[(at + 1) % VIEWS.length]!.value);
}

/** So many copies across and down; 1 puts them away. */
export function showCopies(copies: number): void {
  look(copies > 1 ? { copies, lastCopies: copies } : { copies });
  announce(copies > 1 ? `${copies} × ${copies} copies` : 'The block alone');
}

export function switchCopies(): void {
  const { copies, lastCopies } = useDraftView.getState();
  showCopies(copies > 1 ? 1 : lastCopies);
}

export function turnCopies(turning: Turning): void {
  look({ turning });
  announce(TURNINGS.find(({ value }) => value === turning)!.name);
}
