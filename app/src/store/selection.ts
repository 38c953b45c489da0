import { NOTHING, type Selection, useWork } from './work.ts';

/** Takes exactly this in hand. */
export function select(selection: Partial<Selection>): void {
  useWork.setState({ selection: { ...NOTHING, ...selection } });
}

/** Takes exactly these points and lines in hand; none of them: lets go. */
export function chooseParts({ points, lines }: Pick<Selection, 'points' | 'lines'>): void {
  if (points.length + lines.length === 0) selectNothing();
  else select({ points, lines });
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
