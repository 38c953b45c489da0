import { looksLikeSvg } from '@seamwright/pattern';
import { warn } from '../store/notices.ts';
import { typing } from '../ui/shortcuts.ts';
import { openFiles, openText } from './files.ts';

/**
 * Takes what is pasted anywhere but in a field: a picture to trace, the text of an SVG drawing or of a pattern file. Anything
 * else gives one sentence and changes nothing. Returns what stops it.
 */
export function acceptPastes(): () => void {
  const paste = (event: ClipboardEvent) => {
    if (event.defaultPrevented || typing(event.target)) return;
    // A dialog has the keyboard.
    if (document.querySelector('dialog:modal') !== null) return;
    event.preventDefault();
    void take(event.clipboardData);
  };
  document.addEventListener('paste', paste);
  return () => document.removeEventListener('paste', paste);
}

async function take(data: DataTransfer | null): Promise<void> {
  const files = [...(data?.files ?? [])];
  const text = data?.getData('text/plain') ?? '';
  if (files.length > 0) await openFiles(files.map(named));
  else if (looksLikeSvg(text) || /^\s*\{/.test(text)) await openText('What was pasted', text);
  else if (text.trim() === '') warn('There is nothing on the clipboard that can be brought in.');
  else
    warn(
      'What was pasted is a text, but neither an SVG drawing nor a pattern file. Copy a picture or one of these, and paste again.',
    );
}

/** Browsers call every picture from the clipboard `image.png`. */
const named = (file: File): File =>
  file.name === 'image.png' ? new File([file], 'Pasted picture', { type: file.type }) : file;
