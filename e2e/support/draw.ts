import type { Page } from '@playwright/test';
import { expect } from './test.ts';

/** A place on the block, inches from its left and its top. */
export type Place = readonly [x: number, y: number];

const canvas = (page: Page) => page.getByRole('application', { name: 'Drawing of the block' });

/** Where the block lies on the canvas: pixels per inch, its origin in pixels, and -1 where left and right are exchanged. */
export async function viewOf(
  page: Page,
): Promise<{ scale: number; left: number; top: number; flip: number }> {
  const view = await canvas(page).getAttribute('data-view');
  if (view === null) throw new Error('The drawing is not on the screen');
  const [scale, left, top, flip] = view.split(' ').map(Number) as [number, number, number, number];
  return { scale, left, top, flip };
}

/** Where a place of the block is on the page, CSS pixels. */
export async function onPage(page: Page, [x, y]: Place): Promise<{ x: number; y: number }> {
  const { scale, left, top, flip } = await viewOf(page);
  const box = await canvas(page).boundingBox();
  if (box === null) throw new Error('The drawing is not on the screen');
  return { x: box.x + left + x * scale * flip, y: box.y + top + y * scale };
}

/** Presses at a place. */
export async function press(page: Page, place: Place): Promise<void> {
  const { x, y } = await onPage(page, place);
  await page.mouse.click(x, y);
}

/** Draws from one place to another with the button held down, as with a pencil. */
export async function drag(page: Page, from: Place, to: Place): Promise<void> {
  const [start, end] = [await onPage(page, from), await onPage(page, to)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2, { steps: 4 });
  await page.mouse.move(end.x, end.y, { steps: 4 });
  await page.mouse.up();
}

export async function takeUp(page: Page, tool: 'Draw lines' | 'Adjust' | 'New outline'): Promise<void> {
  await page.getByRole('radio', { name: tool }).check();
}

/** Lets ends of lines stay where they are put; otherwise they run to the nearest line or the edge. */
export const holdEnds = (page: Page): Promise<void> =>
  page.getByRole('checkbox', { name: 'Ends stay where they are put' }).check();

/** Goes to the drawing with the Tab key alone. */
export async function tabToDrawing(page: Page): Promise<void> {
  for (let presses = 0; presses < 40; presses++) {
    await page.keyboard.press('Tab');
    if (await canvas(page).evaluate((element) => element === document.activeElement)) return;
  }
  expect(false, 'the Tab key reaches the drawing').toBe(true);
}

/** The keyboard's crosshair: where it is known to be, moved by half inches of the grid. */
export class Crosshair {
  private at: Place | null = null;

  constructor(private readonly page: Page) {}

  /** Moves to a place by arrows; the first arrow brings the crosshair to the middle of the block. */
  async goTo([x, y]: Place, middle: Place): Promise<void> {
    if (this.at === null) {
      await this.page.keyboard.press('ArrowUp');
      this.at = middle;
    }
    const [fromX, fromY] = this.at;
    await this.arrows(x - fromX, 'ArrowRight', 'ArrowLeft');
    await this.arrows(y - fromY, 'ArrowDown', 'ArrowUp');
    this.at = [x, y];
  }

  private async arrows(inches: number, forward: string, back: string): Promise<void> {
    const steps = Math.round(Math.abs(inches) / 0.5);
    for (let i = 0; i < steps; i++) await this.page.keyboard.press(inches > 0 ? forward : back);
  }
}
