import { wasteOf } from '@seamwright/cloth';
import {
  formatCutLength,
  formatCutSize,
  type LengthRange,
  type LengthUnit,
  SAME_COORDINATE,
} from '@seamwright/geometry';
import { useEffect, useRef } from 'react';
import { useWork } from '../../../store/work.ts';
import { useCutting } from '../../../study/cut-out.ts';
import { Button } from '../../../ui/button.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { roughLength } from '../../../ui/rough-length.ts';
import styles from './cutting.module.css';
import { inspect, tryLength } from './inspected.ts';
import { widthWords } from './looked-at.tsx';
import { TemplatesPart } from './templates-part.tsx';
import { toleratedTurn } from './tolerated-turn.ts';
import { type InspectedPiece, useInspectedPiece } from './use-inspected-piece.ts';

/** What a typed size may be: from a scrap to the widest backing. */
const TRIED_RANGE: LengthRange = { least: 1 / 8, most: 130 };

/** The piece that is shown on the block: how it lies, how well it covers, and another size to try. */
export function PiecePart() {
  const inspected = useInspectedPiece();
  const unit = useWork((work) => work.history.present.unit);
  const sizes = useCutting(({ question }) => question?.open.length ?? 0);
  const part = useRef<HTMLElement>(null);
  const name = inspected?.piece.name;
  useEffect(() => {
    if (name !== undefined) part.current?.scrollIntoView({ block: 'nearest' });
  }, [name]);
  if (inspected === null) return null;
  const { piece, need, size, isTried, block } = inspected;
  return (
    <section ref={part} className={styles.inspected} aria-label={`The piece for ${piece.name}`}>
      <h3>The piece for {piece.name}</h3>
      {sizes > 1 && <p className={styles.note}>In the block {widthWords(block, unit)}.</p>}
      <p role="status">{coverWords(inspected, unit)}</p>
      <p className={styles.note}>
        {need.sewLine === null
          ? 'A full line: the piece. Dashed: what it must cover.'
          : 'Dotted: the piece as it is laid down, right side down. A full line: flipped. Dashed: what it must cover.'}{' '}
        Beside each side stands its margin{isTried ? '' : ', in the middle how far off it may lie'}.
      </p>
      <div className={styles.tried}>
        <LengthField
          label="Width"
          value={size.width}
          write={formatCutLength}
          range={TRIED_RANGE}
          onChange={(width) => tryLength({ width })}
        />
        <LengthField
          label="Height"
          value={size.height}
          write={formatCutLength}
          range={TRIED_RANGE}
          onChange={(height) => tryLength({ height })}
        />
      </div>
      <div className={styles.row}>
        {isTried && <Button onClick={() => inspect(need.name)}>The size that was worked out</Button>}
        <Button onClick={() => inspect(null)}>Show no piece</Button>
      </div>
      <TemplatesPart inspected={inspected} />
    </section>
  );
}

/** How it is laid, by how much it covers, and how far off it may be laid. */
function coverWords({ piece, need, sewn, size, isTried }: InspectedPiece, unit: LengthUnit): string {
  const shape = piece.shape === 'rectangle' ? '' : 'half of ';
  const how = need.sewLine === null ? 'laid on the blank side' : 'laid along its sew line and flipped';
  const what = `${shape}${formatCutSize(size.width, size.height, unit)}, ${how}`;
  if (sewn.margin < -SAME_COORDINATE)
    return `Too small: ${what}, it leaves bare what is marked, up to ${roughLength(-sewn.margin, unit)} wide.`;
  const spare = `reaches ${roughLength(Math.max(sewn.margin, 0), unit)} beyond what it must cover`;
  if (isTried) return `Large enough: ${what}, it ${spare}.`;
  const turn = toleratedTurn(piece);
  const waste = wasteOf([piece], [need]).wastePercent.toFixed(0);
  return `${what.charAt(0).toUpperCase()}${what.slice(1)}, ${spare}. It still covers when it lies ${roughLength(piece.toleranceShift, unit)} off, or is turned ${turn === null ? 'any way' : `by ${turn}`}; ${waste} % of it is trimmed off.`;
}
