import { create } from 'zustand';

export interface Notice {
  readonly id: number;
  readonly kind: 'problem' | 'word';
  readonly text: string;
  /** What can be done about it, on a button. */
  readonly offer?: { readonly label: string; readonly run: () => void };
}

interface Notices {
  /** The one notice on the screen; a new one replaces it. */
  readonly notice: Notice | null;
  /** The last thing said to those who listen instead of looking. */
  readonly said: { readonly id: number; readonly text: string };
}

export const useNotices = create<Notices>()(() => ({ notice: null, said: { id: 0, text: '' } }));

let count = 0;

/** Says what could not be done, in one clear sentence; it stays until dismissed or replaced. */
export function warn(text: string, offer?: Notice['offer']): void {
  count += 1;
  useNotices.setState({
    notice: { id: count, kind: 'problem', text, ...(offer === undefined ? {} : { offer }) },
  });
}

/** Says something that the maker should see but that is no problem; it stays until dismissed or replaced. */
export function tell(text: string, offer?: Notice['offer']): void {
  count += 1;
  useNotices.setState({
    notice: { id: count, kind: 'word', text, ...(offer === undefined ? {} : { offer }) },
  });
}

export function dismiss(): void {
  useNotices.setState({ notice: null });
}

/** Says something to screen readers only (politely): what the screen already shows. */
export function announce(text: string): void {
  count += 1;
  useNotices.setState({ said: { id: count, text } });
}
