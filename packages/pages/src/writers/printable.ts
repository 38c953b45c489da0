import type { Mark, PagePlan, Sheet, TextMark } from '../marks/model.ts';
import type { PageFonts } from './fonts.ts';
import { readTypeface, type Typeface } from './truetype.ts';

/** What stands on the page in place of a character that the page's font has no glyph for. */
const MISSING = '?';

export interface Printable {
  readonly plan: PagePlan;
  /** One sentence for each text that could not be set as written; empty when all could. */
  readonly notes: readonly string[];
}

/**
 * The plan with every character that the fonts cannot draw replaced by {@link MISSING}, and notes that say so.
 *
 * Left alone, the PDF writer would drop such characters without a word. The document's title and outline are not
 * set in the page's fonts and stay as written. A plan that is printable comes back as it is.
 */
export function printable(plan: PagePlan, fonts: PageFonts): Printable {
  const faces = { regular: readTypeface(fonts.regular), semibold: readTypeface(fonts.semibold) };
  const notes = new Set<string>();
  // The same few texts stand on every sheet: each is looked at once.
  const looked = { regular: new Map<string, string>(), semibold: new Map<string, string>() };
  const setAs = ({ content, weight }: TextMark): string => {
    const known = looked[weight].get(content);
    if (known !== undefined) return known;
    const { content: set, missing } = withoutMissing(content, faces[weight]);
    for (const character of missing) notes.add(character);
    looked[weight].set(content, set);
    return set;
  };
  const replace = (mark: Mark): Mark => {
    if (mark.kind !== 'text') return mark;
    const content = setAs(mark);
    return content === mark.content ? mark : { ...mark, content };
  };
  const sheets = plan.sheets.map((sheet): Sheet => ({ ...sheet, marks: sheet.marks.map(replace) }));
  if (notes.size === 0) return { plan, notes: [] };
  const characters = [...notes].join(' ');
  return {
    plan: { ...plan, sheets },
    notes: [
      `The pages’ font has no ${characters}: ${MISSING} is printed instead. The name in the document’s title and outline is whole.`,
    ],
  };
}

/** Whole characters, not UTF-16 halves: one outside the basic plane becomes one question mark, not two. */
function withoutMissing(text: string, face: Typeface): { content: string; missing: readonly string[] } {
  const missing: string[] = [];
  const content = [...text]
    .map((character) => {
      if (character.length === 1 && face.has(character.charCodeAt(0))) return character;
      missing.push(character);
      return MISSING;
    })
    .join('');
  return { content, missing };
}
