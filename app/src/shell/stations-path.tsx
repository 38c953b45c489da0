import { STATIONS, type Station } from '../stations/stations.ts';
import { goTo } from '../store/places.ts';
import { useWork } from '../store/work.ts';
import styles from './stations-path.module.css';

/** The path of the work: the stations in order, each with a word on how far the work is there. */
export function StationsPath() {
  return (
    <nav aria-label="Stations" className={styles.path}>
      <ol>
        {STATIONS.map((station) => (
          <Stop key={station.id} station={station} />
        ))}
      </ol>
    </nav>
  );
}

function Stop({ station }: { readonly station: Station }) {
  const here = useWork((work) => work.station === station.id);
  const word = useWork(station.word);
  return (
    <li>
      <button
        type="button"
        className={styles.stop}
        aria-current={here ? 'page' : undefined}
        onClick={() => goTo(station.id)}
      >
        <span className={styles.name}>{station.name}</span> <span className={styles.word}>{word}</span>
      </button>
    </li>
  );
}
