import type { PagePlan, Print } from '@seamwright/pages';
import { useWork } from '../../../store/work.ts';
import { Foldable } from '../../../ui/foldable.tsx';
import { counted, listed } from '../../../ui/plural.ts';
import { roughLength } from '../../../ui/rough-length.ts';
import { showSheet } from '../preview/shown-sheet.ts';
import styles from './panel.module.css';

/** What is to be printed: each foundation, its size, how often, and where it stands. */
export function PrintsPart({ plan }: { readonly plan: PagePlan }) {
  const { prints } = plan;
  const all = prints.reduce((sum, { count }) => sum + count, 0);
  return (
    <Foldable
      id="paper prints"
      title="What to print"
      more={`${counted(prints.length, 'foundation')}, ${counted(all, 'print')}`}
    >
      <table className={styles.prints}>
        <thead>
          <tr>
            <th scope="col">Foundation</th>
            <th scope="col">Block</th>
            <th scope="col">Print</th>
            <th scope="col">Page</th>
          </tr>
        </thead>
        <tbody>
          {prints.map((print) => (
            <PrintRow key={print.key} print={print} />
          ))}
        </tbody>
      </table>
    </Foldable>
  );
}

function PrintRow({ print }: { readonly print: Print }) {
  const unit = useWork((work) => work.history.present.unit);
  const { letters, mirrored, size, count, sheets } = print;
  const [first, last] = [sheets[0]!, sheets.at(-1)!];
  const where = first === last ? `${first + 1}` : `${first + 1}–${last + 1}`;
  const name = listed(letters);
  return (
    <tr>
      <th scope="row">
        {name}
        {mirrored && <small>mirrored</small>}
      </th>
      <td>{roughLength(size.width, unit)}</td>
      <td>{count}</td>
      <td>
        <button
          type="button"
          className={styles.where}
          aria-label={`Foundation ${name}: show page ${where}`}
          onClick={() => showSheet(first)}
        >
          {where}
        </button>
      </td>
    </tr>
  );
}
