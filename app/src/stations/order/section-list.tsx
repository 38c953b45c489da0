import { alikeSections } from '@seamwright/pages';
import type { Section } from '@seamwright/sewing';
import { type KeyboardEvent, memo, useEffect, useMemo, useRef, useState } from 'react';
import { select, togglePatch } from '../../store/selection.ts';
import { useWork } from '../../store/work.ts';
import { neighboursOf } from '../../study/neighbours.ts';
import type { Study } from '../../study/study.ts';
import { counted, listed } from '../../ui/plural.ts';
import { rove } from '../../ui/roving.ts';
import { Swatch } from '../../ui/swatch.tsx';
import { copiedFrom, copies, type Likeness } from './copy-words.ts';
import { OrderCostsWords } from './order-costs.tsx';
import styles from './order-station.module.css';
import { patchOf } from './patch-label.ts';

/** Blocks of more patches show their sections closed: nobody reads on through thousands of lines. */
const MOST_OPEN = 200;
/** So many sections, and patches of one section, are listed; the canvas shows the others. */
const MOST_LISTED = 500;

/** The sections with their patches in piecing order. */
export function SectionList({ study }: { readonly study: Study }) {
  const plan = study.plan!;
  const { sections, unheld } = plan;
  const likeness = useMemo(() => ({ sections, alike: alikeSections(plan) }), [plan, sections]);
  const inHand = useWork((work) => work.selection.patches);
  const open = study.names.length <= MOST_OPEN;
  const chosen = new Set(inHand.map((id) => study.sectionOf[patchOf(study, id)]));
  const shown = sections.slice(0, MOST_LISTED);
  return (
    <>
      {shown.map((section, index) => (
        <SectionPart
          key={section.letter}
          section={section}
          index={index}
          study={study}
          likeness={likeness}
          open={open}
          needed={chosen.has(index)}
        />
      ))}
      {shown.length < sections.length && (
        <p className={styles.nothing}>
          And {counted(sections.length - shown.length, 'more section')}, which the block shows.
        </p>
      )}
      {unheld.length > 0 && <Unheld study={study} />}
    </>
  );
}

interface SectionPartProps {
  readonly section: Section;
  readonly index: number;
  readonly study: Study;
  readonly likeness: Likeness;
  /** Open to begin with. */
  readonly open: boolean;
  /** A patch of it is in hand: it opens. */
  readonly needed: boolean;
}

function SectionPart({ section, index, study, likeness, open, needed }: SectionPartProps) {
  const [shown, setShown] = useState(open);
  useEffect(() => {
    if (needed) setShown(true);
  }, [needed]);
  const { letter, order } = section;
  return (
    <details
      className={styles.part}
      open={shown}
      onToggle={(event) => setShown(event.currentTarget.open)}
      aria-label={`Section ${letter}`}
    >
      <summary className={styles.heading}>
        <Swatch letter={letter} section={index} />
        <h2>Section {letter}</h2>
        <span className={styles.count}>{counted(order.length, 'patch', 'patches')}</span>
      </summary>
      {shown && <SectionBody section={section} study={study} likeness={likeness} first={index === 0} />}
    </details>
  );
}

interface SectionBodyProps {
  readonly section: Section;
  readonly study: Study;
  readonly likeness: Likeness;
  /** It is the first of the list, which tells how it is done. */
  readonly first: boolean;
}

function SectionBody({ section, study, likeness, first }: SectionBodyProps) {
  const { letter, order } = section;
  const from = copiedFrom(section, likeness);
  const make = copies(section, likeness);
  // Shift with an arrow adds to what is in hand, as in lists of files.
  const adding = useRef(false);
  const keyDown = (event: KeyboardEvent<HTMLElement>) => {
    adding.current = event.shiftKey;
    rove(event);
  };
  return (
    <>
      {from !== null && <p className={styles.copy}>{from}</p>}
      {make !== null && <p className={styles.copy}>{make}</p>}
      <ol className={styles.patches} onKeyDown={keyDown} aria-label={`Piecing order of section ${letter}`}>
        {order.slice(0, MOST_LISTED).map((patch, position) => (
          <PatchLine
            key={study.records[patch]!.id}
            id={study.records[patch]!.id}
            name={study.names[patch]!}
            note={study.records[patch]!.note}
            does={position === 0 ? 'laid first' : `sewn to ${neighbours(study, section, position)}`}
            first={position === 0}
            adding={adding}
          />
        ))}
      </ol>
      {order.length > MOST_LISTED && (
        <p className={styles.how}>And {counted(order.length - MOST_LISTED, 'more patch', 'more patches')}.</p>
      )}
      {first && order.length > 1 && (
        <p className={styles.how}>
          Lay the first patch on the blank side of its foundation. Sew each of the others along its own seam,
          in this order, with the printed side up.
        </p>
      )}
      <OrderCostsWords section={section} />
    </>
  );
}

/** The patches sewn before that this one's seam runs along: `B1`, `B1, B2 and B3`. */
function neighbours(study: Study, section: Section, position: number): string {
  const patch = section.order[position]!;
  const of = study.sectionOf[patch];
  const place = new Map(section.order.slice(0, position).map((one, i) => [one, i]));
  const touched = neighboursOf(study.arrangement!, patch)
    .map((one) => one.patch)
    .filter((one) => study.sectionOf[one] === of && place.has(one))
    .sort((a, b) => place.get(a)! - place.get(b)!);
  const names = touched.map((one) => study.names[one]!);
  return names.length <= 4 ? listed(names) : `${names[0]} to ${names.at(-1)}`;
}

interface PatchLineProps {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  /** What is done with it: `laid first`, `sewn to B1`. */
  readonly does: string;
  readonly first: boolean;
  /** Whether the arrow that leads here adds to what is in hand. */
  readonly adding: { current: boolean };
}

/** One patch; pressed, it is in hand here and on the canvases. */
const PatchLine = memo(function PatchLine({ id, name, note, does, first, adding }: PatchLineProps) {
  const inHand = useWork((work) => work.selection.patches.includes(id));
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (inHand) button.current?.scrollIntoView({ block: 'nearest' });
  }, [inHand]);
  return (
    <li>
      <button
        ref={button}
        type="button"
        className={styles.patch}
        data-stop
        tabIndex={first ? 0 : -1}
        aria-pressed={inHand}
        onClick={(event) => {
          if (event.shiftKey || event.ctrlKey || event.metaKey) togglePatch(id);
          else select({ patches: inHand ? [] : [id] });
        }}
        // Going through the list by arrows takes each in hand; a press is left to onClick.
        onFocus={(event) => {
          if (!event.currentTarget.matches(':focus-visible')) return;
          if (!adding.current) select({ patches: [id] });
          else if (!inHand) togglePatch(id);
        }}
      >
        <span className={styles.name}>{name}</span>
        <span className={styles.does}>
          {does}
          {note !== '' && ` · ${note}`}
        </span>
      </button>
    </li>
  );
});

function Unheld({ study }: { readonly study: Study }) {
  const { unheld } = study.plan!;
  return (
    <section className={styles.part}>
      <h2>Patches without a foundation</h2>
      <p>
        {counted(unheld.length, 'patch', 'patches')} marked ? cannot be sewn with straight seams as drawn. The
        findings say where to change the drawing.
      </p>
    </section>
  );
}
