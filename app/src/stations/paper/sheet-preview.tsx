import { type PagePlan, writeSvg } from '@seamwright/pages';
import { memo, useEffect, useMemo, useRef } from 'react';
import styles from './paper-station.module.css';

interface SheetPreviewProps {
  readonly plan: PagePlan;
  readonly index: number;
  readonly trueSize: boolean;
}

/** One sheet, written by the very writer that saves it. */
export const SheetPreview = memo(function SheetPreview({ plan, index, trueSize }: SheetPreviewProps) {
  const holder = useRef<HTMLDivElement>(null);
  const svg = useMemo(() => writeSvg(plan, index), [plan, index]);

  useEffect(() => {
    // In a tree of its own: the ids of one sheet's groups are those of the next one's.
    const root = holder.current!.shadowRoot ?? holder.current!.attachShadow({ mode: 'open' });
    root.innerHTML = `<style>svg { display: block; ${trueSize ? '' : 'width: 100%; height: auto;'} }</style>${svg}`;
    root.querySelector('svg')?.setAttribute('aria-hidden', 'true');
  }, [svg, trueSize]);

  const sheet = plan.sheets[index]!;
  const holds =
    sheet.sections.length === 1
      ? `foundation ${sheet.sections[0]}`
      : `foundations ${sheet.sections.join(', ')}`;
  return (
    <figure className={styles.sheet} data-true={trueSize}>
      <div ref={holder} className={styles.paper} role="img" aria-label={`Sheet ${index + 1}: ${holds}`} />
      <figcaption>
        Sheet {index + 1} of {plan.sheets.length}: {holds}
      </figcaption>
    </figure>
  );
});
