import { useSyncExternalStore } from 'react';

/** The style sheet's colours as a canvas needs them: plain strings, read again when the system's preference changes. */
const NAMES = [
  'sheet',
  'ink',
  'ink-soft',
  'line',
  'line-strong',
  'accent',
  'accent-soft',
  'on-accent',
  'wrong',
  'on-wrong',
  'caution',
  'on-caution',
] as const;

export type ThemeColour = (typeof NAMES)[number];
export type Theme = Readonly<Record<ThemeColour, string>> & { readonly dark: boolean };

const dark = window.matchMedia('(prefers-color-scheme: dark)');

let current: Theme | null = null;

function read(): Theme {
  if (current === null) {
    const style = getComputedStyle(document.documentElement);
    const colours = NAMES.map((name) => [name, style.getPropertyValue(`--${name}`).trim()] as const);
    current = { ...(Object.fromEntries(colours) as Record<ThemeColour, string>), dark: dark.matches };
  }
  return current;
}

function subscribe(changed: () => void): () => void {
  const listener = () => {
    current = null;
    changed();
  };
  dark.addEventListener('change', listener);
  return () => dark.removeEventListener('change', listener);
}

export const useTheme = (): Theme => useSyncExternalStore(subscribe, read);

/** The face that canvases write in; the style sheet's own. */
export const FACE = '"Source Sans 3", system-ui, sans-serif';
