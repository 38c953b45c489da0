import type { Locator, Page } from '@playwright/test';
import { onPage, type Place } from './draw.ts';
import { type Colour, dropOnDrawing, type PictureFile } from './pictures.ts';
import { expect } from './test.ts';

/** The part of the panel that is about the picture under the drawing. */
export const tracingPart = (page: Page): Locator => page.getByRole('group', { name: 'Picture to trace' });

/** Drops a picture on the drawing and waits until it lies there. */
export async function layUnder(page: Page, file: PictureFile): Promise<void> {
  await dropOnDrawing(page, file);
  await expect(tracingPart(page).getByText(file.name)).toBeVisible();
}

/** Shows the picture as it is, so that its colours can be read. */
export async function fullStrength(page: Page): Promise<void> {
  await tracingPart(page).getByLabel('Per cent').fill('100');
  await page.keyboard.press('Enter');
}

/** The colour at a place of the block, of what lies under the lines that are drawn. */
export async function colourAt(page: Page, place: Place): Promise<Colour> {
  const { x, y } = await onPage(page, place);
  return page
    .getByRole('application', { name: 'Drawing of the block' })
    .locator('canvas')
    .first()
    .evaluate(
      (canvas: HTMLCanvasElement, at) => {
        const box = canvas.getBoundingClientRect();
        const ratio = canvas.width / box.width;
        const [left, top] = [(at.x - box.left) * ratio, (at.y - box.top) * ratio];
        const [red, green, blue] = canvas.getContext('2d')!.getImageData(left, top, 1, 1).data;
        return [red!, green!, blue!] as const;
      },
      { x, y },
    );
}

/** Waits until the colour at a place is that one, give or take what JPEG does to it. */
export async function expectColour(page: Page, place: Place, colour: Colour): Promise<void> {
  await expect
    .poll(
      async () => {
        const seen = await colourAt(page, place);
        return Math.max(...seen.map((part, i) => Math.abs(part - colour[i]!)));
      },
      `colour at ${place.join(', ')}`,
    )
    .toBeLessThan(24);
}

const fieldOf = (page: Page, name: string): Locator =>
  tracingPart(page).getByRole('textbox', { name, exact: true });

/** What a number field of the picture's part shows. */
export const shownIn = (page: Page, field: string): Promise<string> => fieldOf(page, field).inputValue();

export async function typeIn(page: Page, field: string, text: string): Promise<void> {
  await fieldOf(page, field).fill(text);
  await page.keyboard.press('Enter');
}
