import type { Margins, PaperChoice, Printer } from '@seamwright/pages';
import { chosenPrinter, usePrinters } from '../store/printers.ts';
import { useSettings } from '../store/settings.ts';

/** What comes out of the maker's printer, as it was chosen at Paper. */
interface SheetWanted {
  readonly paper: PaperChoice;
  readonly margins: Margins;
  readonly printer?: Printer;
}

export function sheetWanted(): SheetWanted {
  const { paper, margins } = useSettings.getState();
  const printer = chosenPrinter(usePrinters.getState());
  if (printer === null) return { paper, margins };
  const { name, across, down } = printer;
  return { paper, margins: printer.margins, printer: { name, across, down } };
}
