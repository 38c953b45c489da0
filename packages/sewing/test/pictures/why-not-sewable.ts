import {
  type Arrangement,
  arrange,
  type Drawing,
  drawingFromSegments,
  type Finding,
} from '@seamwright/arrangement';
import { distance, midpoint, type Point, type Segment } from '@seamwright/geometry';
import { planSewing, repairsFor, type SewingPlan } from '../../src/index.ts';
import { type Frame, pictureOf } from './svg.ts';

/** The pictures of docs/why-not-sewable.md by their file names, drawn from what the solver says of each block. */
export const pictures = (): ReadonlyMap<string, string> =>
  new Map([
    ['why-peeling', peeling()],
    ['why-one-line', oneLine()],
    ['why-four-squares', fourSquares()],
    ['why-windmill', windmill()],
    ['why-windmill-mended', windmillMended()],
    ['why-partial-seam', partialSeam()],
    ['why-corner', corner()],
  ]);

const SQUARE: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 6, y: 0 },
  { x: 6, y: 6 },
  { x: 0, y: 6 },
];

interface Solved {
  readonly drawing: Drawing;
  readonly block: Arrangement;
  readonly plan: SewingPlan;
}

type Stroke = readonly [number, number, number, number];

function solved(lines: readonly Stroke[]): Solved {
  return solvedDrawing(
    drawingFromSegments(
      SQUARE,
      lines.map(([x1, y1, x2, y2]) => ({ a: { x: x1, y: y1 }, b: { x: x2, y: y2 } })),
    ),
  );
}

function solvedDrawing(drawing: Drawing): Solved {
  const result = arrange(drawing);
  if (!result.ok) throw new Error(result.problem.what);
  return { drawing, block: result.value, plan: planSewing(result.value) };
}

const namesOf = ({ plan }: Solved): ReadonlyMap<number, string> =>
  new Map(
    plan.sections.flatMap(({ letter, order }) => order.map((p, i) => [p, `${letter}${i + 1}`] as const)),
  );

const sectionsOf = ({ plan }: Solved): ReadonlyMap<number, number> =>
  new Map(plan.sections.flatMap(({ order }, section) => order.map((p) => [p, section] as const)));

/** The stretches of seam between a patch and some others. */
function contact({ edges, vertices }: Arrangement, patch: number, others: ReadonlySet<number>): Segment[] {
  return edges
    .filter(
      ({ left, right }) => (left === patch && others.has(right)) || (right === patch && others.has(left)),
    )
    .map(({ from, to }) => ({ a: vertices[from]!.at, b: vertices[to]!.at }));
}

/** A small log cabin: the last patch comes off along one line, then the one before it, until the first is left. */
function peeling(): string {
  const block = solved(
    [
      [2, 2, 2, 4],
      [2, 2, 4, 2],
      [4, 0, 4, 4],
      [0, 4, 6, 4],
      [2, 0, 2, 2],
    ].map(([a, b, c, d]) => [a!, b!, c!, d!] as const),
  );
  const { order, sewLines } = block.plan.sections[0]!;
  const names = namesOf(block);
  const steps = [order.length, order.length - 1, order.length - 2, 2].filter(
    (n, i, all) => all.indexOf(n) === i,
  );
  const frames = steps.map((left): Frame => {
    const gone = new Set(order.slice(left));
    const last = order[left - 1]!;
    return {
      block: block.block,
      names: new Map([...names].filter(([p]) => !gone.has(p))),
      gone,
      sewn: [sewLines[left - 2]!],
      caption: [
        `${names.get(last)} comes off`,
        left === 2 ? `and ${names.get(order[0]!)} is left` : 'along one line',
      ],
    };
  });
  return pictureOf(
    'Peeling a block that sews on one foundation',
    'Four steps. In each, the last patch is taken off along one straight line, until only the first patch is left. Read backwards, this is the piecing order.',
    frames,
  );
}

