import { type PagePlan, type Sheet, writeSvg } from '@seamwright/pages';
import { memo, useEffect, useMemo, useRef } from 'react';
import { listed } from '../../ui/plural.ts';
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

  const holds = whatIsOn(plan.sheets[index]!);
  return (
    <figure className={styles.sheet} data-true={trueSize}>
      <div ref={holder} className={styles.paper} role="img" aria-label={`Sheet ${index + 1}: ${holds}`} />
      <figcaption>
        Sheet {index + 1} of {plan.sheets.length}: {holds}
      </figcaption>
    </figure>
  );
});

/** `foundation A`, `foundations A, B`; `foundations for A and C; B` where one is for several sections. */
function whatIsOn({ sections, printedFor }: Sheet): string {
  const noun = sections.length === 1 ? 'foundation' : 'foundations';
  return printedFor === undefined
    ? `${noun} ${sections.join(', ')}`
    : `${noun} for ${printedFor.map(listed).join('; ')}`;
}
