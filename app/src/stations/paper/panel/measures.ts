import { type LengthUnit, MM_PER_INCH, ok, parseLength, type Result } from '@seamwright/geometry';
import { type CheckPage, type Measured, type Printer, printerFrom } from '@seamwright/pages';

/** What can be measured on a check page, as it was typed; empty where it was not measured. */
export interface TypedMeasures {
  readonly oneInchAcross: string;
  readonly oneInchDown: string;
  readonly fiftyMmAcross: string;
  readonly fiftyMmDown: string;
  readonly rulerAcross: string;
  readonly rulerDown: string;
}

export const NOTHING_MEASURED: TypedMeasures = {
  oneInchAcross: '',
  oneInchDown: '',
  fiftyMmAcross: '',
  fiftyMmDown: '',
  rulerAcross: '',
  rulerDown: '',
};

/**
 * What the printer makes of 1, from what was typed; a Problem about what is wrong with it.
 *
 * Numbers alone are inches for the small square, millimetres for the large one, and in `unit` for the rulers.
 */
export function printerOf(
  typed: TypedMeasures,
  rulers: CheckPage['rulers'],
  unit: LengthUnit,
): Result<Pick<Printer, 'across' | 'down'>> {
  const inches: { -readonly [K in keyof TypedMeasures]?: number } = {};
  for (const [name, text] of Object.entries(typed) as [keyof TypedMeasures, string][]) {
    if (text.trim() === '') continue;
    const millimetres = name.startsWith('fiftyMm') && /^[\d\s.,]+$/.test(text);
    const length = parseLength(millimetres ? `${text} mm` : text, name.startsWith('oneInch') ? 'in' : unit);
    if (!length.ok) return length;
    inches[name] = length.value;
  }
  return printerFrom({
    ...known('oneInchAcross', inches.oneInchAcross),
    ...known('oneInchDown', inches.oneInchDown),
    ...known('fiftyMmAcross', inMillimetres(inches.fiftyMmAcross)),
    ...known('fiftyMmDown', inMillimetres(inches.fiftyMmDown)),
    ...known('rulerAcross', ruler(rulers.across, inches.rulerAcross)),
    ...known('rulerDown', ruler(rulers.down, inches.rulerDown)),
  });
}

const known = <K extends keyof Measured>(name: K, value: Measured[K]): Measured =>
  value === undefined ? {} : { [name]: value };

const inMillimetres = (inches: number | undefined): number | undefined =>
  inches === undefined ? undefined : inches * MM_PER_INCH;

const ruler = (printed: number, measured: number | undefined): Measured['rulerAcross'] =>
  measured === undefined ? undefined : { printed, measured };

/** The name under which a printer is kept; a Problem where it is none. */
export function printerName(typed: string): Result<string> {
  const name = typed.replace(/\s+/g, ' ').trim();
  return name === ''
    ? {
        ok: false,
        problem: { what: 'The printer has no name', where: '', remedy: 'Type one by which you know it' },
      }
    : ok(name);
}