/** A patch that meets the others on one line, and one that meets them on two. */
function oneLine(): string {
  const good = solved([
    [0, 4, 6, 4],
    [2, 0, 2, 4],
  ]);
  const bad = solved([
    [3, 0, 3, 6],
    [0, 3, 6, 3],
  ]);
  const below = patchAt(good.block, { x: 3, y: 5 });
  const quarter = patchAt(bad.block, { x: 4.5, y: 4.5 });
  const others = (block: Arrangement, patch: number) =>
    new Set(block.patches.map(({ index }) => index).filter((p) => p !== patch));
  const seams = contact(bad.block, quarter, others(bad.block, quarter));
  return pictureOf(
    'Contact on one line, and on two',
    'Left: the lower patch meets the others along one straight line, so it can be the last one sewn. Right: the lower right quarter meets the others on two lines, so a seam would have to turn a corner.',
    [
      {
        block: good.block,
        sewn: contact(good.block, below, others(good.block, below)),
        caption: ['Can be last: it meets', 'the others on one line'],
      },
      {
        block: bad.block,
        sewn: seams,
        corners: [corner4(seams)],
        caption: ['Cannot: its seam would', 'have to turn a corner'],
      },
    ],
  );
}

/** Where two stretches meet. */
function corner4([first, second]: readonly Segment[]): Point {
  const ends = [first!.a, first!.b];
  return ends.find((p) => distance(p, second!.a) === 0 || distance(p, second!.b) === 0)!;
}

function fourSquares(): string {
  const four = solved([
    [3, 0, 3, 6],
    [0, 3, 6, 3],
  ]);
  const { plan, block } = four;
  const names = namesOf(four);
  const join = plan.joins[0]!;
  const halves = plan.sections.map(({ letter, order, sewLines }): Frame => {
    const gone = new Set(block.patches.map(({ index }) => index).filter((p) => !order.includes(p)));
    return {
      block,
      gone,
      names: new Map([...names].filter(([p]) => !gone.has(p))),
      sections: sectionsOf(four),
      sewn: sewLines,
      caption: [`Foundation ${letter}:`, 'one seam'],
    };
  });
  return pictureOf(
    'Four squares round a point',
    'No square can be the last one: each meets the others on two lines. Two squares on one foundation, two on another, and then one straight seam joins the halves.',
    [
      {
        block,
        corners: [midpoint(join.seam.a, join.seam.b)],
        caption: ['On one foundation, none', 'of the four can be last'],
      },
      ...halves,
      {
        block,
        names,
        sections: sectionsOf(four),
        sewn: [join.seam],
        caption: [`Then ${join.units[0]} and ${join.units[1]} are joined`, 'by one straight seam'],
      },
    ],
  );
}

const RING: readonly Stroke[] = [
  [2, 0, 2, 4],
  [0, 4, 4, 4],
  [4, 2, 4, 6],
  [2, 2, 6, 2],
];

function interlocked({ plan }: Solved): Finding {
  const finding = plan.findings.find(({ kind }) => kind === 'interlocked');
  if (finding === undefined) throw new Error('the block can be sewn');
  return finding;
}

function windmill(): string {
  const block = solved(RING);
  const three = solved([
    [0, 3 + 13 / 55, 4.2, 4],
    [5.2, 6, 3.2, 2],
    [4.7, 0, 2, 3.6],
  ]);
  const rings = [block, three].map((one): Frame => {
    const { ring = [] } = interlocked(one);
    return { block: one.block, ring, caption: [`${ring.length} seams, each of which`, 'ends on the next'] };
  });
  return pictureOf(
    'Seams that chase each other in a ring',
    'Left: four oblongs round a square. Right: three seams round a triangle. Each seam ends on the next one, the last on the first, so whichever is sewn last, another is in its way.',
    rings,
  );
}

function windmillMended(): string {
  const block = solved(RING);
  const finding = interlocked(block);
  const repair = repairsFor(block.drawing, block.block, finding)[0];
  if (repair === undefined) throw new Error('no repair was found');
  const mended = solvedDrawing(repair.drawing);
  return pictureOf(
    'A ring mended by one line',
    'Left: the four seams, and the repair: one of them runs on to the edge. Right: the block after it, with its sections and their orders.',
    [
      {
        block: block.block,
        ring: finding.ring ?? [],
        added: repair.splits.map(([a, b]) => ({ a, b })),
        caption: ['One seam runs on', 'to the edge'],
      },
      {
        block: mended.block,
        names: namesOf(mended),
        sections: sectionsOf(mended),
        sewn: mended.plan.joins.map(({ seam }) => seam),
        caption: [`Sews on ${mended.plan.sections.length} foundations,`, 'all seams straight'],
      },
    ],
  );
}

