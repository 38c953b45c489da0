import { formatSize, ok, POINTS_PER_INCH, type Polygon, type Result } from '@seamwright/geometry';
import { type CheckedJob, checkJob, type FoundationJob } from '../job.ts';
import type { Mark, OutlineEntry, PagePlan, Print, Sheet } from '../marks/model.ts';
import { leastSheets } from '../packing/least-sheets.ts';
import { packSheets } from '../packing/pack.ts';
import type { Placement } from '../packing/placement.ts';
import type { Progress } from '../progress.ts';
import { corrected } from '../sheet/correction.ts';
import { regionsFor, sheetFrame } from '../sheet/sheet-frame.ts';
import { tileSheets } from '../tiles/tiles.ts';
import { type Card, cardMarks, soleMarks, wholeCard } from '../words/cards.ts';
import { foundationsOf } from './foundation.ts';
import { cuttingLineOnSheet } from './foundation-marks.ts';
import { inLightInk } from './light-ink.ts';
import { timesOf } from './prints.ts';
import { lettersOf } from './templates.ts';
import { type Wanted, wantedFoundations } from './wanted.ts';

/** A sheet before its number is known. */
interface Draft {
  readonly marks: readonly Mark[];
  /** Keys of the foundations on it. */
  readonly sections: readonly string[];
  /** For a tile: its name. */
  readonly tile?: string;
}

/**
 * Lays the foundations of a block out on true-size sheets, in all sizes that are asked for: small ones together, ones
 * larger than a sheet in tiles that overlap by 1/2 in, the rest one by one. All is true where a printer prints true, or by the printer
 * that the job names. Each foundation is there once and says how
 * many to print; with {@link FoundationJob.shareTemplates} it may be for several sections.
 *
 * Sheets come in the order of their first foundation: size by size, then by letter. The same job gives the same plan.
 *
 * `packing` tells how many sheets there must be at least. Long jobs say through `report` how far they are.
 *
 * A Problem when the copies, scale, allowance or finished size are out of bounds, the paper is unknown or has too
 * little room, the printer is too far off, or the block cannot be sewn.
 */
export function layFoundations(job: FoundationJob, report?: Progress): Result<PagePlan> {
  const checked = checkJob(job);
  if (!checked.ok) return checked;
  const { value } = checked;
  const { page, sheet: paper, printer } = value;
  const regions = regionsFor(value);
  const wanted = wantedFoundations(value);
  const places = new Map(wanted.map(({ key }, i) => [key, i]));
  const byKey = (p: string, q: string) => places.get(p)! - places.get(q)!;
  const printedFor = new Map(wanted.map(({ key, template }) => [key, lettersOf(template)]));
  const isShared = (on: readonly string[]) => on.some((key) => printedFor.get(key)!.length > 1);
  const options = {
    regions,
    gap: value.gap * POINTS_PER_INCH,
    keepUpright: value.keepUpright,
    count: wanted.length,
  };
  const foundationAt = foundationsOf(value);
  const whole: Polygon<'page'>[] = [];
  const cutUp: Polygon<'page'>[] = [];
  const cards: Card[] = [];
  const drafts: Draft[] = [];
  for (const [i, one] of wanted.entries()) {
    const { key } = one;
    report?.(i, wanted.length, 'drawing');
    const foundation = foundationAt(one);
    const line = cuttingLineOnSheet(foundation, 'upright');
    const card = wholeCard(value, foundation, options);
    const marks = card ? null : soleMarks(value, foundation, options);
    (card || marks ? whole : cutUp).push(line);
    if (card) cards.push(card);
    else if (marks) drafts.push({ marks, sections: [key] });
    else {
      const tiles = tileSheets(value, foundation, regions);
      if (!tiles.ok) return tiles;
      for (const tile of tiles.value) drafts.push({ marks: tile.marks, sections: [key], tile: tile.name });
    }
  }
  const least = leastSheets({ whole, cutUp }, regions, options.gap / 2);
  const placed = report && ((done: number) => report(done, cards.length, 'packing'));
  const packed = packSheets(cards, {
    regions,
    gap: options.gap,
    atLeast: least.atLeast - drafts.length,
    effort: value.effort,
    ...(placed && { placed }),
    ...(report && { refined: (share) => report(Math.round(100 * share), 100, 'saving sheets') }),
  });
  for (const placements of packed) {
    const inOrder = [...centredIfAlone(placements, paper)].sort((p, q) => byKey(p.item.key, q.item.key));
    drafts.push({
      marks: inOrder.flatMap((placement) => cardMarks(value, placement, options)),
      sections: inOrder.map(({ item }) => item.key),
    });
  }
  drafts.sort((p, q) => byKey(p.sections[0]!, q.sections[0]!));
  const sheetsOf = sheetsByKey(drafts);
  const prints = wanted.map((one) => printOf(value, one, sheetsOf.get(one.key)!));
  const times = timesOf(drafts, prints);
  const sheets = drafts.map(
    ({ marks, sections }, i): Sheet => ({
      sections,
      ...(isShared(sections) && { printedFor: sections.map((key) => printedFor.get(key)!) }),
      marks: inInk(value, [
        ...marks,
        ...sheetFrame(value, { page: i + 1, pages: drafts.length, times: times[i]! }),
      ]),
    }),
  );
  const outline = outlineOf(value, wanted, drafts, sheetsOf);
  const packing = {
    sheets: sheets.length,
    atLeast: least.atLeast,
    areaShare: least.byArea / sheets.length,
  };
  const plan: PagePlan = { title: value.title, paper: page, sheets, outline, prints, packing };
  return ok(printer === undefined ? plan : corrected(plan, printer));
}

