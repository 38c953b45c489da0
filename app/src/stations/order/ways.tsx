import type { formatLength } from '@seamwright/geometry';
import { type AlternativeName, type SewingPlan, sameDivision } from '@seamwright/sewing';
import { useId, useRef } from 'react';
import { wish } from '../../store/wishes.ts';
import { currentWishes, useWork } from '../../store/work.ts';
import type { Ways as Plans, Study } from '../../study/study.ts';
import { WAYS } from '../../study/ways.ts';
import { CountField } from '../../ui/count-field.tsx';
import { roughLength } from '../../ui/rough-length.ts';
import station from './order-station.module.css';
import { WayThumbnail } from './way-thumbnail.tsx';
import styles from './ways.module.css';

const NAMES: Readonly<Record<AlternativeName, string>> = {
  'fewest foundations': 'Fewest foundations',
  'most repetition': 'Most repetition',
  'small sections': 'Small sections',
};

/** The ways to sew the block side by side, with their figures; one of them is chosen. */
export function Ways({ study }: { readonly study: Study }) {
  const { partialSeams } = useWork(currentWishes);
  return (
    <>
      {study.plan!.verdict === 'not sewable' ? (
        <p className={styles.same}>There is nothing to compare until the block can be sewn.</p>
      ) : (
        <Comparison study={study} />
      )}
      <label className={styles.partial}>
        <input
          type="checkbox"
          checked={partialSeams}
          onChange={(event) =>
            wish(event.target.checked ? 'Allow partial seams' : 'No partial seams', {
              partialSeams: event.target.checked,
            })
          }
        />
        <span>
          Allow partial seams<small>{partialWords(study)}</small>
        </span>
      </label>
    </>
  );
}

/** What partial seams would be good for in this block. */
function partialWords({ plan, findings }: Study): string {
  if (plan!.verdict === 'partial seams') return ': this block takes them';
  if (plan!.verdict !== 'not sewable') return ', where straight ones do not do';
  const are = (kind: string) => findings.some((finding) => finding.kind === kind);
  if (are('set-in-seam') || are('island')) return ': they would not do here, either';
  return are('interlocked') ? ': they would do here' : ', where straight ones do not do';
}

function Comparison({ study }: { readonly study: Study }) {
  const { choice, mostPatches } = useWork(currentWishes);
  const plans = useLastKnown(study);
  const group = useId();
  return (
    <>
      <table className={styles.ways} aria-busy={WAYS.some((name) => study.ways[name] === undefined)}>
        <caption className="heard">Ways to sew the block</caption>
        <thead>
          <tr>
            <td />
            {WAYS.map((name) => (
              <th key={name} scope="col" data-chosen={name === choice}>
                <label className={styles.way}>
                  <WayThumbnail study={study} plan={plans[name] ?? null} />
                  <span className={styles.pick}>
                    <input
                      type="radio"
                      name={group}
                      checked={name === choice}
                      onChange={() => wish(`Sew by ${name}`, { choice: name })}
                    />
                    {NAMES[name]}
                  </span>
                </label>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {FIGURES.map((figure) => (
            <FigureLine key={figure.name} figure={figure} plans={plans} choice={choice} />
          ))}
        </tbody>
      </table>
      <SameWords plans={plans} />
      <div className={station.inline}>
        <CountField
          label="Most patches in a small section"
          value={mostPatches}
          least={1}
          most={99}
          onChange={(count) => wish('Limit small sections', { mostPatches: count })}
        />
      </div>
    </>
  );
}

/** While plans are being worked out again, their last figures stay: nothing jumps. */
function useLastKnown(study: Study): Plans {
  const last = useRef<{ readonly blockId: string; readonly drawing: unknown; plans: Plans } | null>(null);
  const same = last.current?.blockId === study.blockId && last.current.drawing === study.drawing;
  const plans = same ? { ...last.current!.plans, ...study.ways } : study.ways;
  last.current = { blockId: study.blockId, drawing: study.drawing, plans };
  return plans;
}

interface Figure {
  readonly name: string;
  readonly note?: string;
  /** Smaller is better; what is compared. */
  readonly of: (plan: SewingPlan) => number;
  /** How it is written; the number itself where not given. */
  readonly length?: boolean;
}

const FIGURES: readonly Figure[] = [
  { name: 'Foundations', of: ({ figures }) => figures.foundations },
  { name: 'Different', note: 'mirror images counted once', of: ({ figures }) => figures.templates },
  { name: 'Match points', of: ({ figures }) => figures.matchPoints },
  { name: 'Joining seams', of: ({ figures }) => figures.joinLength, length: true },
  {
    name: 'Largest section',
    of: ({ sections }) => Math.max(0, ...sections.map(({ order }) => order.length)),
  },
];

interface FigureLineProps {
  readonly figure: Figure;
  readonly plans: Plans;
  readonly choice: AlternativeName;
}

function FigureLine({ figure, plans, choice }: FigureLineProps) {
  const unit = useWork((work) => work.history.present.unit);
  const values = WAYS.map((name) => plans[name]).flatMap((plan) =>
    plan === undefined ? [] : [figure.of(plan)],
  );
  const best = Math.min(...values);
  // Where all are alike, none of them is the best.
  const differ = values.some((value) => value > best + SAME_FIGURE);
  return (
    <tr>
      <th scope="row">
        {figure.name}
        {figure.note !== undefined && <small>{figure.note}</small>}
      </th>
      {WAYS.map((name) => {
        const plan = plans[name];
        const value = plan === undefined ? null : figure.of(plan);
        return (
          <td
            key={name}
            data-chosen={name === choice}
            data-best={differ && value !== null && value <= best + SAME_FIGURE}
          >
            {value === null ? '…' : figure.length ? shortLength(value, unit) : value}
            {figure.name === 'Foundations' &&
              plan !== undefined &&
              !plan.provenLeast &&
              name !== 'most repetition' && <small>at least {plan.atLeast}</small>}
          </td>
        );
      })}
    </tr>
  );
}

/** Inches: lengths that differ by less are the same to whoever sews them. */
const SAME_FIGURE = 1 / 32;

/** Without the “about”: in a table of figures to compare, all are. */
const shortLength = (inches: number, unit: Parameters<typeof formatLength>[1]): string =>
  roughLength(inches, unit).replace('about ', '');

/** Which of the ways come out the same. */
function SameWords({ plans }: { readonly plans: Plans }) {
  const [first, ...others] = WAYS.flatMap((name) => {
    const plan = plans[name];
    return plan === undefined ? [] : [{ name, plan }];
  });
  if (first === undefined || others.length < WAYS.length - 1)
    return <p className={styles.same}>Comparing…</p>;
  const same = others.filter(({ plan }) => sameDivision(plan, first.plan));
  if (same.length === others.length) return <p className={styles.same}>All come out the same here.</p>;
  const twin = same[0] ?? (sameDivision(others[0]!.plan, others[1]!.plan) ? others[1]! : undefined);
  if (twin === undefined) return <p className={styles.same}>Each divides the block in another way.</p>;
  const other = same[0] === undefined ? others[0]! : first;
  return (
    <p className={styles.same}>
      {NAMES[twin.name]} comes out the same as {other.name}.
    </p>
  );
}
