import { type Finding, plainWords, type Repair } from '@seamwright/arrangement';
import {
  boundingBox,
  distance,
  formatInches,
  formatLength,
  type LengthUnit,
  type Segment,
} from '@seamwright/geometry';
import { type Join, pieceNames, type Section, type SewingPlan } from '@seamwright/sewing';
import { oneLine } from './complaint.ts';
import type { Drawn } from './drawings.ts';

/** What there is to say of a block, in a quilter's words; ends with a line break. */
export function reportText(drawn: Drawn, unit: LengthUnit): string {
  const { name, plan, arrangement } = drawn;
  const lines = [
    `${name}, ${sizeText(drawn, unit)}, ${counted(arrangement.patches.length, 'patch', 'patches')}: ${verdictText(plan)}.`,
    ...plan.sections.map((section) => sectionText(section, drawn)),
    ...unheldText(drawn),
    ...plan.joins.map((_, index) => joinText(plan.joins, index, unit)),
    ...findingLines(drawn, unit),
  ];
  return `${lines.map(oneLine).join('\n  ')}\n`;
}

/** What the maker should know or mend, of the file, the drawing and its seams. */
export const findingLines = ({ findings, arrangement, plan }: Drawn, unit: LengthUnit): string[] =>
  [...findings, ...arrangement.findings, ...plan.findings].flatMap((finding) => findingText(finding, unit));

/** "sews on 2 foundations, and no fewer will do" */
export function verdictText({ verdict, sections, provenLeast, atLeast }: SewingPlan): string {
  const foundations = counted(sections.length, 'foundation', 'foundations');
  const fewer = provenLeast ? 'and no fewer will do' : `but fewer may do, from ${atLeast} up`;
  switch (verdict) {
    case 'one foundation':
      return 'sews on one foundation';
    case 'several foundations':
      return `sews on ${foundations}, ${fewer}`;
    case 'partial seams':
      return `sews with partial seams only, on ${foundations}, ${fewer}`;
    case 'not sewable':
      return 'cannot be sewn with straight seams';
  }
}

export const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

function sizeText({ arrangement }: Drawn, unit: LengthUnit): string {
  const { minX, minY, maxX, maxY } = boundingBox(arrangement.outline);
  const [width, height] = [maxX - minX, maxY - minY];
  return unit === 'in'
    ? `${formatInches(width)} × ${formatInches(height)} in`
    : `${formatLength(width, unit)} × ${formatLength(height, unit)}`;
}

const sectionText = ({ letter, order }: Section, drawn: Drawn): string =>
  `Foundation ${letter}, in this order: ${piecesText(order, drawn)}`;

function unheldText(drawn: Drawn): string[] {
  const { unheld } = drawn.plan;
  return unheld.length === 0 ? [] : [`On no foundation: ${piecesText(unheld, drawn)}`];
}

/** "A1 (sail), A2 (sea)": the notes are the maker's own. */
function piecesText(patches: readonly number[], { plan, records }: Drawn): string {
  const names = pieceNames(plan);
  return patches
    .map((patch) => {
      const note = records[patch]?.note ?? '';
      return note === '' ? names.get(patch)! : `${names.get(patch)} (${note})`;
    })
    .join(', ');
}

/** What is sewn at one join, and what earlier ones left open that is closed then. */
function joinText(joins: readonly Join[], index: number, unit: LengthUnit): string {
  const { units, seam, open } = joins[index]!;
  const length = ({ a, b }: Segment) => formatLength(distance(a, b), unit);
  const sewn = open === undefined ? seam : { a: seam.a, b: open.seam.a };
  const along = open === undefined ? `a seam of ${length(seam)}` : `${length(sewn)} of a partial seam`;
  const left = open === undefined ? '' : `; leave the other ${length(open.seam)} open`;
  const closed = joins.flatMap((other) =>
    other.open?.closedAfter === index
      ? [`; then close the ${length(other.open.seam)} that ${other.units.join(' and ')} left open`]
      : [],
  );
  return `Join ${units[0]} to ${units[1]} along ${along}${left}${closed.join('')}`;
}

const findingText = ({ severity, message, repairs }: Finding, unit: LengthUnit): string[] => [
  `${severity === 'error' ? 'To mend' : 'To know'}: ${plainWords(message, unit)}`,
  ...repairs.map((repair: Repair) => `One way: ${plainWords(repair.message, unit)}`),
];
