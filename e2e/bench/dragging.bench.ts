import type { Page } from '@playwright/test';
import { factor, ms, Table } from '../../scripts/bench/table.ts';
import { drop, open, stop, verdict } from '../support/app.ts';
import { onPage, type Place, press, takeUp, viewOf } from '../support/draw.ts';
import { expect, test } from '../support/test.ts';
import { besideLines, latticeFile, levelEnd, middleEnd } from './lattice.ts';

/*
 * How immediate drawing feels. Run: `npm run bench -- dragging`.
 *
 * - Dragging: the time from one frame to the next while the end of a line is dragged in a block of 500 patches and in one of
 *   200, beside the same while a plain square is dragged over the same canvas. What counts is the ratio.
 * - The verdict: how many frames after a move of the pointer speak of what was before, at 200 patches.
 */

/** Characters of the longest name in the tables. */
const LONGEST = 'the end of a line'.length;

const ROUNDS = 6;
const MOVES = 90;
/** Inches that the drag goes to either side. */
const REACH = 0.2;

/** As much of the canvas library as the square takes; the library puts itself on the window. */
interface Konva {
  readonly stages: readonly { container(): HTMLElement; add(layer: unknown): void }[];
  readonly Layer: new (options: object) => { add(shape: unknown): void; destroy(): void };
  readonly Shape: new (options: object) => { position(at: { x: number; y: number }): void };
}

for (const [columns, rows] of [
  [20, 25],
  [10, 20],
] as const) {
  test(`dragging in a block of ${columns * rows} patches`, async ({ page }) => {
    await openLattice(page, columns, rows);
    const line: number[] = [];
    const plain: number[] = [];
    // By turns, so that whatever else the computer does falls on both.
    for (let round = 0; round < ROUNDS; round += 1) {
      line.push(...(await framesOfDrag(page, columns)));
      await laySquare(page);
      plain.push(...(await framesOfDrag(page, columns)));
      await takeSquareAway(page);
    }
    const table = new Table(
      `Dragging in a block of ${columns * rows} patches: milliseconds from frame to frame`,
      ['', 'frames', 'median', 'p95', 'longest'],
      LONGEST,
    );
    table.row('the end of a line', line.length, ...figures(line).map(ms));
    table.row('a plain square', plain.length, ...figures(plain).map(ms));
    const bases = figures(plain);
    table.row('times', '', ...figures(line).map((figure, i) => factor(figure / bases[i]!)));
  });
}

test('the verdict in a block of 200 patches', async ({ page }) => {
  const [columns, rows] = [10, 20];
  await openLattice(page, columns, rows);
  const table = new Table(
    'The verdict in a block of 200 patches: frames after a move that do not show it yet, and milliseconds until it is painted',
    ['', 'moves', 'median', 'p95', 'longest', 'above two', 'median ms', 'p95 ms', 'longest ms'],
    LONGEST,
  );
  const all: Lag[] = [];
  const tell = (name: string, lags: readonly Lag[]) => {
    const frames = lags.map((lag) => lag.frames);
    const times = lags.map((lag) => lag.time);
    table.row(name, lags.length, ...figures(frames), aboveTwo(frames), ...figures(times).map(ms));
  };
  for (const [name, drag] of dragsOf(columns, rows)) {
    const lags = await lagsOfDrag(page, drag);
    tell(name, lags);
    all.push(...lags);
  }
  tell('all', all);
});

/** Where a drag begins, and which way it goes to and fro, inches. */
interface Drag {
  readonly from: Place;
  readonly to: Place;
}

/** Drags in which patches grow and shrink on either side: the deepest points of rows and columns change their order. */
const dragsOf = (columns: number, rows: number): readonly (readonly [name: string, drag: Drag])[] => [
  ['end, upright', { from: middleEnd(columns), to: [REACH, 0] }],
  ['end, level', { from: levelEnd(rows), to: [0, REACH] }],
  ['a whole line', { from: besideLines(columns, rows), to: [REACH, 0] }],
];

/** The lag of the verdict at every move of a drag, the first one after rest too. */
async function lagsOfDrag(page: Page, { from: [x, y], to: [dx, dy] }: Drag): Promise<readonly Lag[]> {
  const place = (part: number): Place => [x + dx * part, y + dy * part];
  const lags: Lag[] = [];
  const move = async (part: number) => {
    const to = await onPage(page, place(part));
    await watchVerdict(page);
    await page.mouse.move(to.x, to.y);
    lags.push(await lagOfVerdict(page));
  };
  await press(page, [x, y]);
  const start = await onPage(page, [x, y]);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  // Far enough to be a drag and no press.
  await move(1);
  for (let i = 1; i <= MOVES; i += 1) await move(Math.sin(i / 7));
  await page.mouse.move(start.x, start.y);
  await page.mouse.up();
  await expect(verdict(page)).toBeVisible();
  return lags;
}

