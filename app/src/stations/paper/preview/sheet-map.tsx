import type { PagePlan, Sheet } from '@seamwright/pages';
import { memo } from 'react';
import { useWork } from '../../../store/work.ts';
import { rove } from '../../../ui/roving.ts';
import styles from './preview.module.css';
import { whatIsOn } from './sheet-words.ts';
import { showSheet } from './shown-sheet.ts';

/** Every sheet in small, with the outlines that stand on it; a press shows it. */
export const SheetMap = memo(function SheetMap({ plan }: { readonly plan: PagePlan }) {
  const unit = useWork((work) => work.history.present.unit);
  const { paper, sheets } = plan;
  return (
    <nav aria-label="Map of the pages" className={styles.map}>
      <ol onKeyDown={rove}>
        {sheets.map((sheet, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a sheet is known by its number
          <li key={index}>
            <button
              type="button"
              className={styles.jump}
              data-stop
              tabIndex={index === 0 ? 0 : -1}
              aria-label={`Show page ${index + 1}: ${whatIsOn(plan, index, unit)}`}
              onClick={() => showSheet(index)}
            >
              <svg viewBox={`0 0 ${paper.width} ${paper.height}`} aria-hidden="true">
                <path d={outlines(sheet)} />
              </svg>
              {index + 1}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
});

const outlines = ({ marks }: Sheet): string =>
  marks
    .flatMap((mark) =>
      mark.kind === 'path' && mark.role === 'finished-outline'
        ? [`M${mark.points.map(({ x, y }) => `${Math.round(x)} ${Math.round(y)}`).join('L')}Z`]
        : [],
    )
    .join('');
