import { useMemo } from 'react';
import { sectionLook, TILE, tile } from '../canvas/section-look.ts';
import { useTheme } from '../canvas/theme.ts';
import styles from './swatch.module.css';

/** A section's letter on its tint and hatching, as on the canvas. */
export function Swatch({ letter, section }: { readonly letter: string; readonly section: number }) {
  const theme = useTheme();
  const image = useMemo(
    () => `url(${tile(sectionLook(section, theme.dark), theme.ink).toDataURL()})`,
    [section, theme],
  );
  return (
    <span
      className={styles.swatch}
      style={{ backgroundImage: image, backgroundSize: `${TILE}px` }}
      aria-hidden="true"
    >
      {letter}
    </span>
  );
}