async function openLattice(page: Page, columns: number, rows: number): Promise<void> {
  await open(page);
  await drop(page, [{ name: 'lattice.json', text: latticeFile(columns, rows) }]);
  await expect(stop(page, 'Draft')).toContainText(`${columns * rows} patches`);
  await takeUp(page, 'Adjust');
  await press(page, middleEnd(columns));
  // Nothing pulls, so that each move changes the drawing.
  await page.keyboard.down('Shift');
}

/** Drags to and fro, and gives the times between the frames meanwhile, milliseconds. */
async function framesOfDrag(page: Page, columns: number): Promise<readonly number[]> {
  const [x, y] = middleEnd(columns);
  const at = await onPage(page, [x, y]);
  const { scale } = await viewOf(page);
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.evaluate(() => {
    const frames: number[] = [];
    const each = (now: number) => {
      frames.push(now);
      if (bench.frames === frames) requestAnimationFrame(each);
    };
    const bench = window as unknown as { frames: number[] | null };
    bench.frames = frames;
    requestAnimationFrame(each);
  });
  for (let move = 1; move <= MOVES; move += 1)
    await page.mouse.move(at.x + REACH * scale * Math.sin(move / 7), at.y);
  const frames = await page.evaluate(() => {
    const bench = window as unknown as { frames: number[] | null };
    const { frames } = bench;
    bench.frames = null;
    return frames ?? [];
  });
  // Back where it was, so that the next drag finds it.
  await page.mouse.move(at.x, at.y);
  await page.mouse.up();
  return frames.slice(1).map((now, i) => now - frames[i]!);
}

/** Lays a square on a layer of its own that follows the pointer, and keeps the pointer from the tools meanwhile. */
async function laySquare(page: Page): Promise<void> {
  await page.evaluate(() => {
    const bench = window as unknown as { Konva: Konva; square: () => void };
    const stage = bench.Konva.stages.find((one) => one.container().isConnected)!;
    const layer = new bench.Konva.Layer({ listening: false });
    const square = new bench.Konva.Shape({
      width: 60,
      height: 60,
      sceneFunc: (context: CanvasRenderingContext2D) => {
        context.fillStyle = 'teal';
        context.fillRect(0, 0, 60, 60);
      },
    });
    layer.add(square);
    stage.add(layer);
    const follow = (event: PointerEvent) => {
      event.stopPropagation();
      const box = stage.container().getBoundingClientRect();
      square.position({ x: event.clientX - box.left, y: event.clientY - box.top });
    };
    const kinds = ['pointerdown', 'pointermove', 'pointerup'] as const;
    for (const kind of kinds) window.addEventListener(kind, follow, { capture: true });
    bench.square = () => {
      for (const kind of kinds) window.removeEventListener(kind, follow, { capture: true });
      layer.destroy();
    };
  });
}

const takeSquareAway = (page: Page): Promise<void> =>
  page.evaluate(() => (window as unknown as { square: () => void }).square());

/** How late the verdict was about one move. */
interface Lag {
  /** Frames painted after the move's event that show a verdict about an earlier drawing. */
  readonly frames: number;
  /** Milliseconds from the event, as the system gave it out, until the frame with the verdict about it was painted. */
  readonly time: number;
}

/** Measures the lag of the verdict about the next move. */
async function watchVerdict(page: Page): Promise<void> {
  await page.evaluate(() => {
    const bench = window as unknown as { lag: Promise<Lag> };
    const verdict = document.querySelector<HTMLElement>('[data-testid=verdict]')!;
    // Whatever it was about before the event, it is about another drawing once it is about this move.
    const before = verdict.dataset.drawing;
    const isAboutMove = () => verdict.dataset.stale === 'false' && verdict.dataset.drawing !== before;
    bench.lag = new Promise((resolve) => {
      const moved = (event: PointerEvent) => {
        let frames = 0;
        const look = () => {
          if (!isAboutMove()) {
            frames += 1;
            requestAnimationFrame(look);
            return;
          }
          // A message is taken once the frame is painted.
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => resolve({ frames, time: performance.now() - event.timeStamp });
          port2.postMessage(null);
        };
        requestAnimationFrame(look);
      };
      // Before anything on the page has heard of the move.
      window.addEventListener('pointermove', moved, { capture: true, once: true });
    });
  });
}

const lagOfVerdict = (page: Page): Promise<Lag> =>
  page.evaluate(() => (window as unknown as { lag: Promise<Lag> }).lag);

/** How many of the moves the verdict lags by more than two frames, per cent. */
const aboveTwo = (frames: readonly number[]): string =>
  `${((100 * frames.filter((lag) => lag > 2).length) / frames.length).toFixed(1)} %`;

/** Median, 95th percentile and longest. */
const figures = (values: readonly number[]): readonly number[] =>
  [0.5, 0.95, 1].map((part) => share(values, part));

/** The value that `part` of all are not above. */
function share(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(Math.ceil(part * sorted.length), sorted.length) - 1] ?? Number.NaN;
}
