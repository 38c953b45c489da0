import { PRESSING_CAUTIONS, type Pressing } from '@seamwright/cloth';
import type { PairsOfJoin } from '@seamwright/pattern';
import type { Join } from '@seamwright/sewing';
import { useEffect, useMemo } from 'react';
import { cutAs, useCuttingHabits } from '../../../store/cutting-habits.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { compareNames } from '../../../study/by-name.ts';
import { type Bulk, type BulkSubject, bulkAsked } from '../../../study/look-ahead-asked.ts';
import type { Study } from '../../../study/study.ts';
import { Button } from '../../../ui/button.tsx';
import { CheckBox } from '../../../ui/check-box.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { counted, listed } from '../../../ui/plural.ts';
import { rove } from '../../../ui/roving.ts';
import { usePointing } from '../../../ui/use-pointing.ts';
import styles from './ahead.module.css';
import type { AheadProps } from './ahead-props.ts';
import { greyOf, showBulk, useBulk } from './bulk-state.ts';
import { pairsOfJoins, press, pressAsUsual, pressedAs } from './pressings.ts';

/** So many places are listed. */
const MOST_LISTED = 8;

/** How many layers lie where once the block is sewn, and what to mind with the iron. */
export function BulkPart(props: AheadProps) {
  return (
    <>
      <Layers {...props} />
      <ul className={styles.cautions}>
        {PRESSING_CAUTIONS.map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </>
  );
}

/** The layers for the pressing that is chosen. */
function Layers({ question: { study, cut }, block: { scale, arrangement, plan } }: AheadProps) {
  const { pairs, pressings } = usePressings(study);
  const { allowance } = cut;
  const subject = useMemo(
    (): BulkSubject => ({
      arrangement,
      plan,
      allowance,
      scale,
      pressings,
    }),
    [arrangement, plan, allowance, scale, pressings],
  );
  const asked = bulkAsked.useAsked();
  const isWanted = asked.of !== null;
  useEffect(() => {
    if (isWanted && bulkAsked.useAsked.getState().of !== subject) bulkAsked.ask(subject);
  }, [isWanted, subject]);
  useEffect(() => bulkAsked.forget, []);
  const found = asked.of === subject ? asked.answer : null;
  return (
    <>
      {!isWanted && (
        <Button
          className={styles.press}
          onClick={() => {
            showBulk(true);
            bulkAsked.ask(subject);
          }}
        >
          Count the layers
        </Button>
      )}
      {isWanted && found === null && (
        <div className={styles.row}>
          <p role="status">Counting the layers of fabric …</p>
          <Button onClick={bulkAsked.forget}>Stop</Button>
        </div>
      )}
      {found !== null && <Found bulk={found} study={study} />}
      <Pressings study={study} pairs={pairs} pressings={pressings} />
    </>
  );
}

/** How each join is pressed, in the plan's order; the same list for as long as nothing of it changes. */
function usePressings({ arrangement, plan, records }: Study): {
  readonly pairs: readonly PairsOfJoin[];
  readonly pressings: readonly Pressing[];
} {
  const said = useWork((work) => currentBlock(work).pressings);
  const open = useCuttingHabits((habits) => habits.pressOpen);
  const pairs = useMemo(() => pairsOfJoins(arrangement!, plan!), [arrangement, plan]);
  const list = pressedAs(pairs, said ?? [], records, open ? 'open' : 'first').join(' ');
  const pressings = useMemo(() => (list === '' ? [] : (list.split(' ') as Pressing[])), [list]);
  return { pairs, pressings };
}

function Found({ bulk: { regions, places }, study }: { readonly bulk: Bulk; readonly study: Study }) {
  const shown = useBulk((state) => state.shown);
  const counts = [...new Set(regions.map(({ layers }) => layers))].sort((p, q) => p - q);
  const most = counts.at(-1) ?? 0;
  const thickest = places.filter(({ layers }) => layers === most).length;
  return (
    <>
      <p role="status">
        {most === 1
          ? 'One layer of fabric everywhere.'
          : `At most ${most} layers of fabric, at ${counted(thickest, 'place')}; paper is not counted.`}
      </p>
      <CheckBox
        label="Show the layers on the block"
        checked={shown}
        onChange={(isChecked) => showBulk(isChecked)}
      />
      {shown && (
        <ul className={styles.greys} aria-label="Layers by grey">
          {counts.map((layers) => (
            <li key={layers}>
              <span style={{ background: greyOf(layers, most) }} aria-hidden="true" />
              {layers}
            </li>
          ))}
        </ul>
      )}
      {most > 1 && (
        <ul className={styles.places} onKeyDown={rove} aria-label="The thickest places">
          {places.slice(0, MOST_LISTED).map(({ layers, patches, at }, i) => (
            <Place key={`${at.x} ${at.y}`} layers={layers} patches={patches} study={study} stop={i === 0} />
          ))}
        </ul>
      )}
    </>
  );
}

interface PlaceProps {
  readonly layers: number;
  readonly patches: readonly number[];
  readonly study: Study;
  /** Whether the Tab key stops here. */
  readonly stop: boolean;
}

function Place({ layers, patches, study, stop }: PlaceProps) {
  const pointing = usePointing({ of: study.drawing, patches });
  const names = patches.map((patch) => study.names[patch] ?? '?').sort(compareNames);
  return (
    <li>
      <p data-stop tabIndex={stop ? 0 : -1} className={styles.place} {...pointing}>
        {counted(layers, 'layer')} {names.length === 1 ? 'at the edge of' : 'where'} {listed(names)}
        {names.length > 1 && ' meet'}
      </p>
    </li>
  );
}

interface PressingsProps {
  readonly study: Study;
  /** Of each join. */
  readonly pairs: readonly PairsOfJoin[];
  readonly pressings: readonly Pressing[];
}

/** How joins are pressed: as usual, and each by itself. */
function Pressings({ study, pairs, pressings }: PressingsProps) {
  const isSaid = useWork((work) => currentBlock(work).pressings !== undefined);
  const open = useCuttingHabits((habits) => habits.pressOpen);
  const { joins } = study.plan!;
  if (joins.length === 0)
    return <p className={styles.small}>Nothing is joined: all seams are pressed under the newer patch.</p>;
  return (
    <>
      <Choice
        label="Usually, joins are pressed"
        value={open ? 'open' : 'side'}
        options={[
          { value: 'side', label: 'To one side' },
          { value: 'open', label: 'Open' },
        ]}
        onChange={(value) => cutAs({ pressOpen: value === 'open' })}
      />
      <details className={styles.joins}>
        <summary>{joins.length === 1 ? 'The join' : `Each of the ${joins.length} joins`}</summary>
        <ul>
          {joins.map((join, k) => (
            <Pressed key={join.makes} join={join} study={study} pairs={pairs[k]!} pressing={pressings[k]!} />
          ))}
        </ul>
        {isSaid && <Button onClick={pressAsUsual}>All as usual</Button>}
      </details>
    </>
  );
}

interface PressedProps {
  readonly join: Join;
  readonly study: Study;
  readonly pairs: PairsOfJoin;
  readonly pressing: Pressing;
}

function Pressed({ join, study, pairs, pressing }: PressedProps) {
  const pointing = usePointing({
    of: study.drawing,
    seams: [join.seam, ...(join.open ? [join.open.seam] : [])],
  });
  const [first, second] = join.units;
  return (
    <li {...pointing}>
      <Choice
        label={`${first} to ${second}, ${join.partial ? 'sewn in part and closed later' : 'pressed'}`}
        value={pressing}
        options={[
          { value: 'first', label: `Under ${first}` },
          { value: 'second', label: `Under ${second}` },
          { value: 'open', label: 'Open' },
        ]}
        onChange={(value) => press(`${first} to ${second}`, pairs, study.records, value)}
      />
    </li>
  );
}
