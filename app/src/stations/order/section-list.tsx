import type { Section } from '@seamwright/sewing';
import { memo, useEffect, useRef } from 'react';
import { select } from '../../store/selection.ts';
import { useWork } from '../../store/work.ts';
import type { Study } from '../../study/study.ts';
import { counted, listed } from '../../ui/plural.ts';
import { rove } from '../../ui/roving.ts';
import { Swatch } from '../../ui/swatch.tsx';
import styles from './order-station.module.css';

/** The sections with their patches in piecing order. */
export function SectionList({ study }: { readonly study: Study }) {
  const { sections, unheld } = study.plan!;
  return (
    <>
      {sections.map((section, index) => (
        <SectionPart key={section.letter} section={section} index={index} study={study} first={index === 0} />
      ))}
      {unheld.length > 0 && <Unheld study={study} />}
    </>
  );
}

interface SectionPartProps {
  readonly section: Section;
  readonly index: number;
  readonly study: Study;
  /** It is the first of the list, which tells how it is done. */
  readonly first: boolean;
}

function SectionPart({ section, index, study, first }: SectionPartProps) {
  const heading = `section-${section.letter}`;
  return (
    <section className={styles.part} aria-labelledby={heading}>
      <header className={styles.heading}>
        <Swatch letter={section.letter} section={index} />
        <h2 id={heading}>Section {section.letter}</h2>
        <span>{counted(section.order.length, 'patch', 'patches')}</span>
      </header>
      <ol
        className={styles.patches}
        onKeyDown={rove}
        aria-label={`Piecing order of section ${section.letter}`}
      >
        {section.order.map((patch, position) => (
          <PatchLine
            key={study.records[patch]!.id}
            id={study.records[patch]!.id}
            name={study.names[patch]!}
            note={study.records[patch]!.note}
            does={position === 0 ? 'laid first' : `sewn to ${neighbours(study, section, position)}`}
            first={position === 0}
          />
        ))}
      </ol>
      {first && section.order.length > 1 && (
        <p className={styles.how}>
          Lay the first patch on the blank side of its foundation. Sew each of the others along its own seam,
          in this order, with the printed side up.
        </p>
      )}
    </section>
  );
}

/** The patches sewn before that this one's seam runs along: `B1`, `B1, B2 and B3`. */
function neighbours(study: Study, section: Section, position: number): string {
  const { edges } = study.arrangement!;
  const before = new Set(section.order.slice(0, position));
  const patch = section.order[position]!;
  const touched = new Set<number>();
  for (const { left, right } of edges) {
    if (left === patch && before.has(right)) touched.add(right);
    if (right === patch && before.has(left)) touched.add(left);
  }
  return listed(section.order.filter((one) => touched.has(one)).map((one) => study.names[one]!));
}

interface PatchLineProps {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  /** What is done with it: `laid first`, `sewn to B1`. */
  readonly does: string;
  readonly first: boolean;
}

/** One patch; pressed, it is in hand here and on the canvases. */
const PatchLine = memo(function PatchLine({ id, name, note, does, first }: PatchLineProps) {
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
        onClick={() => select({ patches: inHand ? [] : [id] })}
        // Going through the list by arrows takes each in hand; a press is left to onClick.
        onFocus={(event) => event.currentTarget.matches(':focus-visible') && select({ patches: [id] })}
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
