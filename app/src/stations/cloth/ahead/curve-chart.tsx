import type { SizedNeed } from '@seamwright/cloth';
import { formatLength, type LengthUnit } from '@seamwright/geometry';
import styles from './ahead.module.css';
import { boughtOf, boughtText } from './curve-words.ts';

/** Of the picture, in its own pixels. */
const WIDTH = 340;
const HEIGHT = 170;
const LEFT = 52;
const RIGHT = 12;
const TOP = 14;
const BOTTOM = 26;

interface CurveChartProps {
  readonly needs: readonly SizedNeed[];
  /** Those of them that are just past a cliff. */
  readonly cliffs: readonly SizedNeed[];
  /** The present finished width, inches. */
  readonly now: number;
  readonly unit: LengthUnit;
}

/** What is bought against the finished width, from nothing up; rings at the sizes just past a cliff. */
export function CurveChart({ needs, cliffs, now, unit }: CurveChartProps) {
  const [first, last] = [needs[0]!.size, needs.at(-1)!.size];
  const most = Math.max(...needs.map((need) => boughtOf(need, unit)));
  const x = (size: number) => LEFT + ((size - first) / (last - first)) * (WIDTH - LEFT - RIGHT);
  const y = (amount: number) => HEIGHT - BOTTOM - (amount / most) * (HEIGHT - TOP - BOTTOM);
  const points = needs.map((need) => `${x(need.size)},${y(boughtOf(need, unit))}`).join(' ');
  const middle = needs.find(({ size }) => size === now);
  return (
    <svg
      className={styles.curve}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`What is bought for finished widths from ${formatLength(first, unit)} to ${formatLength(last, unit)}; the table below has the numbers`}
    >
      <line className={styles.axis} x1={LEFT} x2={WIDTH - RIGHT} y1={y(0)} y2={y(0)} />
      <line className={styles.axis} x1={LEFT} x2={LEFT} y1={TOP} y2={y(0)} />
      <text x={LEFT - 6} y={y(most) + 4} textAnchor="end">
        {boughtText(most, unit)}
      </text>
      <text x={LEFT - 6} y={y(0) + 4} textAnchor="end">
        0
      </text>
      <text x={LEFT} y={HEIGHT - 6}>
        {formatLength(first, unit)}
      </text>
      <text x={WIDTH - RIGHT} y={HEIGHT - 6} textAnchor="end">
        {formatLength(last, unit)}
      </text>
      {middle !== undefined && (
        <>
          <line className={styles.now} x1={x(now)} x2={x(now)} y1={TOP} y2={y(0)} />
          <text x={x(now)} y={HEIGHT - 6} textAnchor="middle">
            now {formatLength(now, unit)}
          </text>
        </>
      )}
      <polyline className={styles.line} points={points} />
      {cliffs.map((need) => (
        <circle
          key={need.size}
          className={styles.cliff}
          cx={x(need.size)}
          cy={y(boughtOf(need, unit))}
          r={4.5}
        />
      ))}
    </svg>
  );
}
