import { useEffect, useRef } from 'react';
import { create } from 'zustand';
import { useSettings } from '../store/settings.ts';

/** A key that does something. */
export interface Shortcut {
  /** The key as `KeyboardEvent.key` gives it, with `Mod+`, `Shift+`, `Alt+` before it: `Mod+z`, `?`, `Escape`. */
  readonly keys: string;
  /** What it does, for the list of shortcuts. */
  readonly does: string;
  readonly run: () => void;
  /** False: not now; the key goes on to whoever else wants it. */
  readonly when?: () => boolean;
  /** Also while someone types in a field; `settled`: in one that holds nothing that has not been taken yet. */
  readonly inFields?: boolean | 'settled';
}

interface Registered {
  readonly group: string;
  readonly shortcuts: readonly Shortcut[];
}

/** Everything that keys do at the moment, for the list of shortcuts; the last registered is asked first. */
export const useShortcutList = create<{ readonly registered: readonly Registered[] }>()(() => ({
  registered: [],
}));

/** Registers keys while the component is on the screen. `group` is their heading in the list of shortcuts. */
export function useShortcuts(group: string, shortcuts: readonly Shortcut[]): void {
  const latest = useRef(shortcuts);
  latest.current = shortcuts;
  const names = shortcuts.map((shortcut) => shortcut.keys).join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: registered again only when the keys change
  useEffect(() => {
    const entry: Registered = {
      group,
      shortcuts: latest.current.map((shortcut, index) => ({
        ...shortcut,
        run: () => latest.current[index]?.run(),
        when: () => latest.current[index]?.when?.() ?? true,
      })),
    };
    useShortcutList.setState(({ registered }) => ({ registered: [...registered, entry] }));
    return () =>
      useShortcutList.setState(({ registered }) => ({
        registered: registered.filter((one) => one !== entry),
      }));
  }, [group, names]);
}

const isMac = /Mac|iP(hone|ad)/.test(navigator.platform);

/** `Mod+z` as the maker's keyboard names it: `Ctrl+Z`, `⌘Z`. */
export function keyName(keys: string): string {
  const parts = keys.split(/\+(?=.)/).map((part) => {
    if (part === 'Mod') return isMac ? '⌘' : 'Ctrl';
    if (part === 'Alt') return isMac ? '⌥' : 'Alt';
    if (part === 'Escape') return 'Esc';
    if (part === ' ') return 'Space';
    if (part.startsWith('Arrow')) return { Left: '←', Right: '→', Up: '↑', Down: '↓' }[part.slice(5)] ?? part;
    return part.length === 1 ? part.toUpperCase() : part;
  });
  return parts.join(isMac ? '' : '+');
}

function matches(event: KeyboardEvent, keys: string): boolean {
  const parts = keys.split(/\+(?=.)/);
  const key = parts.at(-1)!;
  const wanted = (name: string) => parts.includes(name) && key !== name;
  const mod = isMac ? event.metaKey : event.ctrlKey;
  if (mod !== wanted('Mod') || event.altKey !== wanted('Alt')) return false;
  // A sign that needs Shift on some keyboards and not on others (?, +) is asked for by itself.
  const letter = /^[a-z]$/i.test(key) || key.length > 1;
  if (letter && event.shiftKey !== wanted('Shift')) return false;
  return event.key.toLowerCase() === key.toLowerCase();
}

/** Whether one character alone does it: those keys can be switched off. */
const isSingle = (keys: string): boolean => [...keys].length === 1;

/** Where typed characters belong to the field and not to us. */
export const typing = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || target.matches('input:not([type=radio],[type=checkbox]), textarea, select'));

/**
 * Whether a field holds nothing of its own, so that undo is the pattern's: one that is typed in says so by `data-settled`, and
 * what is chosen or slid is taken at once.
 */
const isSettled = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('[data-settled=true], select, [type=range], [type=color]');

const isHeard = ({ inFields = false }: Shortcut, target: EventTarget | null): boolean =>
  inFields === true || !typing(target) || (inFields === 'settled' && isSettled(target));

/** Listens for the registered keys on the whole page; called once. */
export function listenForShortcuts(): () => void {
  const listener = (event: KeyboardEvent) => {
    if (event.defaultPrevented || event.isComposing) return;
    const modal = document.querySelector('dialog:modal') !== null;
    const { registered } = useShortcutList.getState();
    for (const { shortcuts } of [...registered].reverse()) {
      for (const shortcut of shortcuts) {
        if (!matches(event, shortcut.keys)) continue;
        // An open dialog has the keyboard; a field has its characters and, while it holds any, its own undo.
        if (modal || !isHeard(shortcut, event.target)) continue;
        if (isSingle(shortcut.keys) && !useSettings.getState().singleKeys) continue;
        if (shortcut.when?.() === false) continue;
        event.preventDefault();
        shortcut.run();
        return;
      }
    }
  };
  window.addEventListener('keydown', listener);
  return () => window.removeEventListener('keydown', listener);
}