/** The ring again, sewn with one seam that is left open and closed last. */
function partialSeam(): string {
  const { block } = solved(RING);
  const plan = planSewing(block, { partialSeams: true });
  const [first, ...others] = plan.joins;
  const last = others.at(-1);
  const open = first?.open;
  if (open === undefined || last === undefined) throw new Error('no seam is left open');
  const patchesOfUnit = new Map<string, readonly number[]>(
    plan.sections.map(({ letter, order }) => [letter, order]),
  );
  for (const { units, makes } of plan.joins)
    patchesOfUnit.set(
      makes,
      units.flatMap((unit) => patchesOfUnit.get(unit)!),
    );
  const names = new Map(plan.sections.map(({ letter, order }) => [order[0]!, letter] as const));
  const sections = new Map(plan.sections.flatMap(({ order }, i) => order.map((p) => [p, i] as const)));
  const made = (unit: string): Pick<Frame, 'block' | 'names' | 'sections' | 'gone'> => {
    const there = new Set(patchesOfUnit.get(unit)!);
    const only = <T>(map: ReadonlyMap<number, T>) => new Map([...map].filter(([p]) => there.has(p)));
    const gone = new Set(block.patches.map(({ index }) => index).filter((p) => !there.has(p)));
    return { block, gone, names: only(names), sections: only(sections) };
  };
  const round = others.slice(0, -1).at(-1)!;
  return pictureOf(
    'A ring sewn with a partial seam',
    'Three steps. The first seam is sewn half-way and the rest of it left open; the others are sewn round the ring, each in one straight seam; the last is the stretch that was left open.',
    [
      {
        ...made(first!.makes),
        sewn: [{ a: first!.seam.a, b: open.seam.a }],
        open: [{ a: open.seam.a, b: first!.seam.b }],
        caption: ['The first seam is sewn', 'half-way only'],
      },
      {
        ...made(round.makes),
        sewn: others.slice(0, -1).map(({ seam }) => seam),
        caption: ['Then the others,', 'round the ring'],
      },
      {
        ...made(last.makes),
        sewn: [last.seam, open.seam],
        caption: ['The last one, and then', 'what was left open'],
      },
    ],
  );
}

/** An attic window: two strips with a mitre between them, round a pane. */
function corner(): string {
  const window = solved([
    [2, 0, 2, 4],
    [2, 4, 6, 4],
    [0, 6, 2, 4],
  ]);
  const finding = interlocked(window);
  const repair = repairsFor(window.drawing, window.block, finding)[0];
  if (repair === undefined) throw new Error('no repair was found');
  const mended = solvedDrawing(repair.drawing);
  return pictureOf(
    'A seam that turns a corner',
    'Left: an attic window; three seams meet at the corner of the pane and none of them runs straight through. Middle: the repair. Right: the block after it.',
    [
      {
        block: window.block,
        ring: finding.ring ?? [],
        corners: finding.at,
        caption: ['Three seams meet, and', 'none runs straight through'],
      },
      {
        block: window.block,
        added: repair.splits.map(([a, b]) => ({ a, b })),
        caption: ['One of them runs', 'on to the edge'],
      },
      {
        block: mended.block,
        names: namesOf(mended),
        sections: sectionsOf(mended),
        sewn: mended.plan.joins.map(({ seam }) => seam),
        caption: [
          mended.plan.sections.length === 1
            ? 'Sews on one foundation'
            : `Sews on ${mended.plan.sections.length} foundations`,
        ],
      },
    ],
  );
}

function patchAt({ patches }: Arrangement, { x, y }: Point): number {
  const found = patches.find(({ polygon }) => {
    const [xs, ys] = [polygon.map((p) => p.x), polygon.map((p) => p.y)];
    return Math.min(...xs) < x && x < Math.max(...xs) && Math.min(...ys) < y && y < Math.max(...ys);
  });
  if (found === undefined) throw new Error(`no patch at ${x}, ${y}`);
  return found.index;
}
