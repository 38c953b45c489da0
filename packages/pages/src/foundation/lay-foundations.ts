import { ok, POINTS_PER_INCH, type Result } from '@seamwright/geometry';
import { type CheckedJob, checkJob, type FoundationJob } from '../job.ts';
import type { Mark, OutlineEntry, PackingReport, PagePlan, Print, Sheet } from '../marks/model.ts';
import { type CountedOutline, type LeastSheets, leastSheets, once } from '../packing/least-sheets.ts';
import type { Packable, Placement } from '../packing/placement.ts';
import { type Copy, packRuns, type Wish } from '../packing/print-runs.ts';
import type { Progress } from '../progress.ts';
import { corrected } from '../sheet/correction.ts';
import { regionsFor, type StripPlace, sheetFrame } from '../sheet/sheet-frame.ts';
import { tileSheets } from '../tiles/tiles.ts';
import { type Card, cardMarks, soleSheet, wholeCard } from '../words/cards.ts';
import { readSize } from '../words/read-lengths.ts';
import { foundationsOf } from './foundation.ts';
import { inLightInk } from './light-ink.ts';
import { keyOnSheet, printsOf } from './prints.ts';
import { lettersOf } from './templates.ts';
import { cuttingLineOnSheet } from './turns.ts';
import { type Wanted, wantedFoundations } from './wanted.ts';

/** A foundation on a sheet: the first print of it that stands on the sheets, or one of more that fill them. */
interface Stand {
  /** The foundation's key. */
  readonly of: string;
  /** From 0. */
  readonly number: number;
}

/** A sheet before its number is known. */
interface Draft {
  readonly marks: readonly Mark[];
  readonly stands: readonly Stand[];
  /** How often it is printed. */
  readonly times: number;
  /** For a tile: its name. */
  readonly tile?: string;
  /** Beside the squares when left out. */
  readonly strip?: StripPlace;
}

