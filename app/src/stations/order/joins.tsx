import { distance, type LengthUnit } from '@seamwright/geometry';
import type { Join, SewingPlan } from '@seamwright/sewing';
import { useWork } from '../../store/work.ts';
import { roughLength } from '../../ui/rough-length.ts';
import styles from './order-station.module.css';

/** How the finished sections are sewn together, in working order, in words. */
export function Joins({ plan }: { readonly plan: SewingPlan }) {
  const unit = useWork((work) => work.history.present.unit);
  if (plan.joins.length === 0) return null;
  return (
    <section className={styles.part} aria-labelledby="joins">
      <h2 id="joins">Joins, in working order</h2>
      <ol className={styles.joins}>
        {plan.joins.map((join) => (
          <li key={join.makes}>{joinWords(join, unit)}</li>
        ))}
      </ol>
    </section>
  );
}

/** `Sew A to B in one straight seam of 4 in: that makes AB.` */
function joinWords({ units, makes, seam, partial }: Join, unit: LengthUnit): string {
  const length = roughLength(distance(seam.a, seam.b), unit);
  const how = partial
    ? `half-way along the seam of ${length}, and finish it last`
    : `in one straight seam of ${length}`;
  return `Sew ${units[0]} to ${units[1]} ${how}: that makes ${makes}.`;
}
