import { type Ends, SNAP_KINDS, type SnapKind } from '@seamwright/drafting';
import { ALLOWANCE_RANGE, checkLength } from '@seamwright/geometry';
import {
  type FoundationJob,
  type Margins,
  type PaperChoice,
  USUAL_ALLOWANCE,
  USUAL_GAP,
  USUAL_MARGINS,
  USUAL_OVERLAP,
} from '@seamwright/pages';
import { create } from 'zustand';
import { keepFields, keptFields } from './kept.ts';
import { isGap, isInk, isMargins, isOverlap, isPaper } from './sheet-settings.ts';

/** The maker's habits, kept between visits; no part of any pattern. */
export interface Settings {
  readonly paper: PaperChoice;
  /** What stays blank at the sheet's edges where no printer that was measured is in use. */
  readonly margins: Margins;
  /** Inches by which tiles show the same. */
  readonly overlap: number;
  /** Inches between foundations on a sheet. */
  readonly gap: number;
  /** No foundation is turned on its sheet. */
  readonly keepUpright: boolean;
  /** Where several are to be printed of a foundation, several stand on a sheet. */
  readonly fillSheets: boolean;
  /** Places on fewer sheets are looked for as long as it may be worth. */
  readonly saveSheets: boolean;
  /** Seam allowance, inches. */
  readonly allowance: number;
  /** Sections that are turned copies of one another are printed on one foundation. */
  readonly shareTemplates: boolean;
  readonly ink: NonNullable<FoundationJob['ink']>;
  /** Seam lines have their lengths beside them. */
  readonly seamLengths: boolean;
  /** Foundations say from which fabric each patch is cut in the colourway that is in hand. */
  readonly fabricsOnPaper: boolean;
  /** Foundations say what to cut for each patch, by the habits of the Cloth station. */
  readonly cutSizesOnPaper: boolean;
  /** Keys without Ctrl or Alt do something; off for those who dictate or whose keys slip (WCAG 2.2, 2.1.4). */
  readonly singleKeys: boolean;
  /** Inches: patches that come out smaller on paper are worth a caution. 0: none is. */
  readonly leastSize: number;
  /** Parts of panels that are folded up, by their names. */
  readonly folded: readonly string[];
  /** Kinds of places that ends of lines are not caught by. */
  readonly notCaught: readonly SnapKind[];
  /** Degrees between the angles that catch. */
  readonly angleStep: number;
  /** What becomes of ends of new lines that were put on nothing. */
  readonly ends: Ends;
  /** Whether each line begins where the last one ended. */
  readonly chain: boolean;
}

const KEY = 'seamwright settings';

/** Degrees: what halves, quarters, sixths and eighths of a turn have in common. */
const USUAL_ANGLE_STEP = 15;

/** Where paper is sold in Letter size, by the region of the browser's language (CLDR, from memory). */
const LETTER_REGIONS = ['US', 'CA', 'MX', 'CL', 'CO', 'CR', 'GT', 'NI', 'PA', 'PH', 'PR', 'SV', 'VE'];

function defaults(): Settings {
  const region = new Intl.Locale(navigator.language).maximize().region ?? '';
  return {
    paper: LETTER_REGIONS.includes(region) ? 'letter' : 'a4',
    allowance: USUAL_ALLOWANCE,
    margins: USUAL_MARGINS,
    overlap: USUAL_OVERLAP,
    gap: USUAL_GAP,
    keepUpright: false,
    fillSheets: false,
    saveSheets: false,
    shareTemplates: true,
    ink: 'dark',
    seamLengths: false,
    fabricsOnPaper: false,
    cutSizesOnPaper: false,
    singleKeys: true,
    leastSize: 0,
    // Where there are none, there is little to see; the others are for who looks for them.
    folded: [
      ...['no findings', 'repeating', 'catching'],
      ...['paper printer', 'paper marks', 'paper placing', 'paper prints', 'paper copier'],
      ...[
        'line along',
        'line parallel',
        'line turn',
        'point lines',
        'point slide',
        'patch divide',
        'patch merge',
      ],
    ],
    notCaught: [],
    angleStep: USUAL_ANGLE_STEP,
    ends: 'run',
    chain: false,
  };
}

function read(): Settings {
  const known = defaults();
  const values = keptFields(KEY);
  const { folded, notCaught } = values;
  return {
    ...known,
    ...(Object.fromEntries(
      Object.entries(READABLE)
        .filter(([name, readable]) => readable(values[name]))
        .map(([name]) => [name, values[name]]),
    ) as Partial<Settings>),
    folded: Array.isArray(folded) ? folded.filter((name) => typeof name === 'string') : known.folded,
    notCaught: Array.isArray(notCaught) ? notCaught.filter(isSnapKind) : known.notCaught,
  };
}

const isAllowance = (value: unknown): value is number =>
  typeof value === 'number' && checkLength(value, 'in', ALLOWANCE_RANGE).ok;

/** What a least size may be. */
export const LEAST_SIZE_RANGE = { least: 0, most: 2 } as const;

const isLeastSize = (value: unknown): value is number =>
  typeof value === 'number' && checkLength(value, 'in', LEAST_SIZE_RANGE).ok;

const isSnapKind = (value: unknown): value is SnapKind => SNAP_KINDS.some(({ kind }) => kind === value);

/** Degrees that an angle step may be. */
export const ANGLE_STEPS: readonly number[] = [5, 7.5, 10, 15, 22.5, 30, 45];

const isAngleStep = (value: unknown): value is number => ANGLE_STEPS.some((step) => step === value);

const isBoolean = (value: unknown): value is boolean => typeof value === 'boolean';

/** Which values can be taken from what is kept; of lists what can be taken is. */
const READABLE: {
  readonly [K in Exclude<keyof Settings, 'folded' | 'notCaught'>]: (value: unknown) => value is Settings[K];
} = {
  paper: isPaper,
  margins: isMargins,
  overlap: isOverlap,
  gap: isGap,
  keepUpright: isBoolean,
  fillSheets: isBoolean,
  saveSheets: isBoolean,
  allowance: isAllowance,
  shareTemplates: isBoolean,
  ink: isInk,
  seamLengths: isBoolean,
  fabricsOnPaper: isBoolean,
  cutSizesOnPaper: isBoolean,
  singleKeys: isBoolean,
  leastSize: isLeastSize,
  angleStep: isAngleStep,
  ends: (value) => value === 'run' || value === 'held',
  chain: isBoolean,
};

export const useSettings = create<Settings>()(read);

export function setting(change: Partial<Settings>): void {
  useSettings.setState(change);
  keepFields(KEY, change);
}
