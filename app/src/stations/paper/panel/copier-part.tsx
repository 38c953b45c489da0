import { formatLength } from '@seamwright/geometry';
import { photocopyTable } from '@seamwright/pages';
import { useSettings } from '../../../store/settings.ts';
import { useWork } from '../../../store/work.ts';
import { Foldable } from '../../../ui/foldable.tsx';
import styles from './panel.module.css';

/** Percentages that photocopiers offer by a key of their own, and halves and doubles (common practice). */
const PERCENTAGES = [50, 75, 100, 125, 150, 200];

/** What a photocopier makes of the seam allowance, and why not to use one. */
export function CopierPart() {
  const allowance = useSettings((settings) => settings.allowance);
  const unit = useWork((work) => work.history.present.unit);
  const { rows, why } = photocopyTable(PERCENTAGES, allowance);
  return (
    <Foldable id="paper copier" title="Photocopiers" more="why not">
      <p>{why}</p>
      <table className={styles.prints}>
        <thead>
          <tr>
            <th scope="col">Copied at</th>
            <th scope="col">Allowance becomes</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ percentage, becomes }) => (
            <tr key={percentage}>
              <th scope="row">{percentage} %</th>
              <td>{formatLength(becomes, unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Foldable>
  );
}
