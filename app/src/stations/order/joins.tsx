import { distance, type LengthUnit, type Segment } from '@seamwright/geometry';
import type { Join } from '@seamwright/sewing';
import { useWork } from '../../store/work.ts';
import type { Study } from '../../study/study.ts';
import { roughLength } from '../../ui/rough-length.ts';
import { rove } from '../../ui/roving.ts';
import { usePointing } from '../../ui/use-pointing.ts';
import styles from './order-station.module.css';

/** So many are listed. */
const MOST_LISTED = 500;

/** How the finished sections are sewn together, in working order, in words; each shows its seam on the block. */
export function Joins({ study }: { readonly study: Study }) {
  const { joins } = study.plan!;
  if (joins.length === 0) return null;
  return (
    <section className={styles.part} aria-labelledby="joins">
      <h2 id="joins">Joins, in working order</h2>
      <ol className={styles.joins} onKeyDown={rove} aria-labelledby="joins">
        {joins.slice(0, MOST_LISTED).map((join, index) => (
          <JoinLine key={join.makes + join.units.join(' ')} join={join} index={index} study={study} />
        ))}
      </ol>
    </section>
  );
}

interface JoinLineProps {
  readonly join: Join;
  readonly index: number;
  readonly study: Study;
}

function JoinLine({ join, index, study }: JoinLineProps) {
  const unit = useWork((work) => work.history.present.unit);
  const { joins } = study.plan!;
  const { open } = join;
  const closes = joins.flatMap((other, number) =>
    other.open?.closedAfter === index ? [{ number: number + 1, seam: other.open.seam }] : [],
  );
  const pointing = usePointing({
    of: study.drawing,
    seams: [sewnNow(join)],
    added: [...(open === undefined ? [] : [open.seam]), ...closes.map(({ seam }) => seam)],
  });
  return (
    <li>
      <p data-stop tabIndex={index === 0 ? 0 : -1} className={styles.join} {...pointing}>
        {joinWords(join, joins, unit)}
        {closes.map(({ number, seam }) => (
          <strong key={number}>
            {' '}
            Then close the {roughLength(lengthOf(seam), unit)} of seam that step {number} left open.
          </strong>
        ))}
      </p>
    </li>
  );
}

/** The stretch that the join sews; of a partial seam, as far as where it is left open. */
const sewnNow = ({ seam, open }: Join): Segment =>
  open === undefined ? seam : { a: seam.a, b: open.seam.a };

const lengthOf = ({ a, b }: Segment): number => distance(a, b);

/** `Sew A to B in one straight seam of 4 in: that makes AB.` */
function joinWords(join: Join, joins: readonly Join[], unit: LengthUnit): string {
  const { units, makes, open } = join;
  const length = roughLength(lengthOf(sewnNow(join)), unit);
  if (open === undefined) {
    return `Sew ${units[0]} to ${units[1]} in one straight seam of ${length}: that makes ${makes}.`;
  }
  const left = roughLength(lengthOf(open.seam), unit);
  const then = joins[open.closedAfter];
  const when = then === undefined ? 'last of all' : `when ${then.makes} is made`;
  return `Partial seam: sew ${units[0]} to ${units[1]} for ${length} only, and leave the other ${left} of the seam open until it is closed ${when}. That makes ${makes}.`;
}
