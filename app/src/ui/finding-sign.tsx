import type { Severity } from '@seamwright/arrangement';
import styles from './finding-sign.module.css';

/** A finding's sign with its number, as on the canvas: an octagon is an error, a triangle a caution. */
export function FindingSign({ severity, number }: { readonly severity: Severity; readonly number: number }) {
  const error = severity === 'error';
  return (
    <svg
      className={`${styles.sign} ${styles[severity]}`}
      viewBox="0 0 26 26"
      role="img"
      aria-label={`${error ? 'Error' : 'Caution'} ${number}:`}
    >
      <path d={error ? 'M8.4 2H17.6L24 8.4V17.6L17.6 24H8.4L2 17.6V8.4Z' : 'M13 1.5L25.5 24H0.5Z'} />
      <text x="13" y={error ? 17.6 : 20.8} textAnchor="middle" fontSize={error ? 13 : 12} fontWeight="700">
        {number}
      </text>
    </svg>
  );
}
