import { type PackingReport, type PagePlan, type Print, printsOf } from '@seamwright/pages';
import { Copy, FileCode, FileDown, Image, Printer } from 'lucide-react';
import { useState } from 'react';
import { usePrinters } from '../../../store/printers.ts';
import { setting, useSettings } from '../../../store/settings.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { sheetsAreDue } from '../../../study/lay-out.ts';
import { Button } from '../../../ui/button.tsx';
import { counted } from '../../../ui/plural.ts';
import type { Ready } from '../use-printable.ts';
import { ManySheetsDialog } from './many-sheets-dialog.tsx';
import styles from './outputs.module.css';
import { PictureDialog } from './picture-dialog.tsx';
import { PrintDialog } from './print-dialog.tsx';
import { handOnToNext, LayingProgress, MakingProgress, NEXT } from './progress.tsx';
import { printSheets, savePdf, saveSvg } from './save.ts';
import { useOutput } from './under-way.ts';

/** More sheets of paper than anyone has beside the printer: asked about before a file is made. */
const MANY_SHEETS = 1000;

/** `No fewer than 4 sheets could hold the foundations.` @param printed sheets of paper */
function boundWords({ of, sheets, atLeast }: PackingReport, printed: number): string {
  const what = of === 'file' ? 'foundations' : 'prints';
  const noun = printed > sheets ? 'page' : 'sheet';
  return sheets === atLeast
    ? `Fewer ${noun}s could not hold the ${what}.`
    : `No fewer than ${counted(atLeast, noun)} could hold the ${what}.`;
}

/** Of how many pages the sheets of paper are prints: `5 different pages, each printed 3 times.` */
function pagesWords(times: readonly number[]): string {
  const [first, ...others] = times;
  const often = `printed ${counted(first!, 'time')}`;
  if (others.length === 0) return `One page, ${often}.`;
  const pages = counted(times.length, 'different page');
  return others.every((count) => count === first)
    ? `${pages}, each ${often}.`
    : `${pages}, some printed several times: each says how often.`;
}

/** Whether several prints of it could stand on a sheet, as far as is known before it is tried. */
const isRepeated = ({ count, sheets }: Print): boolean => count > 1 && sheets.length === 1;

type Output = (plan: PagePlan, title: string) => Promise<void>;

/** How much paper there is to print, and what can be made of it. */
export function Outputs({ plan, notes, isBefore }: Ready) {
  const title = useWork((work) => currentBlock(work).name);
  const busy = useOutput(({ underWay }) => underWay !== null);
  // What the sheets are laid out for is partly there.
  const { fillSheets } = useSettings();
  usePrinters();
  const due = useWork(sheetsAreDue) || isBefore;
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
      <h2 id={NEXT} tabIndex={-1}>
        {counted(printed, 'sheet')} of {plan.paper.label}
      </h2>
      {printed > length && <p>{pagesWords(times)}</p>}
      {plan.packing && plan.packing.sheets > 1 && <p>{boundWords(plan.packing, printed)}</p>}
      {!fillSheets && plan.prints.some(isRepeated) && (
        <Button
          ref={handOnToNext}
          icon={Copy}
          look="quiet"
          waits={off}
          onClick={() => setting({ fillSheets: true })}
        >
          Save paper: several on a sheet
        </Button>
      )}
      {notes.map((note) => (
        <p key={note} className={styles.note}>
          {note}
        </p>
      ))}
      <Button look="main" icon={FileDown} waits={off} onClick={() => make(savePdf)}>
        {due ? 'Laying out the sheets…' : 'Save PDF'}
      </Button>
      <div className={styles.others}>
        <Button
          icon={Printer}
          waits={off}
          onClick={() => (printed > length ? setPrinting(true) : void printSheets(plan, title))}
        >
          Print…
        </Button>
        <Button icon={FileCode} waits={off} onClick={() => make(saveSvg)}>
          {length === 1 ? 'Save SVG' : `Save ${length} SVG files`}
        </Button>
        <Button icon={Image} waits={off} onClick={() => setPicturing(true)}>
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
        pages={length}
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
