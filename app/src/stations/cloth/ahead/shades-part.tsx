import { type ShadeWish, type ShowThrough, showThrough } from '@seamwright/cloth';
import type { Segment } from '@seamwright/geometry';
import { resolvePins } from '@seamwright/pattern';
import { useEffect, useMemo } from 'react';
import { LEAST_DIFFERENCE } from '../../../colour/contrast.ts';
import { lightnessOf } from '../../../colour/lightness.ts';
import { fabricsOf } from '../../../store/fabrics.ts';
import { announce } from '../../../store/notices.ts';
import { addPins } from '../../../store/wishes.ts';
import { useWork } from '../../../store/work.ts';
import { type ShadesSubject, shadesAsked } from '../../../study/look-ahead-asked.ts';
import type { Study } from '../../../study/study.ts';
import { Button } from '../../../ui/button.tsx';
import { counted, listed } from '../../../ui/plural.ts';
import { rove } from '../../../ui/roving.ts';
import { usePointing } from '../../../ui/use-pointing.ts';
import styles from './ahead.module.css';
import type { AheadProps } from './ahead-props.ts';

/** So many are listed. */
const MOST_LISTED = 60;

/** Where dark allowances lie under lighter patches, and the order that avoids it. */
export function ShadesPart({ question: { study }, block: { fabrics: cutFrom } }: AheadProps) {
  const fabrics = useWork(fabricsOf);
  const subject = useMemo((): ShadesSubject => {
    const { arrangement, plan, wishes, records } = study;
    const known = new Map(fabrics.map(({ id, colour }) => [id, lightnessOf(colour)]));
    return {
      arrangement: arrangement!,
      plan: plan!,
      lightness: cutFrom.map((id) => known.get(id ?? '') ?? null),
      least: LEAST_DIFFERENCE,
      pins: resolvePins(wishes.pins, records).pins,
    };
  }, [study, cutFrom, fabrics]);
  const found = useMemo(() => {
    const { arrangement, plan, lightness: light } = subject;
    return showThrough(arrangement, plan, (patch) => light[patch] ?? undefined, LEAST_DIFFERENCE);
  }, [subject]);
  useEffect(() => {
    if (found.length === 0) return;
    shadesAsked.ask(subject);
    return shadesAsked.forget;
  }, [found, subject]);
  const asked = shadesAsked.useAsked();
  if (subject.lightness.every((light) => light === null))
    return <p>Nothing shows before patches have fabrics: choose some first.</p>;
  if (found.length === 0)
    return <p>No dark allowance lies under a lighter patch. At joins, press to the darker side.</p>;
  const nameOf = (patch: number) => {
    const fabric = fabrics.find(({ id }) => id === cutFrom[patch])?.name ?? 'no fabric yet';
    return `${study.names[patch]} (${fabric})`;
  };
  return (
    <>
      <p>
        {found.length === 1
          ? 'The allowance of a darker patch lies under this lighter one, and may be seen through it:'
          : `Allowances of darker patches lie under these ${found.length} lighter ones, and may be seen through them:`}
      </p>
      <ul className={styles.places} onKeyDown={rove} aria-label="Where dark shows through">
        {found.slice(0, MOST_LISTED).map((place, i) => (
          <Place key={place.patch} place={place} study={study} stop={i === 0} nameOf={nameOf} />
        ))}
      </ul>
      {found.length > MOST_LISTED && <p>And {found.length - MOST_LISTED} more.</p>}
      {asked.of === subject && <Wishes wishes={asked.answer} study={study} />}
    </>
  );
}

interface PlaceProps {
  readonly place: ShowThrough;
  readonly study: Study;
  /** Whether the Tab key stops here. */
  readonly stop: boolean;
  readonly nameOf: (patch: number) => string;
}

function Place({ place: { patch, under }, study, stop, nameOf }: PlaceProps) {
  const { edges, vertices } = study.arrangement!;
  const seams = under.flatMap(({ edges: along }) =>
    along.map((edge): Segment => {
      const { from, to } = edges[edge]!;
      return { a: vertices[from]!.at, b: vertices[to]!.at };
    }),
  );
  const pointing = usePointing({ of: study.drawing, patches: [patch], seams });
  return (
    <li>
      <p data-stop tabIndex={stop ? 0 : -1} className={styles.place} {...pointing}>
        {nameOf(patch)} over {listed(under.map((one) => nameOf(one.patch)))}
      </p>
    </li>
  );
}

/** What each section's better order would leave. */
function Wishes({ wishes, study }: { readonly wishes: readonly ShadeWish[] | null; readonly study: Study }) {
  if (wishes === null) return <p role="status">Looking for an order that avoids it …</p>;
  const better = wishes.filter(({ pins }) => pins.length > 0);
  const stuck = wishes.filter(({ now, pins }) => now > 0 && pins.length === 0);
  const take = () => {
    const pins = better.flatMap((wish) => wish.pins);
    const idOf = (patch: number) => study.records[patch]!.id;
    addPins(
      'Sew light patches before dark ones',
      pins.flatMap((pin) =>
        pin.kind === 'before' ? [{ kind: pin.kind, patch: idOf(pin.patch), than: idOf(pin.than) }] : [],
      ),
    );
    announce(`${counted(pins.length, 'pin')} added: light patches come before dark ones`);
  };
  const pins = better.reduce((sum, wish) => sum + wish.pins.length, 0);
  return (
    <>
      {better.length > 0 && (
        <>
          <p role="status">{better.map(wishWords).join(' ')}</p>
          <Button className={styles.press} onClick={take}>
            Sew in that order
          </Button>
          <p className={styles.small}>
            That adds {pins === 1 ? 'a pin' : `${pins} pins`} for light patches to come before dark ones;
            Order lists {pins === 1 ? 'it' : 'them'}.
          </p>
        </>
      )}
      {stuck.length > 0 && (
        <p role="status">
          No better order was found for section{stuck.length > 1 && 's'}{' '}
          {listed(stuck.map(({ letter }) => letter))}. Trim the dark allowance a little narrower than the
          light one.
        </p>
      )}
    </>
  );
}

const wishWords = ({ letter, now, better }: ShadeWish): string =>
  better === 0
    ? `Section ${letter} can be sewn so that none shows.`
    : `Section ${letter} can be sewn so that only ${better} of ${now} ${better === 1 ? 'is' : 'are'} left.`;
