import { type PagePlan, printsOf } from '@seamwright/pages';
import { useMemo, useState } from 'react';
import { Choice } from '../../../ui/choice.tsx';
import styles from './preview.module.css';
import { SheetMap } from './sheet-map.tsx';
import { SheetPreview } from './sheet-preview.tsx';
import { ZOOMS, type Zoom } from './zoom.ts';

/** So many sheets are seen at a glance in the overview: no map is needed to find one. */
const AT_A_GLANCE = 6;

/** The pages of the file, in a size of the maker's choice, with a map to jump to one. */
export function SheetsShown({ plan }: { readonly plan: PagePlan }) {
  const [zoom, setZoom] = useState<Zoom>('overview');
  const { times } = useMemo(() => printsOf(plan), [plan]);
  const { length } = plan.sheets;
  return (
    <div className={styles.shown}>
      <div className={styles.bar}>
        <Choice bare label="Sheets shown in" value={zoom} options={ZOOMS} onChange={setZoom} />
        {(length > AT_A_GLANCE || (length > 1 && zoom !== 'overview')) && <SheetMap plan={plan} />}
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolled by keys */}
      <section className={styles.sheets} aria-label="Sheets" data-zoom={zoom} tabIndex={0}>
        {times.map((count, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a sheet is known by its number
          <SheetPreview key={index} plan={plan} index={index} times={count} zoom={zoom} />
        ))}
      </section>
    </div>
  );
}
