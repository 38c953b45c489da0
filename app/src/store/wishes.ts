import { patchesOfPin } from '@seamwright/arrangement';
import type { PinRecord, SewingWishes } from '@seamwright/pattern';
import { changeBlock } from './changes.ts';
import { currentBlock, currentWishes, useWork } from './work.ts';

/** One step for undo that changes how the open block is to be sewn. */
export function wish(label: string, change: Partial<SewingWishes>): void {
  const work = useWork.getState();
  const before = currentWishes(work);
  const after = { ...before, ...change };
  const same = (Object.keys(after) as (keyof SewingWishes)[]).every((key) => after[key] === before[key]);
  if (!same) changeBlock(label, currentBlock(work).id, (block) => ({ ...block, sewing: after }));
}

/** Adds pins; one that is there already is not added again, and a section has one wish for its letter at each patch. */
export function addPins(label: string, pins: readonly PinRecord[]): void {
  const { pins: before } = currentWishes(useWork.getState());
  const fresh = pins.filter((pin) => !before.some((other) => samePin(pin, other)));
  if (fresh.length === 0) return;
  const stays = before.filter((other) => !fresh.some((pin) => replaces(pin, other)));
  wish(label, { pins: [...stays, ...fresh] });
}

export function removePins(label: string, gone: readonly PinRecord[]): void {
  const { pins: before } = currentWishes(useWork.getState());
  wish(label, { pins: before.filter((pin) => !gone.some((other) => samePin(pin, other))) });
}

/** Whether two pins want the same; for two patches alike, in whichever order. */
export function samePin(a: PinRecord, b: PinRecord): boolean {
  if (a.kind !== b.kind) return false;
  if (a.kind === 'letter') return a.patch === (b as typeof a).patch && a.letter === (b as typeof a).letter;
  const [p, q] = [patchesOfPin(a), patchesOfPin(b)];
  const same = p.every((id, i) => id === q[i]);
  return a.kind === 'before' || a.kind === 'first' ? same : same || p.every((id, i) => id === q[1 - i]);
}

const replaces = (pin: PinRecord, other: PinRecord): boolean =>
  pin.kind === 'letter' && other.kind === 'letter' && pin.patch === other.patch;
