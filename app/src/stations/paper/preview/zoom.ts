import type { Paper } from '@seamwright/pages';

/** How large sheets are shown: several beside each other, as wide as there is room, as on paper, or twice as large. */
export type Zoom = 'overview' | 'wide' | 'true' | 'closer';

export const ZOOMS = [
  { value: 'overview', label: 'Overview' },
  { value: 'wide', label: 'Full width' },
  { value: 'true', label: 'True size' },
  { value: 'closer', label: 'Twice' },
] as const satisfies readonly { value: Zoom; label: string }[];

/** The width of a sheet on the screen, as CSS has it. */
export function zoomedWidth(zoom: Zoom, { trueWidth }: Paper): string {
  if (zoom === 'true') return trueWidth;
  return zoom === 'closer' ? `calc(2 * ${trueWidth})` : '100%';
}
