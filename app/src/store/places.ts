import { NOTHING, type StationId, useWork } from './work.ts';

export function goTo(station: StationId): void {
  if (useWork.getState().station === station) return;
  useWork.setState({ station, inHand: null });
}

/** Opens another block of the pattern. What was in hand belongs to the one before. */
export function openBlock(blockId: string): void {
  useWork.setState({ blockId, selection: NOTHING, inHand: null });
}

/** The block that many places further on, round and round. */
export function stepBlock(by: 1 | -1): void {
  const { history, blockId } = useWork.getState();
  const { blocks } = history.present;
  const at = Math.max(
    blocks.findIndex((block) => block.id === blockId),
    0,
  );
  openBlock(blocks[(at + by + blocks.length) % blocks.length]!.id);
}
