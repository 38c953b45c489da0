import { type Margins, PRINTER_RANGE, type Printer } from '@seamwright/pages';
import { create } from 'zustand';
import { isMargins } from './sheet-settings.ts';

/** A printer that was measured, with what it leaves blank at the edges of a sheet. */
export interface KnownPrinter extends Printer {
  readonly margins: Margins;
}

/** The maker's printers, kept between visits; no part of any pattern. */
export interface Printers {
  /** Each under a name of its own. */
  readonly known: readonly KnownPrinter[];
  /** The name of the one that pages are corrected for; null: they are true in the file. */
  readonly chosen: string | null;
}

const KEY = 'seamwright printers';

const NONE: Printers = { known: [], chosen: null };

function read(): Printers {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return NONE;
    const { known, chosen } = kept as Record<string, unknown>;
    const readable = Array.isArray(known) ? known.filter(isPrinter) : [];
    return { known: readable, chosen: readable.find(({ name }) => name === chosen)?.name ?? null };
  } catch {
    // Storage switched off, or something else's text under our name.
    return NONE;
  }
}

function isPrinter(value: unknown): value is KnownPrinter {
  if (typeof value !== 'object' || value === null) return false;
  const { name, across, down, margins } = value as Record<string, unknown>;
  return typeof name === 'string' && name !== '' && isFactor(across) && isFactor(down) && isMargins(margins);
}

const isFactor = (value: unknown): value is number =>
  typeof value === 'number' && value >= PRINTER_RANGE.least && value <= PRINTER_RANGE.most;

export const usePrinters = create<Printers>()(read);

/** The printer that pages are corrected for; null where they are true in the file. */
export const chosenPrinter = ({ known, chosen }: Printers): KnownPrinter | null =>
  known.find(({ name }) => name === chosen) ?? null;

/** Puts the printer in the place of the one that has its name, and chooses it. */
export const keepPrinter = (printer: KnownPrinter): void =>
  change(({ known }) => ({
    known: [...known.filter(({ name }) => name !== printer.name), printer].sort((a, b) =>
      a.name.localeCompare(b.name),
    ),
    chosen: printer.name,
  }));

export const choosePrinter = (name: string | null): void => change(({ known }) => ({ known, chosen: name }));

export const forgetPrinter = (name: string): void =>
  change(({ known, chosen }) => ({
    known: known.filter((printer) => printer.name !== name),
    chosen: chosen === name ? null : chosen,
  }));

function change(edit: (before: Printers) => Printers): void {
  usePrinters.setState(edit);
  try {
    const { known, chosen } = usePrinters.getState();
    localStorage.setItem(KEY, JSON.stringify({ known, chosen }));
  } catch {
    // Not kept then; it holds for this visit.
  }
}
