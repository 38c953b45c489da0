import { ChevronDown, Eye } from 'lucide-react';
import { useId, useState } from 'react';
import { blockBounds, corners } from '../../../canvas/bounds.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { Popover } from '../../../ui/popover.tsx';
import { useShortcuts } from '../../../ui/shortcuts.ts';
import { fillsBox, isSquare } from './copies.ts';
import {
  MOST_COPIES,
  nextView,
  showCopies,
  showView,
  switchCopies,
  TURNINGS,
  turnCopies,
  useDraftView,
  VIEWS,
} from './draft-view.ts';
import { FabricsDialog } from './fabrics-dialog.tsx';
import styles from './views.module.css';

/** Over the canvas: how the block is looked at, in words; opens the choice. */
export function ViewChoice() {
  const { kind, copies } = useDraftView();
  const [fabrics, setFabrics] = useState(false);
  useShortcuts('At the Draft station', [
    { keys: 'v', does: 'Another view: front, printed side, lines, fabrics', run: nextView },
    { keys: 'm', does: 'Many copies, or the block alone', run: switchCopies },
  ]);
  const { name } = VIEWS.find(({ value }) => value === kind)!;
  return (
    <div className={styles.place}>
      <Popover
        label="View"
        buttonClass={styles.button}
        button={
          <>
            <Eye aria-hidden="true" size={18} strokeWidth={1.75} />
            <span className="heard">View: </span>
            {name}
            {copies > 1 && `, ${copies} × ${copies}`}
            <ChevronDown aria-hidden="true" size={16} />
          </>
        }
      >
        {(close) => (
          <ViewPanel
            fabrics={() => {
              close();
              setFabrics(true);
            }}
          />
        )}
      </Popover>
      <FabricsDialog open={fabrics} onClose={() => setFabrics(false)} />
    </div>
  );
}

const COUNTS = Array.from({ length: MOST_COPIES }, (_, i) => ({
  value: String(i + 1),
  label: i === 0 ? 'None' : `${i + 1} × ${i + 1}`,
}));

function ViewPanel({ fabrics }: { readonly fabrics: () => void }) {
  const { kind, copies, turning } = useDraftView();
  return (
    <div className={styles.panel}>
      <Rows label="View" value={kind} options={VIEWS} onChange={showView} />
      <Choice
        label="Copies in a grid"
        value={String(copies)}
        options={COUNTS}
        onChange={(count) => showCopies(Number(count))}
      />
      {copies > 1 && (
        <>
          <Rows label="How they lie" value={turning} options={TURNINGS} onChange={turnCopies} />
          <HowTheyMeet />
        </>
      )}
      <Button onClick={fabrics}>Fabrics of the pattern…</Button>
    </div>
  );
}

/** What a block that is no square does differently. */
function HowTheyMeet() {
  const drawing = useWork((work) => currentBlock(work).drawing);
  const turning = useDraftView((view) => view.turning);
  const box = blockBounds(drawing);
  const turns = turning === 'alternate' || turning === 'pinwheel';
  const words = [
    ...(fillsBox(corners(drawing), box)
      ? []
      : ['This outline is no rectangle: the copies lie box by box and do not meet along their edges.']),
    ...(turns && !isSquare(box)
      ? ['The block is not as high as wide: copies have half turns instead of quarter turns.']
      : []),
  ];
  return words.map((sentence) => (
    <p key={sentence} className={styles.hint} role="status">
      {sentence}
    </p>
  ));
}

interface RowsProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly name: string; readonly words?: string }[];
  readonly onChange: (value: T) => void;
}

/** One of a few, one under the other, with a word on each. */
function Rows<T extends string>({ label, value, options, onChange }: RowsProps<T>) {
  const name = useId();
  return (
    <fieldset className={styles.rows}>
      <legend>{label}</legend>
      {options.map((option) => (
        <label key={option.value} className={styles.row}>
          <input
            type="radio"
            name={name}
            data-first={option.value === value || undefined}
            checked={option.value === value}
            onChange={() => onChange(option.value)}
          />
          <span>
            {option.name}
            {option.words !== undefined && <span className={styles.words}>{option.words}</span>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
