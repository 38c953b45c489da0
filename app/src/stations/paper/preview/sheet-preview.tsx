import { type PagePlan, type Paper, writeSvg } from '@seamwright/pages';
import { type CSSProperties, memo, useEffect, useRef, useState } from 'react';
import { useWork } from '../../../store/work.ts';
import styles from './preview.module.css';
import { whatIsOn } from './sheet-words.ts';
import { sheetId } from './shown-sheet.ts';
import { type Zoom, zoomedWidth } from './zoom.ts';

interface SheetPreviewProps {
  readonly plan: PagePlan;
  readonly index: number;
  /** How often it is to be printed. */
  readonly times: number;
  readonly zoom: Zoom;
}

/** One sheet, written by the very writer that saves it, once it comes into sight. */
export const SheetPreview = memo(function SheetPreview({ plan, index, times, zoom }: SheetPreviewProps) {
  const figure = useRef<HTMLElement>(null);
  const holder = useRef<HTMLDivElement>(null);
  const seen = useSeen(figure);
  const unit = useWork((work) => work.history.present.unit);

  useEffect(() => {
    if (!seen) return;
    // In a tree of its own: the ids of one sheet's groups are those of the next one's.
    const root = holder.current!.shadowRoot ?? holder.current!.attachShadow({ mode: 'open' });
    root.innerHTML = `<style>svg { display: block; width: 100%; height: auto; }</style>${writeSvg(plan, index)}`;
    root.querySelector('svg')?.setAttribute('aria-hidden', 'true');
  }, [seen, plan, index]);

  const { paper, sheets } = plan;
  const holds = whatIsOn(plan, index, unit);
  return (
    <figure ref={figure} id={sheetId(index)} className={styles.sheet} style={aspect(paper)} tabIndex={-1}>
      <div
        ref={holder}
        className={styles.paper}
        style={{ inlineSize: zoomedWidth(zoom, paper), aspectRatio: `${paper.width} / ${paper.height}` }}
        role="img"
        aria-label={`Page ${index + 1}: ${holds}`}
      />
      <figcaption>
        Page {index + 1} of {sheets.length}: {holds}
        {times > 1 && ` · print ${times} times`}
      </figcaption>
    </figure>
  );
});

/** The sheet's width by its height, for a stylesheet that knows how high a sheet may be. */
const aspect = ({ width, height }: Paper): CSSProperties => ({ '--aspect': width / height }) as object;

/** Whether the element was in sight, or near it, at least once. */
function useSeen(element: React.RefObject<HTMLElement | null>): boolean {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    if (seen) return;
    const observer = new IntersectionObserver(
      (entries) => entries.some(({ isIntersecting }) => isIntersecting) && setSeen(true),
      { rootMargin: '400px' },
    );
    observer.observe(element.current!);
    return () => observer.disconnect();
  }, [element, seen]);
  return seen;
}
