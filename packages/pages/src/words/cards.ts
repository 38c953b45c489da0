import {
  add,
  type Box,
  contains,
  edgesOf,
  type Point,
  type Polygon,
  transformPolygon,
  translation,
} from '@seamwright/geometry';
import type { Foundation } from '../foundation/foundation.ts';
import { type DrawnFoundation, foundationMarks } from '../foundation/foundation-marks.ts';
import { labelledFoundation } from '../foundation/labelled.ts';
import {
  CUT_WORD_ROOM,
  cuttingLineOnSheet,
  otherTurns,
  sizeOnSheet,
  type Turn,
} from '../foundation/turns.ts';
import type { CheckedJob } from '../job.ts';
import { cornersOf } from '../labels/plate.ts';
import { moved } from '../marks/marks.ts';
import type { Mark } from '../marks/model.ts';
import { grownArea } from '../packing/least-sheets.ts';
import { type Packable, type Placement, type Way, wayOver } from '../packing/placement.ts';
import {
  besideRegion,
  closePlaces,
  type Regions,
  type SolePlace,
  type StripPlace,
} from '../sheet/sheet-frame.ts';
import { type Caption, captionsOf } from './caption.ts';
import { captionStand } from './caption-stand.ts';
import { wordMarks } from './line-words.ts';

/**
 * A foundation with its caption, lying in one way. What is drawn is made anew for the one way that is printed: kept for all of them, it
 * would fill the memory, and moving it about there takes longer than making it.
 */
export interface CardWay extends Way {
  readonly turn: Turn;
  /** Whether all that is drawn stands within the cutting line, and nothing more is said than what is always said. */
  readonly bare: boolean;
  readonly caption: Caption;
  /** Where the caption's corner comes to lie, and by how much what is drawn is moved. */
  readonly captionAt: Point<'page'>;
  readonly linesAt: Point<'page'>;
}

/** A foundation with its caption, ready to be put on a sheet in one of several ways. */
export interface Card extends Packable<CardWay> {
  readonly key: string;
  readonly foundation: Foundation;
}

/** Points. In narrower captions every fact would break on two lines. */
const NARROWEST_CAPTION = 132;

/** Points. A brief caption, without names, is still read at this width. */
const NARROWEST_BRIEF_CAPTION = 84;

/** Points. Where a caption has more to say, lines of a word or two would be hard to read. */
const TALLEST_NARROW = 46;

/** Points beyond a foundation, all round, in which labels may stand that find no place over it. */
const SPARE = 80;

/** With so many foundations in one job each says only what the foot of the sheet does not say for all. */
const MANY = 20;

/** What the cards of one job have in common. */
export interface CardOptions {
  readonly regions: Regions;
  /** Points between foundations. */
  readonly gap: number;
  readonly keepUpright: boolean;
  /** How many foundations the job has, each as often as it may stand on the sheets. */
  readonly count: number;
}

/** The foundation's card where it fits on a sheet in one piece in any way; null when it does not. */
export function wholeCard(job: CheckedJob, foundation: Foundation, options: CardOptions): Card | null {
  const { regions, keepUpright, gap } = options;
  const captionOf = captionsOf(job, foundation);
  const upright = wayOf(foundation, captionOf, 'upright', options);
  // Turned only where that saves paper: upright ones are easier to compare with the block.
  const turns = keepUpright ? [] : otherTurns(foundation, upright.bare);
  const ways = [upright, ...turns.map((turn) => wayOf(foundation, captionOf, turn, options))].filter((way) =>
    [regions.wide, regions.tall].some((region) => fits(way, region)),
  );
  if (ways.length === 0) return null;
  const captions = ways.map(({ caption }) => caption.width * caption.height);
  const grown = grownArea(cuttingLineOnSheet(foundation, 'upright'), gap / 2) + Math.min(...captions);
  return { key: foundation.key, foundation, ways, grown };
}

function wayOf(
  foundation: Foundation,
  captionOf: ReturnType<typeof captionsOf>,
  turn: Turn,
  { count }: Pick<CardOptions, 'count'>,
): CardWay {
  const brief = count >= MANY;
  const { cuttingLine, pieces, notes } = labelledFoundation(foundation, turn, SPARE, []);
  const narrowest = brief ? NARROWEST_BRIEF_CAPTION : NARROWEST_CAPTION;
  const { width: across } = sizeOnSheet(foundation, turn);
  const widths = new Set([Math.max(across, NARROWEST_CAPTION), Math.max(across, narrowest), narrowest]);
  const captions = [...widths]
    .map((width) => captionOf(turn, width, { found: notes, brief }))
    .filter(({ height }, i) => i === 0 || height <= TALLEST_NARROW);
  // Labels that found no place over the foundation.
  const beyond = [...pieces.loose.flatMap((plate) => edgesOf(cornersOf(plate))), ...pieces.leaders]
    .filter(({ a }) => contains(cuttingLine, a) === 'outside')
    .map(({ a, b }) => [a, b]);
  const drawn = [cuttingLine, ...beyond];
  const { caption, captionAt, linesAt, size } = captionStand(drawn, captions, CUT_WORD_ROOM);
  const outlines = [
    ...drawn.map((outline) => moveTo(outline, linesAt)),
    moveTo(boxAround(caption), captionAt),
  ];
  const bare = beyond.length === 0 && notes.length === 0;
  return { ...wayOver(outlines, size, turn === 'upright'), turn, bare, caption, captionAt, linesAt };
}

