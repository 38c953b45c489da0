import { type ColourwayKey, fabricIn } from '@seamwright/pattern';
import { memo, useMemo } from 'react';
import { fabricsOf } from '../../store/fabrics.ts';
import { currentBlock, useWork } from '../../store/work.ts';
import type { Study } from '../../study/study.ts';
import styles from './colourways.module.css';

interface FabricStampProps {
  readonly study: Study;
  readonly colourway: ColourwayKey;
  readonly shade: (colour: string) => string;
}

/** The open block in the fabrics of a colourway, small: each fabric's patches as one shape. */
export const FabricStamp = memo(function FabricStamp({ study, colourway, shade }: FabricStampProps) {
  const records = useWork((work) => currentBlock(work).patches);
  const fabrics = useWork(fabricsOf);
  const { arrangement, records: ids } = study;
  const shapes = useMemo(() => {
    const fabricOf = new Map(records.map((record) => [record.id, fabricIn(record, colourway)]));
    const byFabric = new Map<string, string>();
    for (const { index, polygon } of arrangement?.patches ?? []) {
      const fabric = fabricOf.get(ids[index]?.id ?? '') ?? '';
      byFabric.set(fabric, `${byFabric.get(fabric) ?? ''}${shapeOf(polygon)}`);
    }
    return byFabric;
  }, [arrangement, ids, records, colourway]);
  const outline = arrangement?.outline ?? [];
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs, Infinity), Math.min(...ys, Infinity)];
  const [width, height] = [Math.max(...xs, left) - left, Math.max(...ys, top) - top];
  if (outline.length === 0) return <span className={styles.stamp} />;
  return (
    <svg className={styles.stamp} viewBox={`${left} ${top} ${width} ${height}`} aria-hidden="true">
      {[...shapes].map(([id, path]) => {
        const fabric = fabrics.find((one) => one.id === id);
        return <path key={id} d={path} className={styles.patches} fill={fabric && shade(fabric.colour)} />;
      })}
    </svg>
  );
});

const shapeOf = (polygon: readonly { readonly x: number; readonly y: number }[]): string =>
  `M${polygon.map(({ x, y }) => `${x} ${y}`).join('L')}Z`;
