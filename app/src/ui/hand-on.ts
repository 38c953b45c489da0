/**
 * A `ref` for a control that may vanish while it has the keyboard: what takes its place has it then, where otherwise nothing
 * would have it.
 *
 * @param to selects what takes its place; the station's screen does where there is no such thing
 */
export const handOn = (to: string) => (control: HTMLElement | null) => () => {
  // Told before it is taken out. What it is handed to may come into the page in the same step, or be drawn anew in it.
  if (control === null || control !== document.activeElement) return;
  // A click is not followed to elsewhere on the page.
  const preventScroll = !control.matches(':focus-visible');
  setTimeout(() => {
    if (document.activeElement === document.body)
      (document.querySelector<HTMLElement>(to) ?? document.getElementById('station'))?.focus({
        preventScroll,
      });
  });
};