/** The marks of a card where it stands on the sheet. */
export function cardMarks(
  job: CheckedJob,
  placement: Placement<Card>,
  { regions, gap }: Pick<CardOptions, 'regions' | 'gap'>,
): readonly Mark[] {
  const { item, way, x, y } = placement;
  const lines = add<'page'>({ x, y }, way.linesAt);
  const { wide, tall } = regions;
  const region = overhang(wide, placement) <= overhang(tall, placement) ? wide : tall;
  const drawn = foundationMarks(item.foundation, way.turn, SPARE);
  // Words beside the cutting line stand in the foundation's own half of the gap.
  const { minX, minY, maxX, maxY } = drawn.extent;
  const room = {
    minX: Math.max(minX - gap / 2, region.minX - lines.x),
    minY: Math.max(minY - gap / 2, region.minY - lines.y),
    maxX: Math.min(maxX + gap / 2, region.maxX - lines.x),
    maxY: Math.min(maxY + gap / 2, region.maxY - lines.y),
  };
  const captionAt = add<'page'>({ x, y }, way.captionAt);
  return [
    ...way.caption.draw().map((mark) => moved(mark, captionAt)),
    ...[...drawn.marks, ...wordsOf(job, item.foundation, drawn, room)].map((mark) => moved(mark, lines)),
  ];
}

/** All that stands on a sheet for one foundation alone, but for the check squares and the strip. */
export interface SoleSheet {
  readonly marks: readonly Mark[];
  readonly strip: StripPlace;
}

/**
 * A foundation that fits on a sheet only by itself, its caption not beside it but in the corner that it leaves: below it, to
 * the right of the check squares, or to the left of it, above them. Where that is not room enough it stands close to the squares, and
 * the strip gives way. null when it fits in no way.
 */
export function soleSheet(
  job: CheckedJob,
  foundation: Foundation,
  { regions, keepUpright }: Pick<CardOptions, 'regions' | 'keepUpright'>,
): SoleSheet | null {
  const usual = [regions.wide, regions.tall].map(
    (region): SolePlace => ({
      region,
      caption: besideRegion(region, regions),
      strip: 'beside the squares',
    }),
  );
  for (const [places, above] of [[usual, CUT_WORD_ROOM] as const, [closePlaces(job), 0] as const])
    for (const turn of keepUpright ? (['upright'] as const) : (['upright', 'turned'] as const))
      for (const place of places) {
        const marks = soleMarks(job, foundation, turn, place, above);
        if (marks !== null) return { marks, strip: place.strip };
      }
  return null;
}

/** null where it does not fit there. @param least points above the cutting line; more are taken where there are, for the word `cut` */
function soleMarks(
  job: CheckedJob,
  foundation: Foundation,
  turn: Turn,
  { region, caption: corner }: SolePlace,
  least: number,
): readonly Mark[] | null {
  const { width, height } = sizeOnSheet(foundation, turn);
  if (!fits({ width, height: height + least }, region)) return null;
  const above = Math.max(least, Math.min(CUT_WORD_ROOM, (region.maxY - region.minY - height) / 2));
  const drawn = foundationMarks(foundation, turn);
  // Labels that stand above the cutting line.
  if (drawn.extent.minY < -above) return null;
  const left = (region.minX + region.maxX - width) / 2;
  const caption = captionsOf(job, foundation)(turn, corner.maxX - corner.minX, { found: drawn.notes });
  if (!fits(caption, corner)) return null;
  // Where there is no room above it, the word may stand at its sides, on the region.
  const aside = above < CUT_WORD_ROOM ? left - region.minX : 0;
  const room = { minX: -aside, minY: -above, maxX: width + aside, maxY: height };
  const words = wordsOf(job, foundation, drawn, room);
  return [
    ...caption.draw().map((mark) => moved(mark, { x: corner.minX, y: corner.minY })),
    ...[...drawn.marks, ...words].map((mark) => moved(mark, { x: left, y: region.minY + above })),
  ];
}

/** The words beside a foundation's lines. */
const wordsOf = (job: CheckedJob, foundation: Foundation, drawn: DrawnFoundation, room: Box<'page'>) =>
  wordMarks(foundation, drawn, room, job.seamLengths ? job.unit : null);

const fits = (card: { width: number; height: number }, region: Box<'page'>): boolean =>
  card.width <= region.maxX - region.minX && card.height <= region.maxY - region.minY;

/** How far a card in that place would stick out of the box, points; 0, or what rounding makes of it, where it lies in it. */
const overhang = (box: Box<'page'>, { way, x, y }: Placement<Card>): number =>
  Math.max(box.minX - x, box.minY - y, x + way.width - box.maxX, y + way.height - box.maxY);

const moveTo = (polygon: Polygon<'page'>, { x, y }: Point<'page'>): Polygon<'page'> =>
  transformPolygon(translation<'page', 'page'>(x, y), polygon);

const boxAround = ({ width, height }: Caption): Polygon<'page'> => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];
