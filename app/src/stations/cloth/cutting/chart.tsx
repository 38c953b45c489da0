import {
  buyText,
  type ChartRow,
  type ClothPlan,
  halvedText,
  noteText,
  stripTexts,
  takesText,
} from '@seamwright/cloth';
import { formatCutSize, formatLength, type LengthUnit } from '@seamwright/geometry';
import { useMemo } from 'react';
import { useCuttingHabits } from '../../../store/cutting-habits.ts';
import { fabricsOf } from '../../../store/fabrics.ts';
import { openBlock } from '../../../store/places.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import type { CuttingQuestion } from '../../../study/cut-out.ts';
import { usePointing } from '../../../ui/use-pointing.ts';
import station from '../cloth-station.module.css';
import styles from './cutting.module.css';
import { inspect, useInspected } from './inspected.ts';
import type { PatchesByName, PatchOfBlock } from './patches-by-name.ts';
import { PiecePart } from './piece-part.tsx';
import { useInspectedPiece } from './use-inspected-piece.ts';

interface ChartProps {
  readonly plan: ClothPlan;
  /** Of all fabrics. */
  readonly rows: readonly ChartRow[];
  readonly question: CuttingQuestion;
  readonly patchOf: PatchesByName;
}

/** One fabric: what is cut from it, and what is bought. */
export function Chart({ plan, rows, question, patchOf }: ChartProps) {
  const fabric = useWork((work) => fabricsOf(work).find(({ id }) => id === plan.cloth.id));
  const unit = useWork((work) => work.history.present.unit);
  const own = rows.filter(({ cloth }) => (cloth ?? '') === plan.cloth.id);
  // Without sections, one that has no name.
  const sections = [...new Set(own.map(({ section }) => section))];
  const name = fabric?.name ?? 'No fabric chosen yet';
  const inspected = useInspectedPiece()?.piece.name;
  const heading = fabric === undefined ? 'Cut from fabric not chosen yet' : `Cut from ${name}`;
  return (
    <section className={station.part} aria-label={heading}>
      <h2 className={styles.cloth}>
        <span
          className={fabric === undefined ? `${station.swatch} ${station.bare}` : station.swatch}
          style={fabric === undefined ? undefined : { background: fabric.colour }}
          aria-hidden="true"
        />
        {name}
      </h2>
      <p>{buyText(plan, unit)}</p>
      <table className={styles.chart} aria-label={heading}>
        <thead>
          <tr>
            <th scope="col">Cut</th>
            <th scope="col">Size</th>
            <th scope="col">For</th>
          </tr>
        </thead>
        {sections.map((section) => (
          <tbody key={section ?? ''}>
            {section !== undefined && (
              <tr>
                <th scope="rowgroup" colSpan={3} className={styles.section}>
                  Section {section}
                </th>
              </tr>
            )}
            {own
              .filter((row) => row.section === section)
              .map((row) => (
                <Row
                  key={`${row.shape} ${row.width} ${row.height}`}
                  row={row}
                  question={question}
                  patchOf={patchOf}
                  unit={unit}
                />
              ))}
          </tbody>
        ))}
      </table>
      {own.some(({ pieces }) => inspected !== undefined && pieces.includes(inspected)) && <PiecePart />}
      {plan.notes.map((note) => (
        <p key={`${note.kind} ${note.pieces.join()}`} className={styles.note}>
          {noteText(note, plan.cloth, unit)}.
        </p>
      ))}
      <Strips plan={plan} unit={unit} />
    </section>
  );
}

interface RowProps {
  readonly row: ChartRow;
  readonly question: CuttingQuestion;
  readonly patchOf: PatchesByName;
  readonly unit: LengthUnit;
}

function Row({ row, question: { study }, patchOf, unit }: RowProps) {
  const { width, height, cut, pieces } = row;
  const halved = halvedText(row, unit);
  const patches = useMemo(
    () =>
      pieces.flatMap((name) => {
        const { blockId, patch } = patchOf.get(name)!;
        return blockId === study.blockId ? [patch] : [];
      }),
    [pieces, patchOf, study],
  );
  const { onPointerEnter, onPointerLeave } = usePointing({ of: study.drawing, patches });
  return (
    <tr onPointerEnter={onPointerEnter} onPointerLeave={onPointerLeave}>
      <td>{cut}</td>
      <td>
        {formatCutSize(width, height, unit)}
        {halved !== null && <span className={styles.halves}>{halved}</span>}
      </td>
      <td>
        <span className={styles.names}>
          {pieces.map((name) => (
            <Piece key={name} name={name} of={patchOf.get(name)!} />
          ))}
        </span>
      </td>
    </tr>
  );
}

interface PieceProps {
  readonly name: string;
  readonly of: PatchOfBlock;
}

/** A patch's name; pressed, its piece is shown on its block. */
function Piece({ name, of: { blockId, own } }: PieceProps) {
  const isOpen = useWork((work) => currentBlock(work).id === blockId);
  const pressed = useInspected((inspected) => inspected.name === own) && isOpen;
  return (
    <button
      type="button"
      className={styles.piece}
      aria-pressed={pressed}
      title={`Show the piece for ${name} on the block`}
      onClick={() => {
        if (!isOpen) openBlock(blockId);
        inspect(pressed ? null : own);
      }}
    >
      {name}
    </button>
  );
}

/** How the fabric is cut, folded away until it is on the table. */
function Strips({ plan, unit }: { readonly plan: ClothPlan; readonly unit: LengthUnit }) {
  const layers = useCuttingHabits((habits) => habits.layers);
  const steps = stripTexts(plan, layers, unit);
  return (
    <details className={styles.strips}>
      <summary>
        {steps.length === 0
          ? 'Strips: none'
          : `Strips across ${formatLength(plan.cloth.usableWidth, unit)} of width`}
      </summary>
      <p>{takesText(plan, unit)}</p>
      {!plan.plan.trim && steps.length > 1 && (
        <p>
          Pieces that are cut from higher strips, too, may take less: “How you cut and buy” has a box for
          that.
        </p>
      )}
      <ol>
        {steps.map(({ strips, cuts }) => (
          <li key={strips}>
            {strips}
            <ul>
              {cuts.map((cut) => (
                <li key={cut}>{cut}</li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </details>
  );
}
