import { ALLOWANCE_RANGE, formatLength, type LengthRange, SIZE_RANGE } from '@seamwright/geometry';
import { alikeSections, PAPERS } from '@seamwright/pages';
import { useId, useMemo } from 'react';
import { blockBounds } from '../../canvas/bounds.ts';
import { askOfSheets } from '../../store/printing.ts';
import { setting, useSettings } from '../../store/settings.ts';
import { currentDrawing, currentPrinting, useWork } from '../../store/work.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { CountField } from '../../ui/count-field.tsx';
import { LengthField } from '../../ui/length-field.tsx';
import { listed } from '../../ui/plural.ts';
import styles from './paper-station.module.css';

const PAPER_CHOICES = (['letter', 'a4'] as const).map((value) => ({ value, label: PAPERS[value].label }));

/** What the maker asks of the sheets: paper, number of blocks, sharing, finished size, allowance. */
export function SheetControls() {
  const paper = useSettings((settings) => settings.paper);
  const allowance = useSettings((settings) => settings.allowance);
  const copies = useWork((work) => currentPrinting(work).copies);
  return (
    <div className={styles.controls}>
      <Choice
        label="Paper"
        value={paper}
        options={PAPER_CHOICES}
        onChange={(chosen) => setting({ paper: chosen })}
      />
      <CountField
        label="Blocks to sew"
        value={copies}
        least={1}
        most={9999}
        hint="Each foundation says how often it is to be printed."
        onChange={(count) => askOfSheets({ copies: count })}
      />
      <Sharing />
      <FinishedSize />
      <LengthField
        label="Seam allowance"
        value={allowance}
        range={ALLOWANCE_RANGE}
        onChange={(inches) => setting({ allowance: inches })}
      />
    </div>
  );
}

/** Whether sections that are alike share a foundation; not asked where none are. */
function Sharing() {
  const plan = useWork((work) => work.study?.plan ?? null);
  const share = useSettings((settings) => settings.shareTemplates);
  const alike = useMemo(() => (plan === null ? [] : alikeSections(plan)), [plan]);
  const hint = useId();
  if (alike.length === 0) return null;
  return (
    <div className={styles.sharing}>
      <label className={styles.check}>
        <input
          type="checkbox"
          checked={share}
          aria-describedby={hint}
          onChange={(event) => setting({ shareTemplates: event.target.checked })}
        />
        One foundation for sections that are alike
      </label>
      <p id={hint}>The same when turned: {alike.map(listed).join('; ')}.</p>
    </div>
  );
}

/** The finished width, and with it the height: the block keeps its shape. */
function FinishedSize() {
  const drawing = useWork(currentDrawing);
  const scale = useWork((work) => currentPrinting(work).scale);
  const unit = useWork((work) => work.history.present.unit);
  const { minX, minY, maxX, maxY } = blockBounds(drawing);
  const [width, height] = [maxX - minX, maxY - minY];
  const drawn = scale === 1;
  return (
    <div className={styles.size}>
      <LengthField
        label="Finished width"
        value={width * scale}
        range={widthRange(width, height)}
        hint={`${formatLength(height * scale, unit)} high${drawn ? ', as drawn' : `; drawn ${formatLength(width, unit)} wide`}`}
        onChange={(inches) => askOfSheets({ scale: inches / width })}
      />
      {!drawn && <Button onClick={() => askOfSheets({ scale: 1 })}>As drawn</Button>}
    </div>
  );
}

/** The widths at which both sides are within what a block may measure. */
function widthRange(width: number, height: number): LengthRange {
  const least = SIZE_RANGE.least * Math.max(1, width / height);
  const most = SIZE_RANGE.most * Math.min(1, width / height);
  return { least, most };
}
