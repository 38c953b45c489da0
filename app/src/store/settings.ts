import { ALLOWANCE_RANGE, checkLength } from '@seamwright/geometry';
import { USUAL_ALLOWANCE } from '@seamwright/pages';
import { create } from 'zustand';

/** The maker's habits, kept between visits; no part of any pattern. */
export interface Settings {
  readonly paper: 'letter' | 'a4';
  /** Seam allowance, inches. */
  readonly allowance: number;
  /** Sections that are turned copies of one another are printed on one foundation. */
  readonly shareTemplates: boolean;
  /** Keys without Ctrl or Alt do something; off for those who dictate or whose keys slip (WCAG 2.2, 2.1.4). */
  readonly singleKeys: boolean;
  /** Inches: patches that come out smaller on paper are worth a caution. 0: none is. */
  readonly leastSize: number;
  /** Parts of panels that are folded up, by their names. */
  readonly folded: readonly string[];
}

const KEY = 'seamwright settings';

/** Where paper is sold in Letter size, by the region of the browser's language (CLDR, from memory). */
const LETTER_REGIONS = ['US', 'CA', 'MX', 'CL', 'CO', 'CR', 'GT', 'NI', 'PA', 'PH', 'PR', 'SV', 'VE'];

function defaults(): Settings {
  const region = new Intl.Locale(navigator.language).maximize().region ?? '';
  return {
    paper: LETTER_REGIONS.includes(region) ? 'letter' : 'a4',
    allowance: USUAL_ALLOWANCE,
    shareTemplates: true,
    singleKeys: true,
    leastSize: 0,
    // Where there are none, there is little to see.
    folded: ['no findings'],
  };
}

function read(): Settings {
  const known = defaults();
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return known;
    const { paper, allowance, shareTemplates, singleKeys, leastSize, folded } = kept as Record<
      string,
      unknown
    >;
    return {
      paper: paper === 'letter' || paper === 'a4' ? paper : known.paper,
      allowance: isAllowance(allowance) ? allowance : known.allowance,
      shareTemplates: typeof shareTemplates === 'boolean' ? shareTemplates : known.shareTemplates,
      singleKeys: typeof singleKeys === 'boolean' ? singleKeys : known.singleKeys,
      leastSize: isLeastSize(leastSize) ? leastSize : known.leastSize,
      folded: Array.isArray(folded) ? folded.filter((name) => typeof name === 'string') : known.folded,
    };
  } catch {
    // Storage switched off, or something else's text under our name: the defaults serve.
    return known;
  }
}

const isAllowance = (value: unknown): value is number =>
  typeof value === 'number' && checkLength(value, 'in', ALLOWANCE_RANGE).ok;

/** What a least size may be. */
export const LEAST_SIZE_RANGE = { least: 0, most: 2 } as const;

const isLeastSize = (value: unknown): value is number =>
  typeof value === 'number' && checkLength(value, 'in', LEAST_SIZE_RANGE).ok;

export const useSettings = create<Settings>()(read);

export function setting(change: Partial<Settings>): void {
  useSettings.setState(change);
  try {
    localStorage.setItem(KEY, JSON.stringify(useSettings.getState()));
  } catch {
    // Not kept then; it holds for this visit.
  }
}
