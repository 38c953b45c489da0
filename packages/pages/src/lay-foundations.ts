import { ok, type Result } from '@seamwright/geometry';
import { type Card, soleMarks, wholeCard } from './cards.ts';
import { foundationOf } from './foundation.ts';
import { checkJob, type FoundationJob } from './job.ts';
import { moved } from './marks.ts';
import type { Mark, OutlineEntry, PagePlan, Sheet } from './model.ts';
import { type Placement, packSheets } from './pack.ts';
import { PAPERS, type Paper } from './paper.ts';
import { regionsOf, sheetFrame } from './sheet-frame.ts';
import { alone, lettersOf, sharedTemplates } from './templates.ts';
import { tileSheets } from './tiles.ts';

/** A sheet before its number is known. */
interface Draft {
  readonly marks: readonly Mark[];
  readonly sections: readonly string[];
  /** For a tile: its name. */
  readonly tile?: string;
}

/**
 * Lays the foundations of a block out on true-size sheets: small ones together, ones larger than a sheet in tiles
 * that overlap by 1/2 in, the rest one by one. Each foundation is there once and says how many to print; with
 * {@link FoundationJob.shareTemplates} it may be for several sections.
 *
 * Sheets come in the order of their first section's letter. The same job gives the same plan.
 *
 * A Problem when the copies, scale, allowance or finished size are out of bounds, the paper is unknown, or the
 * block cannot be sewn.
 */
export function layFoundations(job: FoundationJob): Result<PagePlan> {
  const checked = checkJob(job);
  if (!checked.ok) return checked;
  const { value } = checked;
  const paper = PAPERS[value.paper];
  const regions = regionsOf(paper);
  const { sections } = value.plan;
  const templates = value.shareTemplates ? sharedTemplates(value.plan) : sections.map(alone);
  const letters = templates.map(({ section }) => section.letter);
  const byLetter = (p: string, q: string) => letters.indexOf(p) - letters.indexOf(q);
  const printedFor = new Map(templates.map((template) => [template.section.letter, lettersOf(template)]));
  const isShared = (on: readonly string[]) => on.some((letter) => printedFor.get(letter)!.length > 1);
  const cards: Card[] = [];
  const drafts: Draft[] = [];
  for (const template of templates) {
    const { letter } = template.section;
    const foundation = foundationOf(value, template);
    const card = wholeCard(value, foundation, regions);
    if (card) {
      cards.push(card);
      continue;
    }
    const marks = soleMarks(value, foundation, regions);
    if (marks) drafts.push({ marks, sections: [letter] });
    else
      for (const tile of tileSheets(value, foundation, regions))
        drafts.push({ marks: tile.marks, sections: [letter], tile: tile.name });
  }
  for (const placements of packSheets(cards, regions)) {
    const inOrder = [...centredIfAlone(placements, paper)].sort((p, q) =>
      byLetter(p.item.letter, q.item.letter),
    );
    drafts.push({
      marks: inOrder.flatMap(({ item, x, y }) => item.marks.map((mark) => moved(mark, { x, y }))),
      sections: inOrder.map(({ item }) => item.letter),
    });
  }
  drafts.sort((p, q) => byLetter(p.sections[0]!, q.sections[0]!));
  const sheets = drafts.map(
    ({ marks, sections }, i): Sheet => ({
      sections,
      ...(isShared(sections) && { printedFor: sections.map((letter) => printedFor.get(letter)!) }),
      marks: [...marks, ...sheetFrame(value, paper, i + 1, drafts.length)],
    }),
  );
  return ok({ title: value.title, paper: value.paper, sheets, outline: outlineOf(printedFor, drafts) });
}

/** A foundation alone on its sheet stands in the middle; several keep to the sheet's left edge. */
function centredIfAlone(placements: readonly Placement<Card>[], paper: Paper): readonly Placement<Card>[] {
  const [only, ...others] = placements;
  if (only === undefined || others.length > 0) return placements;
  return [{ ...only, x: Math.max(only.x, (paper.width - only.item.width) / 2) }];
}

/** One entry for each foundation, with one for each of its tiles. */
function outlineOf(
  printedFor: ReadonlyMap<string, readonly string[]>,
  drafts: readonly Draft[],
): readonly OutlineEntry[] {
  return [...printedFor].map(([letter, all]) => {
    const sheet = drafts.findIndex(({ sections }) => sections.includes(letter));
    const children = drafts.flatMap(({ tile, sections }, i) =>
      tile !== undefined && sections.includes(letter) ? [{ title: tile, sheet: i, children: [] }] : [],
    );
    return { title: `Foundation ${all.join(', ')}`, sheet, children };
  });
}
