import { fabricIn } from '@seamwright/pattern';
import { useMemo } from 'react';
import { type AlikeFabrics, alikeInLightness } from '../../colour/contrast.ts';
import { fabricsOf } from '../../store/fabrics.ts';
import { currentBlock, currentColourway, useWork, type Work } from '../../store/work.ts';
import type { Study } from '../../study/study.ts';
import { CheckBox } from '../../ui/check-box.tsx';
import { Foldable } from '../../ui/foldable.tsx';
import { counted, listed } from '../../ui/plural.ts';
import { rove } from '../../ui/roving.ts';
import { usePointing } from '../../ui/use-pointing.ts';
import styles from './cloth-station.module.css';
import { useGreys, useShade } from './shades.ts';

const NONE: readonly AlikeFabrics[] = [];

/** Neighbours that are hardly told apart by light and dark, and the view in greys. */
export function ContrastPart({ study }: { readonly study: Study }) {
  const alike = useAlike(study);
  const several = useWork(wearsSeveral);
  const { greys } = useGreys();
  return (
    <Foldable
      id="contrast"
      title="Light and dark"
      more={alike.length === 0 ? '' : counted(alike.length, 'pair that looks alike', 'pairs that look alike')}
    >
      <div className={styles.content}>
        <CheckBox
          label="Show the fabrics in greys"
          checked={greys}
          onChange={(isChecked) => useGreys.setState({ greys: isChecked })}
        />
        {!several ? (
          <p>
            Choose fabrics first: those that lie side by side and are as light as each other are named here.
          </p>
        ) : alike.length === 0 ? (
          <p>All fabrics that lie side by side are told apart by light and dark.</p>
        ) : (
          <>
            <p>
              These lie side by side and are as light as each other: from a few steps away their seams are not
              seen.
            </p>
            <ul aria-label="Fabrics alike in lightness" className={styles.patches} onKeyDown={rove}>
              {alike.map((pair, i) => (
                <AlikePair
                  key={pair.fabrics.map(({ id }) => id).join(' ')}
                  pair={pair}
                  study={study}
                  stop={i === 0}
                />
              ))}
            </ul>
          </>
        )}
      </div>
    </Foldable>
  );
}

/** Whether the open block has two fabrics at least: of fewer there is nothing to tell. */
function wearsSeveral(work: Work): boolean {
  const colourway = currentColourway(work);
  const worn = currentBlock(work).patches.map((record) => fabricIn(record, colourway));
  return new Set(worn.filter((id) => id !== undefined)).size > 1;
}

function useAlike({ arrangement, records: ids }: Study): readonly AlikeFabrics[] {
  const records = useWork((work) => currentBlock(work).patches);
  const colourway = useWork(currentColourway);
  const fabrics = useWork(fabricsOf);
  return useMemo(() => {
    if (arrangement === null) return NONE;
    const byId = new Map(fabrics.map((fabric) => [fabric.id, fabric]));
    const worn = new Map(records.map((record) => [record.id, fabricIn(record, colourway) ?? '']));
    return alikeInLightness(arrangement, (patch) => byId.get(worn.get(ids[patch]?.id ?? '') ?? ''));
  }, [arrangement, ids, records, colourway, fabrics]);
}

/** So many pairs of patches are named; of more, how many there are. */
const NAMED = 3;

interface AlikePairProps {
  readonly pair: AlikeFabrics;
  readonly study: Study;
  readonly stop: boolean;
}

function AlikePair({ pair: { fabrics, neighbours, seams }, study, stop }: AlikePairProps) {
  const shade = useShade();
  const pointing = usePointing({ of: study.drawing, seams });
  const names = neighbours
    .slice(0, NAMED)
    .map((two) => two.map((patch) => study.names[patch] ?? '?').join('–'));
  const more = neighbours.length - names.length;
  return (
    <li>
      {/* Nothing is pressed: it has the focus so that the keyboard can show its seams too. */}
      <div className={styles.pair} data-stop role="note" tabIndex={stop ? 0 : -1} {...pointing}>
        {fabrics.map(({ id, colour }) => (
          <span key={id} className={styles.swatch} style={{ background: shade(colour) }} />
        ))}
        <span className={styles.name}>
          {fabrics.map(({ name }) => name).join(' beside ')}
          <small>{listed(more > 0 ? [...names, `${more} more`] : names)}</small>
        </span>
      </div>
    </li>
  );
}
