import { type ReactNode, type ToggleEvent, useId, useRef, useState } from 'react';
import styles from './popover.module.css';

interface PopoverProps {
  /** What the panel is called by screen readers. */
  readonly label: string;
  /** The button's content. */
  readonly button: ReactNode;
  readonly buttonLabel?: string;
  readonly buttonClass?: string | undefined;
  /** What the panel holds; made when it opens. `close` gives the focus back to the button. */
  readonly children: (close: () => void) => ReactNode;
}

/** CSS pixels between the button, the panel and the window's edge. */
const GAP = 4;

/** A button with a panel that opens beside it; Escape or a press elsewhere closes it. */
export function Popover({ label, button, buttonLabel, buttonClass, children }: PopoverProps) {
  const id = useId();
  const trigger = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLElement>(null);
  const [open, setOpen] = useState(false);

  const beforeToggle = (event: ToggleEvent<HTMLElement>) => {
    if (event.newState !== 'open' || trigger.current === null) return;
    placeBeside(event.currentTarget, trigger.current);
    setOpen(true);
  };

  return (
    <>
      <button
        ref={trigger}
        type="button"
        className={buttonClass}
        popoverTarget={id}
        aria-label={buttonLabel}
        aria-expanded={open}
      >
        {button}
      </button>
      <section
        ref={panel}
        id={id}
        popover="auto"
        className={styles.panel}
        aria-label={label}
        onBeforeToggle={beforeToggle}
        onToggle={(event) => {
          setOpen(event.newState === 'open');
          if (event.newState === 'open') enter(event.currentTarget, trigger.current);
        }}
      >
        {open && children(() => panel.current?.hidePopover())}
      </section>
    </>
  );
}

/**
 * What is marked `data-first` in a panel has the focus when it opens: a field always, anything else when the panel was
 * opened by keys.
 */
function enter(panel: HTMLElement, button: HTMLElement | null): void {
  const first = panel.querySelector<HTMLElement>('[data-first]');
  if (first !== null && (first.matches('input') || button?.matches(':focus-visible'))) first.focus();
}

/** Below the button when there is more room than above it; never past the window's sides. */
function placeBeside(panel: HTMLElement, button: HTMLElement): void {
  const box = button.getBoundingClientRect();
  const below = window.innerHeight - box.bottom;
  const under = below >= box.top;
  const room = Math.max(under ? below : box.top, 0) - 2 * GAP;
  const width = Math.min(420, window.innerWidth - 4 * GAP);
  panel.style.inlineSize = `max(${Math.min(box.width, width)}px, min(${width}px, max-content))`;
  panel.style.maxInlineSize = `${width}px`;
  panel.style.maxBlockSize = `${room}px`;
  panel.style.top = under ? `${box.bottom + GAP}px` : 'auto';
  panel.style.bottom = under ? 'auto' : `${window.innerHeight - box.top + GAP}px`;
  const atRight = box.left + box.width / 2 > window.innerWidth / 2;
  panel.style.left = atRight ? 'auto' : `${Math.max(2 * GAP, box.left)}px`;
  panel.style.right = atRight ? `${Math.max(2 * GAP, window.innerWidth - box.right)}px` : 'auto';
}