/**
 * Lays the foundations of a block out on true-size sheets, in all sizes that are asked for: small ones together, ones
 * larger than a sheet in tiles that overlap by 1/2 in, the rest one by one. All is true where a printer prints true, or by the printer
 * that the job names. Each foundation is there once and says how
 * many to print; with {@link FoundationJob.shareTemplates} it may be for several sections. With {@link FoundationJob.fillSheets}
 * it may be there several times.
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
  const inOrder = (p: Stand, q: Stand) => places.get(p.of)! - places.get(q.of)! || p.number - q.number;
  const printedFor = new Map(wanted.map(({ key, template }) => [key, lettersOf(template)]));
  const isShared = (stands: readonly Stand[]) => stands.some(({ of }) => printedFor.get(of)!.length > 1);
  const options = {
    regions,
    gap: value.gap * POINTS_PER_INCH,
    keepUpright: value.keepUpright,
    count: value.fillSheets ? wanted.reduce((sum, { count }) => sum + count, 0) : wanted.length,
  };
  const foundationAt = foundationsOf(value);
  const whole: CountedOutline[] = [];
  const cutUp: CountedOutline[] = [];
  const cards: Wish<Card>[] = [];
  const drafts: Draft[] = [];
  for (const [i, one] of wanted.entries()) {
    const { key, count } = one;
    report?.(i, wanted.length, 'drawing');
    const foundation = foundationAt(one);
    const line = cuttingLineOnSheet(foundation, 'upright');
    const card = wholeCard(value, foundation, options);
    const sole = card ? null : soleSheet(value, foundation, options);
    (card || sole ? whole : cutUp).push({ outline: line, count });
    const alone = { stands: [{ of: key, number: 0 }], times: count };
    if (card) cards.push({ item: card, count });
    else if (sole) drafts.push({ ...sole, ...alone });
    else {
      const tiles = tileSheets(value, foundation, regions);
      if (!tiles.ok) return tiles;
      for (const tile of tiles.value) drafts.push({ marks: tile.marks, ...alone, tile: tile.name });
    }
  }
  const inFile = (counted: readonly CountedOutline[]) => counted.map(({ outline }) => once(outline));
  const least = leastSheets({ whole: inFile(whole), cutUp: inFile(cutUp) }, regions, options.gap / 2);
  const placed = report && ((done: number) => report(done, cards.length, 'packing'));
  const runs = packRuns(cards, {
    regions,
    gap: options.gap,
    atLeast: least.atLeast - drafts.length,
    effort: value.effort,
    fill: value.fillSheets,
    ...(placed && { placed }),
    ...(report && { refined: (share) => report(Math.round(100 * share), 100, 'saving sheets') }),
  });
  for (const { places: stand, times } of runs) {
    const onSheet = [...centredIfAlone(stand, paper)].sort((p, q) => inOrder(standOf(p), standOf(q)));
    drafts.push({
      marks: onSheet.flatMap((placement) => marksOf(value, placement, options)),
      stands: onSheet.map(standOf),
      times,
    });
  }
  drafts.sort((p, q) => inOrder(p.stands[0]!, q.stands[0]!));
  const sheetsOf = sheetsByFoundation(drafts);
  const prints = wanted.map((one) => printOf(value, one, sheetsOf.get(one.key)!));
  const sheets = drafts.map(
    ({ marks, stands, times, strip }, i): Sheet => ({
      sections: stands.map(({ of, number }) => keyOnSheet(of, number)),
      ...(isShared(stands) && { printedFor: stands.map(({ of }) => printedFor.get(of)!) }),
      ...(times > 1 && { times }),
      marks: inInk(value, [
        ...marks,
        ...sheetFrame(value, { page: i + 1, pages: drafts.length, times }, strip),
      ]),
    }),
  );
  const outline = outlineOf(value, wanted, drafts, sheetsOf);
  const packing = value.fillSheets
    ? reportOn('paper', printsOf({ sheets }).sheets, leastSheets({ whole, cutUp }, regions, options.gap / 2))
    : reportOn('file', sheets.length, least);
  const plan: PagePlan = { title: value.title, paper: page, sheets, outline, prints, packing };
  return ok(printer === undefined ? plan : corrected(plan, printer));
}

const reportOn = (
  of: PackingReport['of'],
  sheets: number,
  { atLeast, byArea }: LeastSheets,
): PackingReport => ({
  of,
  sheets,
  atLeast,
  areaShare: byArea / sheets,
});

const standOf = ({ item }: Placement<Copy<Card>>): Stand => ({ of: item.of.key, number: item.number });

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
function sheetsByFoundation(drafts: readonly Draft[]): ReadonlyMap<string, readonly number[]> {
  const sheets = new Map<string, number[]>();
  for (const [i, { stands }] of drafts.entries())
    for (const of of new Set(stands.map((stand) => stand.of))) {
      const known = sheets.get(of);
      if (known === undefined) sheets.set(of, [i]);
      else known.push(i);
    }
  return sheets;
}

const inInk = ({ ink }: CheckedJob, marks: readonly Mark[]): readonly Mark[] =>
  ink === 'light' ? marks.map(inLightInk) : marks;

/** The marks of a card on a sheet, by the key that it has there. */
function marksOf(
  job: CheckedJob,
  { item, way, x, y }: Placement<Copy<Card>>,
  options: Parameters<typeof cardMarks>[2],
): readonly Mark[] {
  const marks = cardMarks(job, { item: item.of, way, x, y }, options);
  const section = keyOnSheet(item.of.key, item.number);
  return item.number === 0 ? marks : marks.map((mark) => ({ ...mark, section }));
}

/** A foundation alone on its sheet stands in the middle; several keep to the sheet's left edge. */
function centredIfAlone<T extends Packable>(
  placements: readonly Placement<T>[],
  paper: CheckedJob['sheet'],
): readonly Placement<T>[] {
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
    return { title: readSize(size.width, size.height, unit), sheet, children };
  });
}
