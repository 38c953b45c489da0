/** The frame that was printed last: it has to stay while the browser's dialog is open, which cannot be seen everywhere. */
let frame: HTMLIFrameElement | null = null;

/** Shows a document to nobody but the printer: in a frame out of sight, once its fonts are there. */
export async function printDocument(html: string, signal: AbortSignal): Promise<void> {
  frame?.remove();
  const own = document.createElement('iframe');
  frame = own;
  own.title = 'Pages for the printer';
  own.setAttribute('aria-hidden', 'true');
  own.tabIndex = -1;
  // Some browsers print nothing of a frame that is not displayed.
  own.style.cssText =
    'position:fixed;inset-inline-end:0;inset-block-end:0;inline-size:0;block-size:0;border:0';
  const loaded = new Promise((resolve) => own.addEventListener('load', resolve, { once: true }));
  own.srcdoc = html;
  document.body.append(own);
  await loaded;
  const view = own.contentWindow!;
  await view.document.fonts.ready;
  if (signal.aborted) own.remove();
  signal.throwIfAborted();
  const before = document.activeElement;
  const over = () => {
    const hasFocus = document.activeElement === own;
    own.remove();
    if (hasFocus && before instanceof HTMLElement) before.focus();
  };
  view.addEventListener('afterprint', over, { once: true });
  view.focus();
  view.print();
}
