import type { ChartRow } from '../types.ts';
import { shapeName } from './words.ts';

/** What is said wherever cutting is told, and where it comes from. */
export interface Caution {
  readonly text: string;
  readonly source: string;
}

/** For whoever holds a rotary cutter. */
export const CUTTING_CAUTIONS: readonly Caution[] = [
  {
    text: 'Close the rotary cutter whenever you lay it down.',
    source: 'NDSU Extension CB111, Quilting for fun; common practice',
  },
  {
    text: 'Keep your fingers back from the edge of the ruler, and cut away from yourself.',
    source: 'NDSU Extension CB111, Quilting for fun (fingers); common practice',
  },
  {
    text: 'Keep the cutter away from children.',
    source: 'NDSU Extension CB111, Quilting for fun; common practice',
  },
  {
    text: 'Take fewer layers when the cutter does not go through at one stroke: pressing harder makes it slip.',
    source: 'common practice',
  },
];

/**
 * Of triangles with unequal sides, those from a layer that lies right side down come out as mirror images: exact, plane
 * geometry. Nothing where no such triangles are cut.
 */
export const layerCautions = (rows: readonly ChartRow[]): readonly Caution[] =>
  rows.some((row) => shapeName(row) === 'half-rectangle')
    ? [
        {
          text: 'Cut half-rectangles apart with every layer right side up: folded fabric would give half of them mirrored.',
          source: 'exact, plane geometry',
        },
      ]
    : [];

/** For whoever joins and presses sewn foundations. */
export const PRESSING_CAUTIONS: readonly Caution[] = [
  {
    text: 'Do not sew over the pins of a join: take each out before the needle comes to it.',
    source: '4-H sewing leaflet',
  },
  {
    text: 'Set the iron on its rest whenever you lay it down, and unplug it after use.',
    source: 'common practice',
  },
  {
    text: 'While the paper is in, press with a dry iron: steam curls paper.',
    source: 'Chili Pepper Quilts, tips',
  },
];
