import { NOTHING, type Selection, useWork } from './work.ts';

/** Takes exactly this in hand. */
export function select(selection: Partial<Selection>): void {
  useWork.setState({ selection: { ...NOTHING, ...selection } });
}

export function selectNothing(): void {
  if (useWork.getState().selection !== NOTHING) useWork.setState({ selection: NOTHING });
}

/** Takes one more patch in hand, or lets go of it. */
export function togglePatch(id: string): void {
  const { patches } = useWork.getState().selection;
  const rest = patches.filter((one) => one !== id);
  const after = rest.length < patches.length ? rest : [...patches, id];
  if (after.length === 0) selectNothing();
  else select({ patches: after });
}
