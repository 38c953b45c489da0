import type { PlacingKind } from './placing.ts';

/** What the next press does, for the eye and for the ear. */
export function placingWords(kind: PlacingKind, points: number): string {
  if (kind === 'rest') return '';
  if (kind === 'moving') return 'Drag the picture to where it belongs.';
  return [
    'Press on a point of the picture.',
    'One point is down. Now the other.',
    'Type how far apart they are, or make them level.',
  ][points]!;
}

/** How the hand works on the picture by keys, for screen readers. */
export const PLACING_KEYS: Readonly<Record<'moving' | 'pointing', string>> = {
  moving:
    'By keys: arrows move the picture by the grid, with Shift finely; Enter or Escape leaves it where it is.',
  pointing:
    'By keys: arrows move the crosshair by the grid, with Shift finely; Enter points, Escape takes the last point back.',
};
