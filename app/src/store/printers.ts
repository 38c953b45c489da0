import { type Margins, PRINTER_RANGE, type Printer } from '@seamwright/pages';
import { create } from 'zustand';
import { keepFields, keptFields } from './kept.ts';
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

function read(): Printers {
  const { known, chosen } = keptFields(KEY);
  const readable = Array.isArray(known) ? known.filter(isPrinter) : [];
  return { known: readable, chosen: readable.find(({ name }) => name === chosen)?.name ?? null };
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
  change((known) => ({
    known: [...known.filter(({ name }) => name !== printer.name), printer].sort((a, b) =>
      a.name.localeCompare(b.name),
    ),
    chosen: printer.name,
  }));

export const choosePrinter = (name: string | null): void => change((known) => ({ known, chosen: name }));

export const forgetPrinter = (name: string): void =>
  change((known, chosen) => ({
    known: known.filter((printer) => printer.name !== name),
    chosen: chosen === name ? null : chosen,
  }));

/** Changes what is kept by now: another tab may have measured a printer, or forgotten one, since this one was opened. */
function change(edit: (known: Printers['known'], chosen: Printers['chosen']) => Printers): void {
  const { known, chosen } = usePrinters.getState();
  // Where the browser keeps nothing, this tab alone knows any.
  const after = edit('known' in keptFields(KEY) ? read().known : known, chosen);
  usePrinters.setState(after);
  keepFields(KEY, after);
}
