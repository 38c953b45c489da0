import { type PackingReport, type PagePlan, printsOf } from '@seamwright/pages';
import { FileCode, FileDown, Image, Printer } from 'lucide-react';
import { useState } from 'react';
import { usePrinters } from '../../../store/printers.ts';
import { useSettings } from '../../../store/settings.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { sheetsAreDue } from '../../../study/lay-out.ts';
import { Button } from '../../../ui/button.tsx';
import { counted } from '../../../ui/plural.ts';
import { ManySheetsDialog } from './many-sheets-dialog.tsx';
import styles from './outputs.module.css';
import { PictureDialog } from './picture-dialog.tsx';
import { PrintDialog } from './print-dialog.tsx';
import { LayingProgress, MakingProgress } from './progress.tsx';
import { printSheets, savePdf, saveSvg } from './save.ts';
import { useOutput } from './under-way.ts';

/** More sheets of paper than anyone has beside the printer: asked about before a file is made. */
const MANY_SHEETS = 1000;

/** `no fewer than 4 could hold them` */
const boundWords = ({ sheets, atLeast }: PackingReport): string =>
  sheets === atLeast
    ? 'Fewer could not hold the foundations.'
    : `No fewer than ${atLeast} could hold the foundations.`;

type Output = (plan: PagePlan, title: string) => Promise<void>;

interface OutputsProps {
  /** As it can be printed. */
  readonly plan: PagePlan;
  /** What could not be set as it is written. */
  readonly notes: readonly string[];
}

/** How many sheets there are, and what can be made of them. */
export function Outputs({ plan, notes }: OutputsProps) {
  const title = useWork((work) => currentBlock(work).name);
  const busy = useOutput(({ underWay }) => underWay !== null);
  // What the sheets are laid out for is partly there.
  useSettings();
  usePrinters();
  const due = useWork(sheetsAreDue);
  const [asked, setAsked] = useState<Output | null>(null);
  const [picturing, setPicturing] = useState(false);
  const [printing, setPrinting] = useState(false);
  const { length } = plan.sheets;
  const { sheets: printed, times } = printsOf(plan);
  const off = busy || due;
  const make = (output: Output) =>
    printed > MANY_SHEETS ? setAsked(() => output) : void output(plan, title);
  return (
    <div className={styles.outputs}>
      <h2>
        {counted(length, 'sheet')} of {plan.paper.label}
      </h2>
      {plan.packing !== undefined && <p>{boundWords(plan.packing)}</p>}
      {printed > length && (
        <p>{printed.toLocaleString('en')} sheets of paper in all, printed as often as is said.</p>
      )}
      {notes.map((note) => (
        <p key={note} className={styles.note}>
          {note}
        </p>
      ))}
      <Button look="main" icon={FileDown} disabled={off} onClick={() => make(savePdf)}>
        {due ? 'Laying out the sheets…' : 'Save PDF'}
      </Button>
      <div className={styles.others}>
        <Button
          icon={Printer}
          disabled={off}
          onClick={() => (printed > length ? setPrinting(true) : void printSheets(plan, title))}
        >
          Print…
        </Button>
        <Button icon={FileCode} disabled={off} onClick={() => make(saveSvg)}>
          {length === 1 ? 'Save SVG' : `Save ${length} SVG files`}
        </Button>
        <Button icon={Image} disabled={off} onClick={() => setPicturing(true)}>
          Save PNG…
        </Button>
      </div>
      <LayingProgress />
      <MakingProgress />
      <ManySheetsDialog
        sheets={printed}
        open={asked !== null}
        onClose={() => setAsked(null)}
        onGoOn={() => void asked?.(plan, title)}
      />
      <PrintDialog
        sheets={length}
        printed={printed}
        most={MANY_SHEETS}
        open={printing}
        onClose={() => setPrinting(false)}
        onPrint={(often) => void printSheets(plan, title, often ? times : [])}
      />
      <PictureDialog prints={plan.prints} open={picturing} onClose={() => setPicturing(false)} />
    </div>
  );
}
