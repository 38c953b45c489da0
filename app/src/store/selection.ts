import { NOTHING, type Selection, useWork } from './work.ts';

/** Takes exactly this in hand. */
export function select(selection: Partial<Selection>): void {
  useWork.setState({ selection: { ...NOTHING, ...selection } });
}

export function selectNothing(): void {
  if (useWork.getState().selection !== NOTHING) useWork.setState({ selection: NOTHING });
}
