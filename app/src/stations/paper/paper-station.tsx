import { sentence } from '@seamwright/geometry';
import type { PagePlan, Printable } from '@seamwright/pages';
import { FileCode, FileDown } from 'lucide-react';
import { useState } from 'react';
import { FindingList } from '../../shell/finding-list.tsx';
import { goTo } from '../../store/places.ts';
import { useSettings } from '../../store/settings.ts';
import { currentBlock, useWork } from '../../store/work.ts';
import { sheetsAreDue } from '../../study/lay-out.ts';
import { verdictWords } from '../../study/verdict.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { counted } from '../../ui/plural.ts';
import styles from './paper-station.module.css';
import { savePdf, saveSvg } from './save.ts';
import { SheetControls } from './sheet-controls.tsx';
import { SheetPreview } from './sheet-preview.tsx';
import { usePrintable } from './use-printable.ts';

type Zoom = 'overview' | 'true';

const ZOOMS = [
  { value: 'overview', label: 'Overview' },
  { value: 'true', label: 'True size' },
] as const satisfies readonly { value: Zoom; label: string }[];

/** Where the foundations are seen on their sheets, and saved. */
export default function PaperStation() {
  const plan = useWork((work) => work.sheets?.plan ?? null);
  const ready = usePrintable(plan);
  const hopeless = useWork(
    ({ study }) => study !== null && (study.problem !== null || study.plan?.verdict === 'not sewable'),
  );
  const [zoom, setZoom] = useState<Zoom>('overview');
  return (
    <div className={styles.station} data-hopeless={hopeless}>
      <section className={styles.panel} aria-label="Printing" hidden={hopeless}>
        {ready !== null && plan !== null && <Save plan={plan} ready={ready} />}
        <SheetControls />
        {ready !== null && (
          <>
            <Choice label="Sheets shown in" value={zoom} options={ZOOMS} onChange={setZoom} />
            <Cautions />
          </>
        )}
      </section>
      <section className={styles.sheets} aria-label="Sheets" data-zoom={zoom}>
        {ready === null ? (
          <NoSheets />
        ) : (
          ready.plan.sheets.map((_, index) => (
            <SheetPreview
              // biome-ignore lint/suspicious/noArrayIndexKey: a sheet is known by its number
              key={index}
              plan={ready.plan}
              index={index}
              trueSize={zoom === 'true'}
            />
          ))
        )}
      </section>
    </div>
  );
}

function Save({ plan, ready }: { readonly plan: PagePlan; readonly ready: Printable }) {
  const title = useWork((work) => currentBlock(work).name);
  const [busy, setBusy] = useState(false);
  // What the sheets are laid out for is partly there.
  useSettings();
  const due = useWork(sheetsAreDue);
  const count = plan.sheets.length;
  const save = async (write: (plan: PagePlan, title: string) => Promise<void>) => {
    setBusy(true);
    await write(ready.plan, title);
    setBusy(false);
  };
  return (
    <div className={styles.save}>
      <h2>
        {counted(count, 'sheet')} of {plan.paper.label}
      </h2>
      {ready.notes.map((note) => (
        <p key={note} className={styles.note}>
          {note}
        </p>
      ))}
      <Button look="main" icon={FileDown} disabled={busy || due} onClick={() => void save(savePdf)}>
        {busy ? 'Making the file…' : due ? 'Laying out the sheets…' : 'Save PDF'}
      </Button>
      <Button icon={FileCode} disabled={busy || due} onClick={() => void save(saveSvg)}>
        {count === 1 ? 'Save SVG' : `Save ${count} SVG files`}
      </Button>
    </div>
  );
}

/** What printing true to size takes; the reasons and sources are in the guide. */
function Cautions() {
  return (
    <section className={styles.cautions} aria-label="Before you print">
      <h2>Before you print</h2>
      <ul>
        <li>Print at 100 %, with scaling off.</li>
        <li>Measure a check square on the first sheet before you print the rest.</li>
        <li>
          The print is the mirror image of the block: sew on the printed side, with the fabric on the blank
          one.
        </li>
      </ul>
    </section>
  );
}

/** Why there are no sheets, and what to do about it. */
function NoSheets() {
  const study = useWork((work) => work.study);
  const problem = useWork((work) => work.sheets?.problem ?? study?.problem ?? null);
  if (problem === null || study === null) return null;
  const unsewable = study.plan?.verdict === 'not sewable';
  return (
    <div className={styles.none}>
      <h2>No sheets yet</h2>
      <p>{unsewable ? verdictWords(study).long[0] : sentence(problem)}</p>
      {(unsewable || study.problem !== null) && (
        <>
          <FindingList />
          <Button onClick={() => goTo('draft')}>Go to the drawing</Button>
        </>
      )}
    </div>
  );
}
