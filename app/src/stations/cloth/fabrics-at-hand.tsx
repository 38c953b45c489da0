import { useId } from 'react';
import { addPlainFabrics, fabricsOf } from '../../store/fabrics.ts';
import { useWork } from '../../store/work.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { fabricAtHand, useBrush } from './brush.ts';
import styles from './cloth-station.module.css';
import { REACHES } from './reach.ts';

/** The pattern's fabrics: the one at hand is what presses on the block cut patches from. */
export function FabricsAtHand() {
  const fabrics = useWork(fabricsOf);
  const brush = useBrush();
  const name = useId();
  const atHand = fabricAtHand(brush, fabrics)?.id ?? null;
  if (fabrics.length === 0)
    return (
      <>
        <h2>Fabric at hand</h2>
        <p>The pattern has no fabrics yet.</p>
        <Button onClick={addPlainFabrics}>Take some plain ones</Button>
      </>
    );
  const options = [
    ...fabrics.map(({ id, name: words, colour, swatch }) => ({ id, words, colour, swatch })),
    NO_FABRIC,
  ];
  return (
    <>
      <fieldset className={styles.fabrics}>
        <legend>Fabric at hand</legend>
        {options.map(({ id, words, colour, swatch }) => (
          <label key={id ?? ''} className={styles.option}>
            <input
              type="radio"
              className="pressed-through"
              name={name}
              checked={atHand === id}
              onChange={() => useBrush.setState({ fabric: id })}
            />
            <span
              className={colour === null ? `${styles.swatch} ${styles.bare}` : styles.swatch}
              style={
                colour === null
                  ? undefined
                  : {
                      background:
                        swatch === undefined ? colour : `center / cover url(${swatch.picture.data})`,
                    }
              }
            />
            <span className={styles.name}>{words}</span>
          </label>
        ))}
      </fieldset>
      <Choice
        label="A press paints"
        value={brush.reach}
        options={REACHES}
        onChange={(reach) => useBrush.setState({ reach })}
      />
    </>
  );
}

const NO_FABRIC = { id: null, words: 'Take the fabric off', colour: null, swatch: undefined } as const;
