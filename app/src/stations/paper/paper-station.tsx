import { sentence } from '@seamwright/geometry';
import { FindingList } from '../../shell/finding-list.tsx';
import { goTo } from '../../store/places.ts';
import { useWork } from '../../store/work.ts';
import { FAILED, layOutAgain, STOPPED } from '../../study/lay-out.ts';
import { verdictWords } from '../../study/verdict.ts';
import { Button } from '../../ui/button.tsx';
import { handOn } from '../../ui/hand-on.ts';
import frame from '../frame.module.css';
import { Outputs } from './outputs/outputs.tsx';
import { handOnToNext, LayingProgress, NEXT } from './outputs/progress.tsx';
import { CopierPart } from './panel/copier-part.tsx';
import { MarksPart, Sharing } from './panel/marks-part.tsx';
import panel from './panel/panel.module.css';
import { PaperChoiceField } from './panel/paper-choice.tsx';
import { PlacingPart } from './panel/placing-part.tsx';
import { PrinterPart } from './panel/printer-part.tsx';
import { PrintsPart } from './panel/prints-part.tsx';
import { Sizes } from './panel/sizes.tsx';
import styles from './paper-station.module.css';
import { SheetsShown } from './preview/sheets-shown.tsx';
import { usePrintable } from './use-printable.ts';

const goesToDraft = handOn('#station');

/** Where the foundations are seen on their sheets, printed and saved. */
export default function PaperStation() {
  const ready = usePrintable(useWork((work) => work.sheets?.plan ?? null));
  const hopeless = useWork(
    ({ study }) => study !== null && (study.problem !== null || study.plan?.verdict === 'not sewable'),
  );
  return (
    <div className={`${frame.station} ${styles.station}`} data-hopeless={hopeless}>
      <section
        className={`${frame.panel} ${frame.parts} ${styles.panel}`}
        aria-label="Printing"
        hidden={hopeless}
      >
        {ready === null ? (
          <div className={styles.laying}>
            <LayingProgress />
          </div>
        ) : (
          <Outputs {...ready} />
        )}
        <div className={panel.first}>
          <Sizes />
          <PaperChoiceField />
          <Sharing />
        </div>
        <PrinterPart />
        <MarksPart />
        <PlacingPart />
        {ready !== null && <PrintsPart plan={ready.plan} />}
        <CopierPart />
        {ready !== null && <Cautions />}
      </section>
      {ready === null ? <NoSheets /> : <SheetsShown plan={ready.plan} />}
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
  if (problem === null || study === null) return <div />;
  const unsewable = study.plan?.verdict === 'not sewable';
  return (
    <section className={styles.none} aria-label="Sheets">
      <h2>No sheets yet</h2>
      <p>{unsewable ? verdictWords(study).long[0] : sentence(problem)}</p>
      {(problem === STOPPED || problem === FAILED) && (
        <Button id={NEXT} ref={handOnToNext} onClick={layOutAgain}>
          Lay them out
        </Button>
      )}
      {(unsewable || study.problem !== null) && (
        <>
          <FindingList />
          <Button ref={goesToDraft} onClick={() => goTo('draft')}>
            Go to the drawing
          </Button>
        </>
      )}
    </section>
  );
}