const printOf = (
  { title }: CheckedJob,
  { key, template, size: { width, height }, count }: Wanted,
  sheets: readonly number[],
): Print => ({
  key,
  block: title,
  letters: lettersOf(template),
  size: { width, height },
  mirrored: template.mirroredBlock,
  count,
  sheets,
});

/** The indices of the sheets on which each foundation stands. */
function sheetsByKey(drafts: readonly Draft[]): ReadonlyMap<string, readonly number[]> {
  const sheets = new Map<string, number[]>();
  for (const [i, { sections }] of drafts.entries())
    for (const key of sections) {
      const known = sheets.get(key);
      if (known === undefined) sheets.set(key, [i]);
      else known.push(i);
    }
  return sheets;
}

const inInk = ({ ink }: CheckedJob, marks: readonly Mark[]): readonly Mark[] =>
  ink === 'light' ? marks.map(inLightInk) : marks;

/** A foundation alone on its sheet stands in the middle; several keep to the sheet's left edge. */
function centredIfAlone(
  placements: readonly Placement<Card>[],
  paper: CheckedJob['sheet'],
): readonly Placement<Card>[] {
  const [only, ...others] = placements;
  if (only === undefined || others.length > 0) return placements;
  return [{ ...only, x: Math.max(only.x, (paper.width - only.way.width) / 2) }];
}

/** An entry for each foundation, with one for each of its tiles; below one for each size, where there are several. */
function outlineOf(
  { sizes, unit }: CheckedJob,
  wanted: readonly Wanted[],
  drafts: readonly Draft[],
  sheetsOf: ReadonlyMap<string, readonly number[]>,
): readonly OutlineEntry[] {
  const entryOf = ({ key, template }: Wanted): OutlineEntry => ({
    title: `Foundation ${lettersOf(template).join(', ')}${template.mirroredBlock ? ', mirrored block' : ''}`,
    sheet: sheetsOf.get(key)![0]!,
    children: sheetsOf.get(key)!.flatMap((sheet) => {
      const { tile } = drafts[sheet]!;
      return tile === undefined ? [] : [{ title: tile, sheet, children: [] }];
    }),
  });
  if (sizes.length === 1) return wanted.map(entryOf);
  return sizes.map((size) => {
    const children = wanted.filter((one) => one.size === size).map(entryOf);
    const sheet = Math.min(...children.map((entry) => entry.sheet));
    return { title: formatSize(size.width, size.height, unit), sheet, children };
  });
}
