import type { KeyboardEvent } from 'react';

const STEPS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 };

/**
 * For a long list of buttons that is one stop of the Tab key: arrows, Home and End go through the elements marked
 * `data-stop` inside the list. Put it on the list as `onKeyDown`, and `tabIndex` 0 on one stop and -1 on the others.
 */
export function rove(event: KeyboardEvent<HTMLElement>): void {
  const stops = [...event.currentTarget.querySelectorAll<HTMLElement>('[data-stop]')];
  const at = stops.indexOf(document.activeElement as HTMLElement);
  if (at < 0) return;
  const step = STEPS[event.key];
  const to =
    event.key === 'Home' ? 0 : event.key === 'End' ? stops.length - 1 : step === undefined ? -1 : at + step;
  if (event.key !== 'Home' && event.key !== 'End' && step === undefined) return;
  event.preventDefault();
  stops[Math.min(Math.max(to, 0), stops.length - 1)]?.focus();
}
