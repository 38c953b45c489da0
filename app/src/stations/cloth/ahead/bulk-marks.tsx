import {
  distance,
  type Point,
  type Polygon,
  scaling,
  transformPoint,
  transformPolygon,
} from '@seamwright/geometry';
import { useMemo } from 'react';
import { addPolygon, inFront, type Look, paintSeams } from '../../../canvas/paint-patches.ts';
import { inTurn, type Paint, Painting } from '../../../canvas/painting.tsx';
import { FACE } from '../../../canvas/theme.ts';
import { useLook } from '../../../canvas/use-look.ts';
import { type Bulk, type BulkSubject, bulkAsked } from '../../../study/look-ahead-asked.ts';
import type { Study } from '../../../study/study.ts';
import { greyOf, useBulk } from './bulk-state.ts';

/** So many of the thickest places carry their number at most. */
const MOST_NUMBERS = 200;

/** Layers at a seam away from all others: the newer patch and two allowances. */
const PLAIN_SEAM = 3;

/** CSS pixels. */
const DISC = 12;

/** The layers over the block of this study; null where they are not known, or not to be shown. */
function useShownBulk(study: Study | null): { readonly of: BulkSubject; readonly bulk: Bulk } | null {
  const shown = useBulk((state) => state.shown);
  const { of, answer } = bulkAsked.useAsked();
  return useMemo(
    () =>
      shown && of !== null && answer !== null && of.arrangement === study?.arrangement
        ? { of, bulk: answer }
        : null,
    [shown, of, answer, study],
  );
}

/** How far the block with its allowance reaches as it is drawn, while that is shown. */
export function useBulkReach(study: Study | null): Polygon {
  const shown = useShownBulk(study);
  return useMemo(() => {
    if (shown === null) return [];
    const drawn = scaling(1 / shown.of.scale);
    return shown.bulk.regions.flatMap(({ polygon }) => transformPolygon(drawn, polygon));
  }, [shown]);
}

/** The map of layers in greys, over the fabrics, with numbers at the thickest places. */
export function BulkMarks({ study }: { readonly study: Study }) {
  const shown = useShownBulk(study);
  const look = useLook(inFront);
  const paint = useMemo(
    () =>
      shown === null
        ? () => {}
        : inTurn(
            paintLayers(shown.of, shown.bulk, look),
            paintSeams(study.arrangement, look, true),
            paintNumbers(shown.of, shown.bulk, look),
          ),
    [shown, look, study],
  );
  return <Painting paint={paint} />;
}

function paintLayers({ scale }: BulkSubject, { regions }: Bulk, { place }: Look): Paint {
  const drawn = scaling(1 / scale);
  const most = Math.max(...regions.map(({ layers }) => layers));
  const paths = new Map<number, Path2D>();
  for (const { polygon, layers } of regions) {
    const path = paths.get(layers) ?? new Path2D();
    paths.set(layers, path);
    addPolygon(path, transformPolygon(drawn, polygon), place);
  }
  return (context) => {
    for (const [layers, path] of paths) {
      context.fillStyle = greyOf(layers, most);
      context.fill(path);
    }
  };
}

function paintNumbers(
  { scale }: BulkSubject,
  { places }: Bulk,
  { theme, scale: pixels, place }: Look,
): Paint {
  const drawn = scaling(1 / scale);
  const most = places[0]?.layers ?? 0;
  const numbered: { readonly layers: number; readonly at: Point }[] = [];
  for (const { layers, at } of places) {
    if (numbered.length === MOST_NUMBERS || layers < (most + PLAIN_SEAM) / 2) break;
    const shownAt = place(transformPoint(drawn, at));
    // Where two would lie one over the other, the thicker one stands for both.
    if (numbered.some((other) => distance(other.at, shownAt) * pixels < 2 * DISC)) continue;
    numbered.push({ layers, at: shownAt });
  }
  return (context) => {
    for (const { layers, at } of numbered) {
      const { x, y } = at;
      context.save();
      context.translate(x, y);
      context.scale(1 / pixels, 1 / pixels);
      context.beginPath();
      context.arc(0, 0, DISC, 0, 2 * Math.PI);
      context.fillStyle = theme.accent;
      context.fill();
      context.strokeStyle = theme.sheet;
      context.lineWidth = 1.5;
      context.stroke();
      context.fillStyle = theme['on-accent'];
      context.font = `700 13px ${FACE}`;
      context.textAlign = 'center';
      context.textBaseline = 'middle';
      context.fillText(`${layers}`, 0, 1);
      context.restore();
    }
  };
}
